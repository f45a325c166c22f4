using System.Globalization;

namespace Witnessmark.Handbook.Languages;

/// <summary>Days and amounts as English writes them, read back to be written by another language.</summary>
internal static class EnglishFigures
{
    /// <summary>A day in figures; null where it is none.</summary>
    public static string? Day(string text, Tongue tongue) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            ? tongue.Day(DayForm.Figures, day)
            : null;

    /// <summary>What begins with a number, <c>38.5 ± 1 mm</c>; null where it does not.</summary>
    public static string? Amount(string text, Tongue tongue)
    {
        var words = text.Split(' ');
        return words.Length <= 4 && IsNumber(words[0])
            ? string.Join(' ', words.Select(w => IsNumber(w) ? tongue.Number(w) : Unit(w, tongue)))
            : null;
    }

    // a unit that is a word stands in the catalogue as it follows its number
    private static string Unit(string word, Tongue tongue) => tongue.Text($" {word}", null)?.Trim() ?? word;

    private static bool IsNumber(string word) =>
        decimal.TryParse(
            word,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out _
        );
}
