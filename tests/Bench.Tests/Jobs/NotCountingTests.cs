using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>What the shop lets not count says nothing in the fold, and is named.</summary>
public sealed class NotCountingTests
{
    [Fact]
    public void A_drop_that_does_not_count_leaves_its_point_in_the_plan()
    {
        var work = Arrived("front-pads", "keys");
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", "Ines Tallow"));
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == "front-pads");
        var state = Without(work, work.Last);
        Assert.Contains(state.Points, p => p.Point.Id == "front-pads");
        Assert.Contains(state.Holds, h => h.Point == "front-pads");
        Assert.Equal([work.Last], state.NotCounting);
        Assert.Empty(state.NotUnderstood);
    }

    [Fact]
    public void A_release_that_does_not_count_releases_nothing()
    {
        var work = Arrived("distance");
        work.Writes(EntryKind.Reading, EntryBody.Reading("distance", ["11900 km"], null, "odometer"));
        work.Writes(EntryKind.Mark, EntryBody.Mark("distance"));
        work.Writes(EntryKind.Release, EntryBody.Release("Ines Tallow"));
        Assert.NotNull(work.State.Release);
        var state = Without(work, work.Last);
        Assert.Null(state.Release);
        Assert.True(state.MayGo);
        Assert.Equal([work.Last], state.NotCounting);
    }

    [Fact]
    public void A_job_whose_arrival_does_not_count_is_not_opened()
    {
        var work = Arrived("keys");
        Assert.Null(Without(work, work.Last).Arrival);
    }

    private static AtWork Arrived(params string[] points)
    {
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        return new AtWork().Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                "fell-640",
                4,
                "handover",
                points.Select(p => new PlannedPoint(p, "asked for"))
            )
        );
    }

    private static JobState Without(AtWork work, Entry entry) =>
        JobFold.Of(AtWork.Job, work.Entries, AtWork.Bench, ["of another job", entry.Id]);
}
