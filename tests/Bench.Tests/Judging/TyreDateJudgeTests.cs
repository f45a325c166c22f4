using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Tests.Jobs;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Judging;

/// <summary>Date codes by 49 CFR 574.5; four digits came in the nineties, so none means a year before 1990.</summary>
public class TyreDateJudgeTests
{
    private static readonly DateOnly Day = new(2026, 3, 2);

    [Fact]
    public void Codes_of_this_century_are_judged_as_they_are()
    {
        var opinion = Judged(null, "3123", "0524");
        Assert.Equal(VerdictWord.Inside, opinion.Verdict);
        Assert.EndsWith("years old.", opinion.Grounds);
    }

    // the latest year that ends in 87 and is not after 2026 is 1987
    [Fact]
    public void A_code_that_no_tyre_carries_proves_nothing_and_the_note_says_so()
    {
        var opinion = Judged(null, "3123", "3187");
        Assert.Equal(
            (VerdictWord.Unproven, "No tyre carries this code: read it again"),
            (opinion.Verdict, opinion.Headline)
        );
        Assert.EndsWith(
            "No tyre of 1987 carries four digits: the code is misread, or it lies after the day asked about.",
            opinion.Grounds
        );
    }

    [Fact]
    public void Too_old_stays_too_old_whatever_the_code_says_besides()
    {
        var opinion = Judged(3650, "3123", "3187");
        Assert.Equal(VerdictWord.Outside, opinion.Verdict);
        Assert.Contains("No tyre of 1987", opinion.Grounds);
        Assert.Equal("Older than allowed", Judged(3650, "3123", "3105").Headline);
    }

    private static Opinion Judged(double? mostDays, params string[] codes)
    {
        var point = AtWork.Bench.Book.Points["tyre-dates"];
        Assert.Equal(ReadingKind.TyreDate, point.Reading.Kind);
        var figure = mostDays is { } most
            ? new Figure(
                "tyre.age",
                FigureKind.Max,
                UnitTable.Named("day"),
                null,
                most,
                null,
                "",
                null,
                null,
                new(OriginKind.Shop, "house rule")
            )
            : null;
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        var (opinion, why) = Judge.Reading(new(point, figure, machine, codes, ["front", "rear"], null, Day));
        Assert.Null(why);
        return opinion!;
    }
}
