using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;

namespace Witnessmark.Bench.Jobs;

/// <summary>What was done and said in a job, by point: every point asks for its own, so all of it is looked through once.</summary>
/// <param name="live">Facts that stand, in order.</param>
/// <param name="deeds">Readings and corrections, in order.</param>
/// <param name="seconds">Second readings, in order.</param>
internal sealed class DoneByPoint(IReadOnlyList<Fact> live, IReadOnlyList<Deed> deeds, IReadOnlyList<Deed> seconds)
{
    private readonly ILookup<string, Fact> facts = live.ToLookup(f => f.Point, StringComparer.Ordinal);
    private readonly ILookup<string, Deed> byPoint = deeds.ToLookup(d => d.Point.Id, StringComparer.Ordinal);

    /// <summary>All readings and corrections, in order.</summary>
    public IReadOnlyList<Deed> All => deeds;

    /// <summary>Those of them that move what their neighbours were read at.</summary>
    public IReadOnlyList<Deed> Work { get; } = [.. deeds.Where(d => d.IsWork())];

    /// <summary>All second readings, in order.</summary>
    public IReadOnlyList<Deed> Seconds => seconds;

    /// <summary>Whether nothing was done or said at a point.</summary>
    public bool IsUntouched(Point point) => !facts.Contains(point.Id) && !byPoint.Contains(point.Id);

    /// <summary>What was said of a point.</summary>
    public IReadOnlyList<Fact> Said(Point point) => [.. facts[point.Id]];

    /// <summary>Readings of a point.</summary>
    public IReadOnlyList<ReadingTaken> Readings(Point point) =>
        [.. byPoint[point.Id].OfType<WasRead>().Select(d => d.Reading)];

    /// <summary>Corrections at a point.</summary>
    public IReadOnlyList<CorrectionMade> Corrections(Point point) =>
        [.. byPoint[point.Id].OfType<WasCorrected>().Select(d => d.Correction)];
}
