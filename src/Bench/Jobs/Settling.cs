using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Expectations;

namespace Witnessmark.Bench.Jobs;

/// <summary>A new part settles on its first distance: what was read of it before the ride is read again. Common practice, no source.</summary>
internal static class Settling
{
    /// <summary>Whether a deed lets settle what this job put in new at a point.</summary>
    public static bool Moves(Deed deed, Point point, IReadOnlyList<Deed> deeds) =>
        deed.IsWork()
        && point.SettlesAfter.Contains(deed.Point.Id)
        && deeds.OfType<WasCorrected>().Any(d => IsOfOnePart(d.Point, point) && Renewals.Says(d.Correction.Words));

    /// <summary>Chain slack and chain wear are read of one part: the first word of their names is the same.</summary>
    private static bool IsOfOnePart(Point one, Point other) =>
        one.Region == other.Region && one.Id.Split('-')[0] == other.Id.Split('-')[0];
}
