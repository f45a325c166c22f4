using Witnessmark.Bench.Day;
using Witnessmark.Bench.Tests.Jobs;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Tests.Day;

/// <summary>A day planned with the times that the shop has learnt, and the same day on a device that has not seen them.</summary>
public class LearntDayTests
{
    private static readonly DateTime Thursday9 = new(2026, 11, 26, 9, 0, 0);

    private static LearntTimes Slow { get; } =
        LearntTimes.From(
            AtWork.Bench.Book,
            AtWork.Bench.Book.Points.Values.SelectMany(p =>
                Enumerable.Range(0, 12).Select(_ => new ObservedTime(p.Id, "Ines Tallow", 3 * p.Hands))
            )
        );

    private static DayQuestion Asked(LearntTimes? learnt) =>
        DayOfJobs.Of(AtWork.Bench, [new AtWork().Arrives().State], Thursday9, learnt).Question!;

    [Fact]
    public void What_takes_longer_here_is_planned_longer_and_a_step_ends_where_it_ended()
    {
        var (book, slow) = (Asked(null).Jobs.Single(), Asked(Slow).Jobs.Single());
        Assert.Equal(book.Steps.Select(s => s.What), slow.Steps.Select(s => s.What));
        Assert.Equal(book.Steps.Select(s => s.Waits), slow.Steps.Select(s => s.Waits));
        Assert.InRange((double)slow.Hands / book.Hands, 1.5, 3);
    }

    [Fact]
    public void A_device_takes_the_lengths_that_the_shop_planned_with()
    {
        var (device, shop) = (Asked(null), Asked(Slow));
        Assert.Equal(Lengths(shop), Lengths(Read(device, shop.Jobs.Single()).AsLong(device)));
    }

    [Fact]
    public void Once_a_step_is_done_there_the_device_takes_its_own()
    {
        var (device, shop) = (Asked(null), Asked(Slow));
        var job = shop.Jobs.Single();
        var before = Read(device, job with { Steps = [.. job.Steps, new($"Done meanwhile", 5, 0)] });
        Assert.Equal(Lengths(device), Lengths(before.AsLong(device)));
    }

    [Fact]
    public void A_plan_of_before_that_says_no_lengths_is_read()
    {
        var device = Asked(null);
        var plan = DayPlanText.Read(Text("", ""), device)!;
        Assert.Equal(Lengths(device), Lengths(plan.AsLong(device)));
        Assert.Empty(plan.NotWhole);
        Assert.Equal([60], plan.Plan.Jobs.Single().Starts);
    }

    [Theory]
    [InlineData(""", "lacks":["Oil filter: nobody counted it.","Paint: none."]""", 2)]
    [InlineData("", 1)] // as a plan of before says it
    public void What_is_lacking_is_read(string parts, int lines)
    {
        var said = "Oil filter: nobody counted it. Paint: none.";
        var plan = DayPlanText.Read(
            Text("", $$""","notWhole":[{"job":"412","because":"{{said}}"{{parts}}}]"""),
            Asked(null)
        )!;
        var lacking = Assert.Single(plan.NotWhole);
        Assert.Equal("412", lacking.Job);
        Assert.Equal(lines, lacking.Lacks.Count);
        Assert.Equal(said, lacking.Words.ToString());
    }

    private static IEnumerable<(int, int)> Lengths(DayQuestion question) =>
        question.Jobs.Single().Steps.Select(s => (s.Hands, s.Waits));

    private static DayPlanText Read(DayQuestion device, DayJob planned)
    {
        var steps = planned.Steps.Select(s => $$"""{"what":"x","hands":{{s.Hands}},"waits":{{s.Waits}}}""");
        return DayPlanText.Read(Text($""","steps":[{string.Join(",", steps)}]""", ""), device)!;
    }

    private static string Text(string steps, string more) =>
        $$"""
            {"now":"2026-11-26T09:00","jobs":[{"job":"{{AtWork.Job}}","technician":"Ines Tallow","lift":"Lift 1",
            "starts":["2026-11-26T01:00"]{{steps}}}],
            "latenessAtLeast":0,"proven":true,"withoutPlace":[],"loosened":[]{{more}}}
            """;
}
