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
    /// <summary>The release that stands, or the first of two signatures while the second is missing.</summary>
    public static (Release? Stands, string? First) Of(
        IReadOnlyList<Fact> facts,
        IReadOnlyList<Fact> live,
        IReadOnlyList<Hold> holds
    )
    {
        if (holds.Count > 0)
            return (null, null);
        var bearing = facts
            .Where(f =>
                f is not NoteFact and not PhotographFact and not EstimateFact and not ReleaseFact and not DayFact
                && !IsAboutRelease(f, facts)
            )
            .ToList();
        return Of([.. live.OfType<ReleaseFact>().Where(r => bearing.All(f => CausalOrder.Saw(r.Entry, f.Entry)))]);
    }

    private static (Release? Stands, string? First) Of(List<ReleaseFact> signed) =>
        signed.LastOrDefault() is not { } last ? (null, null)
        : !last.OfTwo ? (new(last.Entry, last.Name), null)
        : signed.FirstOrDefault(s => !IsSame(s.Name, last.Name)) is { } first
            ? (new(last.Entry, first.Name, last.Name), null)
        : (null, last.Name);

    private static bool IsSame(string a, string b) =>
        string.Equals(a.Trim(), b.Trim(), StringComparison.OrdinalIgnoreCase);

    // striking an earlier signature says nothing about the points
    private static bool IsAboutRelease(Fact fact, IReadOnlyList<Fact> facts) =>
        fact is StrikeFact strike && facts.Any(f => f is ReleaseFact && f.Entry.Id == strike.Entry.Strikes);
}
