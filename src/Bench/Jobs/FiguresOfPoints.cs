using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// Whether the figure that each point finds in a sheet can judge it. A sheet without it is no mistake: the job asks for it at
/// the point, and a safety point stays held until somebody has given it.
/// </summary>
internal static class FiguresOfPoints
{
    public static void Check(BenchBookFile book, IReadOnlyList<SheetRead> sheets, Mistakes mistakes)
    {
        var newest = sheets.GroupBy(s => s.Sheet.Id).Select(g => g.MaxBy(s => s.Sheet.Revision)!).ToArray();
        foreach (var sheet in newest)
            MisspeltInSheet(sheet, book);
        foreach (var point in book.Points.Values)
            if (point.Point.JudgedBy is { } key && book.FigureKeys.ContainsKey(key))
                foreach (var sheet in newest.Where(s => point.Point.OnlyFor.On(s.Sheet.Trait) != Has.No))
                    InSheet(point, key, sheet, mistakes);
    }

    /// <summary>A figure that no point asks for is the sheet's own business; one that is nearly asked for is a slip.</summary>
    private static void MisspeltInSheet(SheetRead sheet, BenchBookFile book)
    {
        foreach (var key in sheet.Declared.Where(k => !book.FigureKeys.ContainsKey(k)))
            if (Nearest.To(key, book.FigureKeys.Keys.Except(sheet.Declared)) is { } near)
                sheet.File.Root.Mistakes.Add(
                    sheet.File.Root.Table("figures").KeyAt(key),
                    $"no point asks for a figure \"{key}\"",
                    $"\"{near}\""
                );
    }

    private static void InSheet(PointRead point, string key, SheetRead sheet, Mistakes mistakes)
    {
        if (
            sheet.Sheet.Figures.GetValueOrDefault(key) is { } figure
            && FigureFits.WhyNot(point.Point, figure) is var (found, right)
        )
            mistakes.Add(sheet.File.Root.Table("figures").At(figure.Key), found, right);
    }
}
