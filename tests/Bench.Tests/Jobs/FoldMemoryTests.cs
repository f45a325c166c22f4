using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.AtThePoint;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>A job that is folded again after each entry, with what the fold before left.</summary>
public class FoldMemoryTests
{
    private const string Pads = "front-pads";

    [Fact]
    public void A_figure_that_comes_after_the_reading_judges_it_anew()
    {
        var work = Incomplete.Arrives().Reads(Pads, "3 mm", "3 mm", "3 mm", "3 mm");
        FoldMemory memory = new();
        Assert.Equal(VerdictWord.Unproven, Now());
        work.Gives(Pads, "min", "1.5 mm");
        Assert.Equal(VerdictWord.Inside, Now());
        work.Gives(Pads, "min", "4 mm");
        Assert.Equal(VerdictWord.Outside, Now());
        work.Strikes(work.Last.Id);
        Assert.Equal(VerdictWord.Inside, Now());

        VerdictWord Now() =>
            JobFold
                .Of(AtWork.Job, work.Entries, Incomplete.Bench, memory)
                .Points.Single(p => p.Point.Id == Pads)
                .Current!.Opinion.Verdict;
    }

    // two devices opened the job, each out of the other's sight and for another machine: the one that is first in the order of entries comes in last
    [Fact]
    public void Another_machine_judges_the_same_reading_anew()
    {
        var work = new AtWork("tablet").Arrives().Reads("identity", "GZ0FE64C8RH000412");
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0977"];
        var other = new AtWork("bench").Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                machine.Sheet,
                AtWork.Bench.Newest(machine.Sheet)!.Revision,
                "handover",
                AtWork.Bench.Book.Purposes["handover"]
            )
        );
        FoldMemory memory = new();
        Assert.Equal(VerdictWord.Inside, Now(work.Entries));
        Assert.Equal(VerdictWord.Outside, Now([.. work.Entries, .. other.Entries]));

        VerdictWord Now(IReadOnlyList<Entry> entries) =>
            JobFold
                .Of(AtWork.Job, entries, AtWork.Bench, memory)
                .Points.Single(p => p.Point.Id == "identity")
                .Current!.Opinion.Verdict;
    }

    [Fact]
    public void What_is_not_understood_is_said_by_every_fold()
    {
        var work = new AtWork("tablet").Arrives();
        work.Writes(EntryKind.Reading, EntryBody.Reading("no-such-point", ["3 mm"]));
        work.Writes("unheard-of", EntryBody.Mark(Pads));
        work.ReadsWith("no-such-instrument", "chain-slack", "75 mm", "25 mm");
        FoldMemory memory = new();
        var first = JobFold.Of(AtWork.Job, work.Entries, AtWork.Bench, memory).NotUnderstood;
        Assert.Equal(3, first.Count);
        Assert.All(first, n => Assert.NotNull(n.Why));
        Assert.Equal(first, JobFold.Of(AtWork.Job, work.Entries, AtWork.Bench, memory).NotUnderstood);
    }

    [Fact]
    public void A_reading_is_judged_once_while_nothing_that_it_rests_on_changes()
    {
        var work = new AtWork("tablet").Arrives().Reads("chain-slack", "75 mm", "25 mm");
        FoldMemory memory = new();
        var before = Reading();
        work.Turns("chain-slack", "0.5");
        Assert.Same(before, Reading());

        ReadingTaken Reading() =>
            JobFold
                .Of(AtWork.Job, work.Entries, AtWork.Bench, memory)
                .Points.Single(p => p.Point.Id == "chain-slack")
                .Readings.Single();
    }
}
