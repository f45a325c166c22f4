using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>A name that answers for judging a point by the figure that judges it.</summary>
/// <param name="Entry">When, and on whose device.</param>
/// <param name="Name">Who vouches.</param>
public sealed record Vouched(Entry Entry, string Name);

/// <summary>
/// Whose word a safety point rests on where its figure is neither the maker's nor the law's nor a standard's. A word covers the
/// figure that was seen, with its origin, and no other.
/// </summary>
internal static class Vouching
{
    public static bool IsNeeded(Point point, Figure? figure) =>
        point is { Safety: true, Reading.IsJudgedByNumber: true } && figure is { Origin.Binding: false };

    /// <summary>The last name that covers the figure as it stands; null when nobody's does, or nobody's is needed.</summary>
    public static Vouched? For(Point point, Figure? figure, IEnumerable<Fact> facts) =>
        IsNeeded(point, figure)
        && facts.OfType<VouchFact>().LastOrDefault(v => v.Figure == figure!.InSheet) is { } vouch
            ? new(vouch.Entry, vouch.Name)
            : null;
}
