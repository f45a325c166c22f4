using System.Text.Json;

namespace Witnessmark.Paper.LogBook;

/// <summary>Compares what a sheet says with the lines that its log book says it says. Blanks do not count: every reader sets them differently.</summary>
public static class PaperLines
{
    private const int Shown = 40;

    /// <summary>The lines in a log book; null where it came without paper.</summary>
    public static IReadOnlyList<string>? In(string logBook)
    {
        using var document = JsonDocument.Parse(logBook);
        return
            document.RootElement.TryGetProperty("paper", out var paper) && paper.TryGetProperty("lines", out var lines)
            ? [.. lines.EnumerateArray().Select(l => l.ToString())]
            : null;
    }

    /// <summary>The first line that differs, in a sentence; null where none does.</summary>
    /// <param name="lines">As signed.</param>
    /// <param name="sheet">The visible text in the order in which it is drawn.</param>
    public static string? Difference(IReadOnlyList<string> lines, string sheet)
    {
        var seen = Bare(sheet);
        var at = 0;
        foreach (var line in lines)
        {
            var wanted = Bare(line);
            if (!seen.AsSpan(at).StartsWith(wanted))
                return $"The sheet says \"{Piece(seen, at, wanted.Length)}\" where its record says \"{line}\".";
            at += wanted.Length;
        }
        return at == seen.Length
            ? null
            : $"The sheet says \"{Piece(seen, at, Shown)}\", of which its record says nothing.";
    }

    private static string Piece(string text, int at, int length) =>
        text.Substring(at, Math.Min(Math.Max(length, 1), text.Length - at));

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
