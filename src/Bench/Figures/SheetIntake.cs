using System.Globalization;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Figures;

/// <summary>A whole figure sheet that comes from a file: a new one as it is, a known one as its next revision.</summary>
public static class SheetIntake
{
    /// <summary>Takes a sheet in beside the revisions that are known.</summary>
    /// <param name="known">The newest revision here, or null when the sheet is new.</param>
    /// <param name="incoming">The file; its name says which sheet it is.</param>
    /// <param name="by">Who.</param>
    /// <param name="on">The day.</param>
    /// <param name="why">In their words.</param>
    /// <returns>What to keep; null without mistakes when nothing differs; null with mistakes when it cannot be taken.</returns>
    public static (SourceText? Next, IReadOnlyList<Mistake> Mistakes) Take(
        SourceText? known,
        SourceText incoming,
        string by,
        DateOnly on,
        string why
    )
    {
        var mistakes = new Mistakes();
        var read = FigureSheetFile.Read(TomlFile.Read(incoming, mistakes));
        if (mistakes.Count > 0)
            return (null, mistakes.Sorted());
        if (known is null)
            return (Changed(incoming, read, read.Sheet.Revision, by, on, why), []);
        var before = FigureSheetFile.Read(TomlFile.Read(known, mistakes)).Sheet;
        return SameText(known.Text, incoming.Text)
            ? (null, [])
            : (Changed(incoming, read, before.Revision + 1, by, on, why), []);
    }

    private static SourceText Changed(SourceText file, SheetRead read, int revision, string by, DateOnly on, string why)
    {
        var lines = file.Text.ReplaceLineEndings("\n").Split('\n');
        lines[read.File.Root.Table("sheet").At("revision").Line - 1] = string.Create(
            CultureInfo.InvariantCulture,
            $"revision = {revision}"
        );
        var change = new SheetChange(revision, null, by, on, why, null, null);
        return file with { Text = $"{string.Join('\n', lines).TrimEnd()}\n\n{change.Toml()}" };
    }

    private static bool SameText(string a, string b) =>
        a.ReplaceLineEndings("\n").TrimEnd() == b.ReplaceLineEndings("\n").TrimEnd();
}
