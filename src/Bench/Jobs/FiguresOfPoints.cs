using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Toml;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// Whether each point finds the figure that judges it, and whether it can judge it. A safety point that a purpose takes, and a
/// fastener, could never be proven without; what is read for use alone is then recorded.
/// </summary>
internal static class FiguresOfPoints
{
    public static void Check(BenchBookFile book, IReadOnlyList<SheetRead> sheets, Mistakes mistakes)
    {
        var planned = book.Purposes.Values.SelectMany(p => p.Plan).Select(p => p.Point).ToHashSet();
        var newest = sheets.GroupBy(s => s.Sheet.Id).Select(g => g.MaxBy(s => s.Sheet.Revision)!).ToArray();
        foreach (var sheet in newest)
            MisspeltInSheet(sheet, book);
        foreach (var point in book.Points.Values)
            if (point.Point.JudgedBy is { } key && book.FigureKeys.ContainsKey(key))
                foreach (var sheet in newest.Where(s => point.Point.OnlyFor.On(s.Sheet.Trait) != Has.No))
                    InSheet(point, key, sheet, planned.Contains(point.Point.Id), mistakes);
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

    private static void InSheet(PointRead point, string key, SheetRead sheet, bool planned, Mistakes mistakes)
    {
        if (!sheet.Declared.Contains(key))
        {
            if (planned && point.Point is { Safety: true } or { Reading.Kind: ReadingKind.Tighten })
                mistakes.Add(
                    sheet.File.Root.At("sheet"),
                    $"{sheet.File.Name} has no figure \"{key}\", by which point \"{point.Point.Id}\" is judged",
                    $"a table [figures.\"{key}\"]"
                );
        }
        else if (
            sheet.Sheet.Figures.GetValueOrDefault(key) is { } figure
            && point.Point.Reading.JudgedIn is { } dimension
        )
            Judges(point, sheet, figure, dimension, mistakes);
    }

    private static void Judges(PointRead point, SheetRead sheet, Figure figure, Dimension dimension, Mistakes mistakes)
    {
        var at = sheet.File.Root.Table("figures").At(figure.Key);
        if (figure.Unit.Dimension != dimension)
            mistakes.Add(
                at,
                $"figure \"{figure.Key}\" is in {figure.Unit}, but point \"{point.Point.Id}\", which it judges, is read in {point.Point.Reading.ReadIn}",
                "a unit of that kind"
            );
        else if (figure.Limit is null && figure.Kind != FigureKind.Torque)
            mistakes.Add(
                at,
                $"figure \"{figure.Key}\" is an amount and sets no limit, but point \"{point.Point.Id}\" is judged by it",
                "range, min, max or target"
            );
    }
}
