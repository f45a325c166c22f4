using System.Text;
using Witnessmark.Bench.Book;

namespace Witnessmark.Book;

/// <summary>All points of a book as a page of Markdown: one table for each region.</summary>
internal static class PointsPage
{
    public static string Of(BenchBook book)
    {
        var page = new StringBuilder();
        page.Append("# Points of the bench book\n\n");
        page.Append(
            $"{book.Points.Count} points, {book.Points.Values.Count(p => p.Safety)} of them for safety. "
                + "Printed by `witnessmark book points`; the files in `book/` are what counts, and the maker's manual, local law and a "
                + "qualified technician's judgement come before them.\n"
        );
        foreach (var region in book.Points.Values.GroupBy(p => p.Region).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            page.Append($"\n## {Capital(region.Key.Replace('-', ' '))}\n\n");
            page.Append("| point | reading | judged by | guards | only for | purposes |\n");
            page.Append("| --- | --- | --- | --- | --- | --- |\n");
            foreach (var point in region)
                page.Append(
                    $"| {point.Title} (`{point.Id}`) | {Reading(point)} | {Key(point)} | {(point.Safety ? "safety" : "use")} | {point.OnlyFor.InWords} | {Purposes(point, book)} |\n"
                );
        }
        return page.ToString();
    }

    private static string Reading(Point point) =>
        point.Reading.Kind switch
        {
            ReadingKind.Seen => $"{point.Reading.Places.Count} things seen",
            ReadingKind.Done => "done",
            ReadingKind.Vin => "the number",
            ReadingKind.TyreDate => "week codes",
            ReadingKind.Tighten => "tightened",
            ReadingKind.Level => "level",
            ReadingKind.Round => $"round, {point.Reading.Unit}",
            var kind => $"{kind.ToString().ToLowerInvariant()}, {Unit(point)}",
        };

    private static string Unit(Point point) => point.Reading.Unit is { Symbol: not "1" } unit ? unit.Symbol : "number";

    private static string Key(Point point) => point.JudgedBy is { } key ? $"`{key}`" : "";

    private static string Purposes(Point point, BenchBook book) =>
        string.Join(
            ", ",
            book.Purposes.Where(p => p.Value.Any(planned => planned.Point == point.Id)).Select(p => p.Key)
        );

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
