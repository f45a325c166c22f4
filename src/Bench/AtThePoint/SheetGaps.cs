using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>A figure that a sheet does not have and that a job will ask for at the bench.</summary>
/// <param name="Sheet">The newest revision of the sheet.</param>
/// <param name="Key">Of the figure.</param>
/// <param name="Point">The point that cannot be proven without it.</param>
public sealed record SheetGap(FigureSheet Sheet, string Key, Point Point)
{
    /// <summary>In one sentence.</summary>
    public override string ToString() =>
        $"The figure sheet \"{Sheet.Id}\" has no figure \"{Key}\", by which \"{Point.Title}\" is judged: a job will ask for it at the bench.";
}

/// <summary>What the sheets of a shop do not say: no mistake, but better looked up before a machine stands on the bench.</summary>
public static class SheetGaps
{
    /// <summary>All gaps at points that a purpose takes, where the point is one of safety or a fastener; by sheet, in bench order.</summary>
    public static IReadOnlyList<SheetGap> Of(Workbench bench)
    {
        var planned = bench
            .Book.Purposes.Values.SelectMany(plan => plan)
            .Select(p => bench.Book.Points[p.Point])
            .Distinct()
            .Where(p => p is { Safety: true, Reading.IsJudgedByNumber: true } or { Reading.Kind: ReadingKind.Tighten })
            .ToArray();
        return
        [
            .. bench
                .Sheets.GroupBy(s => s.Id)
                .Select(revisions => revisions.MaxBy(s => s.Revision)!)
                .SelectMany(sheet =>
                    planned
                        .Where(p => p.JudgedBy is { } key && !sheet.Figures.ContainsKey(key))
                        .Where(p => p.OnlyFor.On(sheet.Trait) != Has.No)
                        .Select(p => new SheetGap(sheet, p.JudgedBy!, p))
                ),
        ];
    }
}
