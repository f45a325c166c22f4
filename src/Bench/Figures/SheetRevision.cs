using System.Globalization;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>
/// The next revision of a figure sheet with one figure set. Only the lines of that figure and of the revision change; remarks
/// and order of the file stay as its people wrote them, and the change is added at the end with who and why.
/// </summary>
public static class SheetRevision
{
    /// <summary>Sets a figure that is there or adds one that is not.</summary>
    /// <param name="current">The file of the newest revision, without mistakes.</param>
    /// <param name="draft">The figure.</param>
    /// <param name="by">Who.</param>
    /// <param name="on">The day.</param>
    /// <param name="why">In their words.</param>
    /// <returns>The next revision, or the mistakes that keep it from being one.</returns>
    public static (SourceText? Next, IReadOnlyList<Mistake> Mistakes) Set(
        SourceText current,
        FigureDraft draft,
        string by,
        DateOnly on,
        string why
    )
    {
        var before = Read(current, out var mistakes);
        if (mistakes.Count > 0)
            return (null, mistakes.Sorted());
        var revision = before.Sheet.Revision + 1;
        var was = before.Sheet.Figures.GetValueOrDefault(draft.Key)?.InSheet;
        var lines = current.Text.ReplaceLineEndings("\n").Split('\n').ToList();
        lines[before.File.Root.Table("sheet").At("revision").Line - 1] = string.Create(
            CultureInfo.InvariantCulture,
            $"revision = {revision}"
        );
        Put(lines, before.File.Root.Table("figures"), draft);
        var text = string.Join('\n', lines).TrimEnd() + "\n";
        var drafted = Read(current with { Text = text }, out mistakes);
        if (mistakes.Count > 0)
            return (null, mistakes.Sorted());
        var now = drafted.Sheet.Figures[draft.Key].InSheet;
        return Whole(
            current with
            {
                Text = $"{text}\n{new SheetChange(revision, draft.Key, by, on, why, was, now).Toml()}",
            }
        );
    }

    private static (SourceText?, IReadOnlyList<Mistake>) Whole(SourceText next)
    {
        _ = Read(next, out var mistakes);
        return mistakes.Count > 0 ? (null, mistakes.Sorted()) : (next, []);
    }

    private static SheetRead Read(SourceText source, out Mistakes mistakes)
    {
        mistakes = new Mistakes();
        return FigureSheetFile.Read(TomlFile.Read(source, mistakes));
    }

    private static void Put(List<string> lines, TomlTable figures, FigureDraft draft)
    {
        if (figures.Has(draft.Key))
        {
            var header = figures.KeyAt(draft.Key).Line - 1;
            lines.RemoveRange(header, LengthOf(lines, header));
            lines.Insert(header, draft.Toml());
        }
        else
            lines.Insert(AfterTheFigures(lines, figures), $"\n{draft.Toml()}");
    }

    private static int AfterTheFigures(List<string> lines, TomlTable figures)
    {
        var last = figures.Keys.Select(k => figures.KeyAt(k).Line - 1).DefaultIfEmpty(-1).Max();
        return last < 0 ? FirstList(lines) : last + LengthOf(lines, last);
    }

    // keys after [[…]] would belong to it, so a first figure stands before the lists
    private static int FirstList(List<string> lines) =>
        lines.FindIndex(l => l.StartsWith("[[", StringComparison.Ordinal)) is >= 0 and var list ? list : lines.Count;

    /// <summary>A table ends with its last key: the remarks after it belong to the next one.</summary>
    private static int LengthOf(List<string> lines, int header)
    {
        var next = lines.FindIndex(header + 1, l => l.StartsWith('['));
        var end = next < 0 ? lines.Count : next;
        while (lines[end - 1].Trim() is "" or ['#', ..])
            end--;
        return end - header;
    }
}
