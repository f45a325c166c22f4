using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>Something done at the bench, in its place in the order of work.</summary>
/// <param name="Point">Where.</param>
public abstract record Deed(Point Point);

/// <summary>A point was read.</summary>
public sealed record WasRead(Point Point, ReadingTaken Reading) : Deed(Point);

/// <summary>A point was corrected.</summary>
public sealed record WasCorrected(Point Point, CorrectionMade Correction) : Deed(Point);

/// <summary>All that advice on a point rests on.</summary>
/// <param name="Point">The point.</param>
/// <param name="Figure">What judges it, or null.</param>
/// <param name="Sheet">The machine's sheet.</param>
/// <param name="Book">The bench book, for the settings of neighbours.</param>
/// <param name="Deeds">All unstruck readings and corrections of the job, in order.</param>
/// <param name="Current">The reading that counts now, or null.</param>
public sealed record Situation(
    Point Point,
    Figure? Figure,
    FigureSheet Sheet,
    BenchBook Book,
    IReadOnlyList<Deed> Deeds,
    ReadingTaken? Current
)
{
    /// <summary>Readings of one point in order.</summary>
    public IEnumerable<ReadingTaken> Readings(string point) =>
        Deeds.OfType<WasRead>().Where(d => d.Point.Id == point).Select(d => d.Reading);

    /// <summary>A quantity of the machine's geometry, or null.</summary>
    public T? Geometry<T>(string name)
        where T : struct, IQuantity<T> =>
        Sheet.Geometry.TryGetValue(name, out var written) && written.Unit.Dimension == T.Dimension
            ? T.OfBase(written.Base)
            : null;

    /// <summary>A count of the machine, or null.</summary>
    public int? Count(string fact) =>
        Sheet.Facts.TryGetValue(fact, out var text)
        && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            ? count
            : null;

    /// <summary>An amount from the figure sheet, or null.</summary>
    public Volume? Amount(string figure) =>
        Sheet.Figures.TryGetValue(figure, out var found)
        && found is { Value: { } value, Unit.Dimension: Dimension.Volume }
            ? new Volume(found.Unit.ToBase(value))
            : null;
}
