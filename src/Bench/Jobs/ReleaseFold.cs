using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// A release stands while there is no hold and while it had seen everything that bears on a point: what came after it, or
/// beside it on another device, asks for the signature again. Notes, photographs, estimates and the day plan bear on nothing.
/// </summary>
internal static class ReleaseFold
{
    public static Release? Of(IReadOnlyList<Fact> facts, IReadOnlyList<Fact> live, IReadOnlyList<Hold> holds)
    {
        if (holds.Count > 0)
            return null;
        var bearing = facts
            .Where(f =>
                f is not NoteFact and not PhotographFact and not EstimateFact and not ReleaseFact and not DayFact
                && !IsAboutRelease(f, facts)
            )
            .ToList();
        var signed = live.OfType<ReleaseFact>().LastOrDefault(r => bearing.All(f => CausalOrder.Saw(r.Entry, f.Entry)));
        return signed is null ? null : new(signed.Entry, signed.Name);
    }

    // striking an earlier signature says nothing about the points
    private static bool IsAboutRelease(Fact fact, IReadOnlyList<Fact> facts) =>
        fact is StrikeFact strike && facts.Any(f => f is ReleaseFact && f.Entry.Id == strike.Entry.Strikes);
}
