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
}
