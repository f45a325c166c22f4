using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>Two devices do whatever comes to mind on one job, seeing each other now and then.</summary>
public class JobFoldProperties
{
    private static readonly string[] Points =
    [
        "chain-slack",
        "axle-alignment",
        "axle-nut",
        "tyre-dates",
        "oil-level",
        "leaks",
        "road-test",
        "leaks-after",
        "drain-plug",
    ];

    [Property(MaxTest = 100)]
    public void Any_order_of_arrival_and_any_doubling_gives_the_same_state(byte[] choices, int seed)
    {
        var entries = Played(choices ?? []);
        var chance = new Random(seed);
        var shuffled = entries.Concat(entries.Where(_ => chance.Next(3) == 0)).ToArray();
        chance.Shuffle(shuffled);
        Assert.Equal(
            JobFoldTests.Picture(JobFold.Of(AtWork.Job, entries, AtWork.Bench)),
            JobFoldTests.Picture(JobFold.Of(AtWork.Job, shuffled, AtWork.Bench))
        );
    }

    [Property(MaxTest = 100)]
    public void Folded_again_after_each_entry_it_is_what_one_fold_makes_of_them(byte[] choices)
    {
        FoldMemory memory = new();
        var entries = Played(choices ?? []);
        foreach (var n in Enumerable.Range(0, entries.Count + 1))
            Assert.Equal(
                JobFoldTests.Picture(JobFold.Of(AtWork.Job, entries.Take(n), AtWork.Bench)),
                JobFoldTests.Picture(JobFold.Of(AtWork.Job, entries.Take(n), AtWork.Bench, memory))
            );
    }

    [Property(MaxTest = 100)]
    public void A_released_job_has_every_safety_point_proven_and_marked(byte[] choices)
    {
        foreach (var state in Prefixes(Played(choices ?? []), Complete))
            if (state.Release is not null)
                Assert.All(
                    state.Points.Where(p => p.Point.Safety),
                    p =>
                        Assert.True(
                            p is { Marked: not null, Current.Opinion.Verdict: VerdictWord.Inside or VerdictWord.Close }
                                && (p.Vouched is not null || !p.NeedsVouching)
                        )
                );
    }

    [Property(MaxTest = 100)]
    public void Striking_the_last_entry_restores_the_state_before_it(byte[] choices)
    {
        var work = Play(new AtWork("phone").Arrives(), choices ?? []);
        var before = JobFoldTests.Picture(work.State);
        work.Reads("chain-slack", "75 mm", "25 mm");
        work.Strikes(work.Last.Id);
        // the strike itself came after any release, which therefore has to be signed again
        Assert.Equal(WithoutRelease(before), WithoutRelease(JobFoldTests.Picture(work.State)));
    }

    private static string WithoutRelease(string picture) => picture[..picture.LastIndexOf('\n')];

    private static IEnumerable<JobState> Prefixes(IReadOnlyList<Entry> entries, IReadOnlyList<Entry> first) =>
        Enumerable
            .Range(0, entries.Count + 1)
            .Select(n => JobFold.Of(AtWork.Job, [.. first, .. entries.Take(n)], AtWork.Bench));

    // a job in which all is well, so that releases do happen among the random entries that follow
    private static readonly IReadOnlyList<Entry> Complete = AllDone().Entries;

    private static AtWork AllDone()
    {
        var work = new AtWork("bench").Arrives();
        for (var round = 0; round < 3; round++)
            foreach (var open in work.State.Points.Where(p => p.Marked is null).Select(p => p.Point.Id).ToArray())
                work.DoesWell(open);
        return work.Releases("Ines Tallow");
    }

    private static IReadOnlyList<Entry> Played(byte[] choices)
    {
        var phone = new AtWork("phone").Arrives();
        var tablet = new AtWork("tablet").Sees(phone);
        foreach (var (i, choice) in choices.Take(24).Index())
        {
            var (one, other) = i % 2 == 0 ? (phone, tablet) : (tablet, phone);
            if (choice % 3 == 0)
                one.Sees(other);
            Do(one, choice);
        }
        return [.. phone.Entries, .. tablet.Entries];
    }

    private static AtWork Play(AtWork work, byte[] choices)
    {
        foreach (var choice in choices.Take(16))
            Do(work, choice);
        return work;
    }

    private static void Do(AtWork work, byte choice)
    {
        var point = Points[choice / 8 % Points.Length];
        _ = (choice % 8) switch
        {
            0 => work.Turns("chain-slack", "0.5"),
            1 => work.Tightens("axle-nut", "110 N·m"),
            2 => work.Reads("chain-slack", "75 mm", "25 mm"),
            3 => work.Marks(point),
            4 => work.Leaves(point, "later"),
            5 => work.Releases("Bram Okello"),
            6 when work.Entries.Count > 1 => work.Strikes(work.Entries[choice % work.Entries.Count].Id),
            _ => work.DoesWell(point),
        };
    }
}
