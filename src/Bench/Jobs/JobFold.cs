using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// The state of a job from its entries. Pure: the same set of entries gives the same state in whatever order they came,
/// because the entries are first put into their causal order.
/// </summary>
public static class JobFold
{
    /// <summary>Folds the entries of one job; those of other jobs are passed over.</summary>
    /// <param name="job">The job's number.</param>
    /// <param name="entries">What the shop or the device has of it.</param>
    /// <param name="bench">What it is judged with.</param>
    /// <param name="memory">What an earlier fold of the same job with the same workbench left, or null.</param>
    public static JobState Of(string job, IEnumerable<Entry> entries, Workbench bench, FoldMemory? memory = null) =>
        Of(job, entries, bench, [], memory);

    /// <summary>The same without what the shop says that does not count: nobody showed it whose word it is.</summary>
    /// <param name="job">Its number.</param>
    /// <param name="entries">Its entries.</param>
    /// <param name="bench">What it is judged with.</param>
    /// <param name="notCounting">Ids of such entries, of any job.</param>
    /// <param name="memory">What an earlier fold of the same job with the same workbench left, or null.</param>
    public static JobState Of(
        string job,
        IEnumerable<Entry> entries,
        Workbench bench,
        IReadOnlyCollection<string> notCounting,
        FoldMemory? memory = null
    )
    {
        var byWord = entries.Where(e => e.Job == job).ToLookup(e => !notCounting.Contains(e.Id));
        return Counting(job, byWord[true], bench, memory ?? new()) with { NotCounting = [.. byWord[false]] };
    }

    private static JobState Counting(string job, IEnumerable<Entry> entries, Workbench bench, FoldMemory memory)
    {
        var ordered = CausalOrder.Of(entries);
        List<(Entry, Sentence)> notUnderstood = [];
        var facts = Understood(ordered, memory, notUnderstood);
        var live = Strikes.Live(facts);
        if (Opening(live, bench, notUnderstood) is not { } arrived)
            return new(
                job,
                null,
                [],
                [new(null, Stripe.Unread, $"The job has not been opened.")],
                null,
                [],
                notUnderstood,
                ordered
            );
        Photograph[] photographs =
        [
            .. live.OfType<PhotographFact>()
                .Select(p => new Photograph(p.Entry, p.Point, p.Figure, p.Picture, p.Shows)),
        ];
        var findings = FindingFold.Of(live, photographs, notUnderstood);
        var asked = FindingFold.IntoPlan(live, findings, id => arrived.HasPoint(id, bench));
        var opening = PlanChanges.WithAdded(arrived, asked, bench, notUnderstood);
        opening = opening with { Given = GivenFigures.Of(live, opening, notUnderstood) };
        var deeds = Deeds.Of(live, opening, bench, memory, notUnderstood);
        var dropped = PlanChanges.Dropped(opening, asked, deeds, notUnderstood);
        var seconds = Deeds.Seconds(live, opening, bench, memory, notUnderstood);
        var points = Points(opening, live, deeds, seconds, bench, notUnderstood);
        points.RemoveAll(p => dropped.Any(d => d.Point.Id == p.Point.Id));
        var campaigns = CampaignFold.Of(live);
        var doNotRide = campaigns.Holding(opening);
        findings = FindingFold.WithMarks(findings, points);
        var found = Holds.OfFindings(findings, points);
        IReadOnlyList<Hold> holds = [.. found, .. Holds.Of(points, opening.UnknownPoints, doNotRide)];
        var proven = opening.Vouching
            ? holds
            : [.. found, .. Holds.BeforeVouching(points, opening.UnknownPoints, doNotRide)];
        var (release, signedFirst) = ReleaseFold.Of(facts, live, proven);
        var notes = live.OfType<NoteFact>().Where(n => n.Point.Length == 0).Select(n => new Note(n.Entry, n.Text));
        return new(
            job,
            opening.Arrival,
            points,
            release is null ? holds : [],
            release,
            [.. notes],
            notUnderstood,
            ordered
        )
        {
            SignedFirst = signedFirst,
            Day = JobDay.Of(live),
            CampaignsDone = campaigns.Settled,
            CampaignsLeft = campaigns.Left,
            Dropped = dropped,
            Photographs = photographs,
            Findings = findings,
        };
    }

    private static List<Fact> Understood(
        IReadOnlyList<Entry> ordered,
        FoldMemory memory,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        List<Fact> facts = [];
        foreach (var entry in ordered)
        {
            var (fact, why) = memory.Fact(entry);
            if (fact is not null)
                facts.Add(fact);
            else
                notUnderstood.Add((entry, why!));
        }
        return facts;
    }

    private static Opening? Opening(IReadOnlyList<Fact> live, Workbench bench, List<(Entry, Sentence)> notUnderstood)
    {
        Opening? first = null;
        foreach (var arrival in live.OfType<ArrivalFact>())
        {
            var (opening, why) = Jobs.Opening.Of(arrival, bench);
            if (first is null && opening is not null)
                first = opening;
            else
                notUnderstood.Add((arrival.Entry, why ?? $"the job was opened before"));
        }
        return first;
    }

    private static List<PointState> Points(
        Opening opening,
        IReadOnlyList<Fact> live,
        IReadOnlyList<Deed> deeds,
        IReadOnlyList<Deed> seconds,
        Workbench bench,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        foreach (var left in live.OfType<LeftFact>().Where(l => opening.Point(l.Point) is { Safety: true }))
            notUnderstood.Add((left.Entry, $"a point that somebody's safety hangs on cannot be left"));
        var done = new DoneByPoint(live, deeds, seconds);
        return [.. opening.Points.Select(p => PointFold.Of(p.Point, p.Why, opening, done, bench.Book))];
    }
}
