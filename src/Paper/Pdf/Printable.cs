using System.Text;

namespace Witnessmark.Paper.Pdf;

/// <summary>Text in the letters that the sheet's font has.</summary>
/// <remarks>
/// A letter that it lacks (Hebrew, Arabic, Chinese) stands as <c>?</c>, one for each, and the sheet says so: a file for the archive may
/// hold no empty glyphs, and letters drawn in the wrong order would be worse than none. The log book keeps them all.
/// </remarks>
internal static class Printable
{
    private const char Glue = '\u00A0';
    private static readonly FontCharacters Font = FontCharacters.Of(SheetFonts.Bytes(SheetFonts.Regular));

    /// <summary>The text with a question mark for each letter that cannot be printed; the same text where there is none.</summary>
    public static string Of(string text) =>
        Whole(text)
            ? text
            : string.Concat(text.EnumerateRunes().Where(r => !Mark(r)).Select(r => Has(r) ? r.ToString() : "?"));

    /// <summary>Whether all of it can be printed.</summary>
    public static bool Whole(string text) => text.EnumerateRunes().All(Has);

    private static bool Has(Rune rune) => rune.Value is ' ' or '\n' or '\r' or '\t' or Glue || Font.Has(rune.Value);

    /// <summary>Marks that turn the direction of writing or join letters have no shape of their own.</summary>
    private static bool Mark(Rune rune) =>
        !Has(rune)
        && Rune.GetUnicodeCategory(rune)
            is System.Globalization.UnicodeCategory.Format
                or System.Globalization.UnicodeCategory.NonSpacingMark
                or System.Globalization.UnicodeCategory.Control;
}
