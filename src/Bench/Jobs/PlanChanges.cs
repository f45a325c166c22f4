using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Planning;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// What was added to the plan and dropped from it after the arrival. The last word on a point counts. A point is only dropped
/// while whoever did it had seen every reading of it: what another device found meanwhile brings it back.
/// </summary>
internal static class PlanChanges
{
    /// <summary>The opening with all points that ever were in the plan, so that what was read at them stays known.</summary>
    public static Opening WithAdded(
        Opening opening,
        IReadOnlyList<Fact> live,
        Workbench bench,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        var points = opening.Points.ToList();
        foreach (var fact in live.OfType<PlannedFact>())
            if (NotAdded(fact, opening, bench) is { } why)
                notUnderstood.Add((fact.Entry, why));
            else if (points.FindIndex(p => p.Point.Id == fact.Point) is >= 0 and var at)
                points[at] = points[at] with { Why = Joined(points[at].Why, fact.Why) };
            else
                points.Insert(
                    BaseOrder.PlaceFor(fact.Point, [.. points.Select(p => p.Point.Id)], bench.Book),
                    (bench.Book.Points[fact.Point], fact.Why)
                );
        return opening with { Points = points };
    }

    /// <summary>Those that are out of the plan now.</summary>
    public static IReadOnlyList<DroppedPoint> Dropped(
        Opening opening,
        IReadOnlyList<Fact> live,
        IReadOnlyList<Deed> deeds,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        List<DroppedPoint> dropped = [];
        foreach (var fact in live.Where(f => f is PlannedFact or DroppedFact))
        {
            if (fact is DroppedFact drop && NotDropped(drop, opening) is { } why)
                notUnderstood.Add((fact.Entry, why));
            else
            {
                dropped.RemoveAll(d => d.Point.Id == fact.Point);
                if (
                    fact is DroppedFact stands
                    && deeds.Where(d => d.Point.Id == fact.Point).All(d => CausalOrder.Saw(fact.Entry, d.Entry()))
                )
                    dropped.Add(new(opening.Point(fact.Point)!, fact.Entry, stands.Why, stands.Lead));
            }
        }
        return dropped;
    }

    private static Sentence? NotAdded(PlannedFact fact, Opening opening, Workbench bench) =>
        !bench.Book.Points.TryGetValue(fact.Point, out var point)
            ? (Sentence)$"the bench book has no point \"{fact.Point}\""
        : !bench.HasPoint(point, opening.Arrival.Sheet, opening.Arrival.Machine)
            ? (Sentence)$"this machine has no such point: {Sentence.Of(point.Title)}"
        : null;

    private static Sentence? NotDropped(DroppedFact fact, Opening opening) =>
        opening.Point(fact.Point) is not { } point ? (Sentence)$"\"{fact.Point}\" is no point of this job"
        : string.IsNullOrWhiteSpace(fact.Why) ? (Sentence)$"dropped without a reason"
        // who is a lead is asked where it is written: a lead who left the shop later does not reopen the jobs of before
        : point.Safety && string.IsNullOrWhiteSpace(fact.Lead)
            ? (Sentence)$"somebody's safety hangs on {Sentence.Of(point.Title)}: only a lead can drop it"
        : null;

    private static string Joined(string why, string more) =>
        why.Contains(more, StringComparison.Ordinal) ? why : $"{why} {more}";
}
