using UglyToad.PdfPig;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Paper.Handover;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>The section "What to expect" of the handover sheet, read back out of the PDF.</summary>
public sealed class WhatToExpectTests
{
    [Fact]
    public void A_sheet_without_schedule_says_where_it_stands() =>
        Assert.Contains(Bare(ExpectationWords.NoSchedule), Text(FullJob.Released));

    [Fact]
    public void The_next_work_stands_with_its_distance_its_day_and_who_asks()
    {
        var text = Text(Scheduled());
        // 4812 km + 5000 km, 27 November 2026 + 12 months
        Assert.Contains("at9812kmorby27November2027,whichevercomesfirst", text);
        Assert.Contains("every5000kmor12months;themaker,handbookp.13", text);
        Assert.DoesNotContain("Thefiguresheethasnoschedule", text);
    }

    [Fact]
    public void Cautions_after_the_work_say_that_no_source_stands_behind_them()
    {
        var text = Text(FullJob.Released);
        Assert.Contains("Thechainwasadjusted(bothadjusters½turntighter)", text);
        Assert.Contains("(commonpractice,nosource)", text);
    }

    [Fact]
    public void What_an_idle_job_did_not_do_has_no_caution()
    {
        var text = Text(FullJob.Of([State(Point("x", "Mirror"), Figure(1, 2), Stripe.Unread)], []));
        Assert.DoesNotContain("Afterthiswork", text);
        Assert.DoesNotContain("Howfarwearingpartsgo", text);
    }

    [Fact]
    public void One_reading_of_a_wearing_part_is_no_forecast_and_parts_share_a_line()
    {
        var text = Text(FullJob.Released);
        Assert.Contains("NoforecastyetforFrontpads,thinnest;Reartyretread.", text);
    }

    private static JobState Scheduled()
    {
        var work = new ScheduledWork(
            "front-pads",
            "5000 km or 12 months",
            new Origin(OriginKind.Maker, "handbook p. 13"),
            new ServiceRule("front-pads", new Length(5e9), 12, null)
        );
        var arrival = Bench640.Arrival with { Sheet = Sheet with { Schedule = [work] } };
        return FullJob.Released with
        {
            Arrival = arrival,
            Points =
            [
                .. FullJob.Released.Points.Select(p =>
                    p.Point.Id == "distance" ? p with { Readings = [Told("4812 km")], Current = Told("4812 km") } : p
                ),
            ],
        };
    }

    private static string Text(JobState state)
    {
        using var document = PdfDocument.Open(HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day));
        return Bare(string.Concat(document.GetPages().Select(p => p.Text)));
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
