using Witnessmark.Bench.Day;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Tests.Jobs;
using Witnessmark.Bench.Tests.Kit;

namespace Witnessmark.Bench.Tests.Day;

public class NotWholeTests
{
    private static readonly DateOnly Thursday = new(2026, 11, 26);

    // everything on the demo's shelf but the oil filter
    private static Shelf WithoutFilter { get; } =
        Shelf.Of(
            AtWork
                .Bench.Workshop.Stock.Values.Where(i => i.Id != "oil-filter-640")
                .SelectMany(i =>
                    i.Sizes.Count == 0
                        ? [DemoKit.Came(i.Id, 40)]
                        : i.Sizes.Select(s => DemoKit.Came(i.Id, 40, $"{s}")).ToArray()
                )
        );

    private static IReadOnlyList<NotWhole> Of(AtWork work, Shelf? shelf) =>
        NotWhole.Of(AtWork.Bench, [work.State], shelf, Thursday);

    [Fact]
    public void What_the_kit_lacks_is_told_with_how_long_an_order_takes()
    {
        var lacks = Assert.Single(Of(new AtWork().Arrives(), WithoutFilter));
        Assert.Equal(AtWork.Job, lacks.Job);
        var filter = Assert.Single(
            lacks.Lacks,
            l => l.ToString().StartsWith("Oil filter Fell 640: ", StringComparison.Ordinal)
        );
        Assert.EndsWith("Order it: 5 days.", filter.ToString());
    }

    [Fact]
    public void Once_somebody_has_said_when_the_parts_arrive_it_is_no_longer_told()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Parts, EntryBody.Parts(new(2026, 12, 1, 9, 0, 0), "oil filter"));
        Assert.Empty(Of(work, WithoutFilter));
    }

    [Fact]
    public void A_part_of_a_point_that_is_not_done_on_this_job_lacks_nobody()
    {
        var work = new AtWork().Arrives();
        var kit = Of(work, WithoutFilter).Single().Words;
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("oil-filter", "changed last month", "Ines Tallow"));
        Assert.DoesNotContain("Oil filter", Of(work, WithoutFilter).SingleOrDefault()?.Words ?? "");
        Assert.Contains("Oil filter", kit);
    }

    [Fact]
    public void Where_nobody_counts_no_part_is_lacking() =>
        Assert.DoesNotContain("Order it", Of(new AtWork().Arrives(), null).SingleOrDefault()?.Words ?? "");
}
