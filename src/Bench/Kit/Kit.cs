using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Stock;

namespace Witnessmark.Bench.Kit;

/// <summary>What is laid ready before a machine is opened: what the points use up, and what they are tightened and read with.</summary>
/// <param name="Lines">What is used up first, then tools, then instruments; each once.</param>
/// <param name="Shortages">What the shop has too little of.</param>
public sealed record Kit(IReadOnlyList<KitLine> Lines, IReadOnlyList<Shortage> Shortages)
{
    /// <summary>The kit for some points of one machine.</summary>
    /// <param name="points">In bench order; a point that stands twice counts once.</param>
    /// <param name="sheet">The machine's figures.</param>
    /// <param name="shop">Instruments, adapters and stock items.</param>
    /// <param name="stock">What is there, or null when nobody keeps count.</param>
    /// <param name="day">The day of the work: calibration is looked at for it.</param>
    /// <param name="job">The job, so that what is kept back for it counts as there; or null.</param>
    public static Kit For(
        IEnumerable<Point> points,
        FigureSheet sheet,
        Workshop shop,
        Shelf? stock,
        DateOnly day,
        string? job = null
    )
    {
        var once = points.DistinctBy(p => p.Id).ToArray();
        List<Shortage> shortages = [];
        return new(
            [
                .. Need.Of(once, sheet).Select(need => FromShelf.Line(need, sheet, shop, stock, job, shortages)),
                .. KitWrenches.Lines(once, sheet, shop, day, shortages),
                .. KitInstruments.Lines(once, sheet, shop, day, shortages),
            ],
            shortages
        );
    }
}
