using System.Text.RegularExpressions;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Languages;

/// <summary>A language: its texts, and how it writes numbers and days. English has no catalogue, for the sentences are written in it.</summary>
/// <remarks>Formats are our own and few: the program in the browser carries no cultures.</remarks>
public sealed partial class Tongue
{
    private readonly Catalogue texts;
    private readonly Ways ways;

    private Tongue(string code, Ways ways, Catalogue texts) => (Code, this.ways, this.texts) = (code, ways, texts);

    /// <summary>English, as people read it.</summary>
    public static Tongue English { get; } = new("en", Ways.English, Catalogue.None);

    /// <summary>English as it is written down, in entries, files and between programs: a negative number has a hyphen there.</summary>
    public static Tongue Written { get; } = new("en", Ways.Written, Catalogue.None);

    /// <summary>The languages that there are, by the code of BCP 47, as each calls itself.</summary>
    public static IReadOnlyList<(string Code, string Name)> All { get; } = [("en", "English"), ("de", "Deutsch")];

    /// <summary>Its code of BCP 47, as documents carry it.</summary>
    public string Code { get; }

    /// <summary>The units that whoever speaks it wants to read.</summary>
    public UnitSystem Units { get; private init; }

    /// <summary>The same language, read in other units.</summary>
    /// <param name="units">The units.</param>
    public Tongue With(UnitSystem units) => units == Units ? this : new(Code, ways, texts) { Units = units };

    /// <summary>German, with its catalogue.</summary>
    /// <param name="texts">The catalogue.</param>
    public static Tongue German(Catalogue texts) => new("de", Ways.German, texts);

    /// <summary>The text for a key, or null where the catalogue has none.</summary>
    internal string? Text(string key, string? context) => texts.Text(key, context);

    /// <summary>The text for so many, or null where the catalogue has none.</summary>
    internal string? Plural(int count, string one, string many) =>
        texts.Plural(one, many) is { } forms ? forms[count == 1 ? 0 : 1] : null;

    /// <summary>A text that comes as data: as the catalogue has it, else as it is.</summary>
    /// <param name="text">The text.</param>
    public string Word(string text) => texts.Text(text, null) is { } said ? Template.Fill(said, [], this) : text;

    /// <summary>A number that is written as a file has it, for whoever reads this language: with its mark, and with a true minus sign.</summary>
    /// <param name="digits">Its digits, with a decimal point where it has one, and a hyphen before it where it is negative.</param>
    public string Number(string digits) => Signed(ways.Mark == '.' ? digits : digits.Replace('.', ways.Mark));

    /// <summary>A day.</summary>
    internal string Day(DayForm form, DateOnly day) => ways.Day(form, day);

    /// <summary>A text inside a sentence: English begins it small there, other languages leave it.</summary>
    /// <param name="text">The text, already in this language.</param>
    public string Inside(string text) =>
        Code == "en" && text.Length > 0 ? char.ToLowerInvariant(text[0]) + text[1..] : text;

    /// <summary>A number as this language writes it, read back into the digits that are stored.</summary>
    /// <param name="typed">What was typed.</param>
    public string Stored(string typed) => typed.Replace(ways.Mark, '.').Replace(ways.Minus, '-');

    private string Signed(string digits) =>
        ways.Minus != '-' && digits.Contains('-') ? Sign().Replace(digits, _ => $"{ways.Minus}") : digits;

    // not the hyphen of a word or of a number in two parts, nor that of an exponent
    [GeneratedRegex(@"(?<![\p{L}\d])-(?=\d)")]
    private static partial Regex Sign();
}
