using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Jobs;

/// <summary>All that a job is judged with: the shop, its bench book and every revision of its figure sheets.</summary>
/// <param name="Workshop">People, instruments, machines.</param>
/// <param name="Book">The points.</param>
/// <param name="Sheets">All revisions.</param>
public sealed record Workbench(Workshop Workshop, BenchBook Book, IReadOnlyList<FigureSheet> Sheets)
{
    /// <summary>The sheet in the revision that a job was opened with, or null.</summary>
    public FigureSheet? Sheet(string id, int revision) =>
        Sheets.FirstOrDefault(s => s.Id == id && s.Revision == revision);

    /// <summary>The newest revision of a sheet, or null.</summary>
    public FigureSheet? Newest(string id) => Sheets.Where(s => s.Id == id).MaxBy(s => s.Revision);

    /// <summary>The points of a purpose that a machine has, in bench order; none when the book has no such purpose.</summary>
    /// <param name="purpose">A purpose of the book.</param>
    /// <param name="sheet">The machine's sheet.</param>
    /// <param name="machine">The machine; what its own facts say stands above the sheet.</param>
    public IReadOnlyList<PlannedPoint> Plan(string purpose, FigureSheet sheet, Machine machine) =>
        [.. Book.Purposes.GetValueOrDefault(purpose, []).Where(p => HasPoint(Book.Points[p.Point], sheet, machine))];

    /// <summary>Whether a machine has a point; what nobody said about it counts as yes.</summary>
    public bool HasPoint(Point point, FigureSheet sheet, Machine machine) =>
        point.OnlyFor.On(name => Trait(name, sheet, machine)) != Has.No;

    internal static string? Trait(string name, FigureSheet sheet, Machine machine) =>
        machine.Traits?.GetValueOrDefault(name) ?? sheet.Trait(name);
}
