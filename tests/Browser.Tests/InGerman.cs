using System.Text.RegularExpressions;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.Browser.Tests;

/// <summary>Finds on a screen in German what a hand names in English.</summary>
internal sealed partial class InGerman(string catalogue)
{
    private readonly IReadOnlyList<PoEntry> entries = PoFile.Read(catalogue);

    /// <summary>The program of this folder speaks it.</summary>
    public static InGerman Of(Published published) =>
        new(File.ReadAllText(Path.Combine(published.Folder, "wwwroot", "languages", "de.po")));

    /// <summary>What finds English words, whole or in part.</summary>
    public Regex Finds(string words, bool whole) =>
        new(whole ? $"^{Of(words, true)}$" : Of(words, false), RegexOptions.IgnoreCase);

    /// <summary>Any of the texts that these words may be said by; what no text says is a name or a quantity.</summary>
    private string Of(string words, bool whole)
    {
        string[] said = [.. entries.SelectMany(e => Said(e, words, whole))];
        // a word that stands inside a sentence elsewhere begins with a capital letter on a button
        if (said is [] && words is [>= 'A' and <= 'Z', ..])
            said = [.. entries.SelectMany(e => Said(e, char.ToLowerInvariant(words[0]) + words[1..], whole))];
        return said is not [] ? $"(?:{string.Join('|', said)})"
            : words.Contains(": ") ? string.Join(@":\s+", words.Split(": ").Select(part => Of(part, true))) // a name for whoever hears it
            : Quantity(words);
    }

    private IEnumerable<string> Said(PoEntry entry, string words, bool whole)
    {
        // a text that is nothing but places says any words
        if (!Place().Replace(entry.Key, "").Any(char.IsLetter))
            yield break;
        var match = Regex.Match(
            words,
            $"^{Place().Replace(Regex.Escape(entry.Key).Replace("}", "\\}"), "(?<a$1>.+)")}$"
        );
        if (match.Success)
            yield return Filled(entry.Texts[0], place => Of(match.Groups[$"a{place}"].Value, true));
        else if (!whole && entry.Key.Contains(words, StringComparison.Ordinal))
            yield return Filled(entry.Texts[0], _ => ".+");
    }

    private static string Filled(string text, Func<string, string> place) =>
        string.Concat(
            Parts()
                .Split(text)
                .Select(p => Place().Match(p) is { Success: true } m ? place(m.Groups[1].Value) : Regex.Escape(p))
        );

    private static string Quantity(string words) =>
        string.Concat(
            words.Select(c =>
                c == '.' ? "[.,]"
                : c == ' ' ? "\\s+"
                : Regex.Escape($"{c}")
            )
        );

    [GeneratedRegex(@"\\?\{(\d+)\\?\}")]
    private static partial Regex Place();

    [GeneratedRegex(@"(\{\d+\})")]
    private static partial Regex Parts();
}
