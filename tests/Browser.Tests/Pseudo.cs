using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// A language that is none: every text of the catalogue is the English one in brackets, about a third longer. What stands on a screen without
/// brackets was never asked for in a language, and what does not fit would not fit in one that takes more room.
/// </summary>
internal static partial class Pseudo
{
    private const char Begin = '⟦';
    private const char End = '⟧';
    private const char Filler = '·';
    private const double Longer = 0.35;

    /// <summary>The catalogue with its texts made so.</summary>
    public static string Catalogue(string german)
    {
        var text = new StringBuilder();
        foreach (var entry in PoFile.Read(german))
        {
            if (entry.Context is { } context)
                text.AppendLine($"msgctxt {Quoted(context)}");
            text.AppendLine($"msgid {Quoted(entry.Key)}");
            if (entry.Many is not { } many)
                text.AppendLine($"msgstr {Quoted(Of(entry.Key))}");
            else
                text.AppendLine($"msgid_plural {Quoted(many)}")
                    .AppendLine($"msgstr[0] {Quoted(Of(entry.Key))}")
                    .AppendLine($"msgstr[1] {Quoted(Of(many))}");
        }
        return text.ToString();
    }

    /// <summary>What finds English words on a screen in this language.</summary>
    public static Regex Finds(string words, bool whole)
    {
        var marks = $"[{Begin}{End}{Filler}]*";
        var letters = string.Join(
            marks,
            words.Select(c =>
                c is '.' ? "[.,]"
                : c == ' ' ? "\\s+"
                : Regex.Escape($"{c}")
            )
        );
        // long fillers stand in pieces
        return new(whole ? $"^{marks}{letters}[{Begin}{End}{Filler} ]*$" : letters, RegexOptions.IgnoreCase);
    }

    /// <summary>What is left of a text when everything in brackets is taken away.</summary>
    public static string Outside(string text)
    {
        var left = new StringBuilder();
        var depth = 0;
        foreach (var letter in text)
        {
            depth +=
                letter == Begin ? 1
                : letter == End ? -1
                : 0;
            left.Append(depth == 0 && letter != End ? letter : ' ');
        }
        return left.ToString();
    }

    // filler in pieces no longer than a long German word is
    private static string Of(string key)
    {
        var room = (int)Math.Ceiling(Longer * Place().Replace(key, "").Length);
        var filler = string.Join(' ', Enumerable.Repeat(new string(Filler, 6), room / 6).Append(new(Filler, room % 6)));
        return $"{Begin}{key}{filler.TrimEnd()}{End}";
    }

    private static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\").Replace("\"", "\\\"").Replace("\n", "\\n")}\"";

    [GeneratedRegex(@"\{\d+\}")]
    private static partial Regex Place();
}
