using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures;

/// <summary>One number or a range with one unit, as printed: <c>13 to 32 mm</c>, <c>3.60 US qt</c>.</summary>
/// <param name="Numbers">One, or two for a range.</param>
/// <param name="Unit">Of both.</param>
public sealed record PrintedQuantity(IReadOnlyList<PrintedNumber> Numbers, Unit Unit)
{
    private static readonly string[] Between = [" to ", "–", " - "];

    /// <summary>Reads it.</summary>
    /// <param name="written">As printed.</param>
    /// <param name="numbers">How many numbers are expected: 1 or 2.</param>
    /// <param name="bare">The unit of numbers that carry none, or null when they have to carry one.</param>
    /// <param name="quantity">What was read.</param>
    /// <returns>Why it cannot be read, or null.</returns>
    public static string? Read(string written, int numbers, Unit? bare, out PrintedQuantity? quantity)
    {
        quantity = null;
        var (number, symbol) = Split(written.Trim());
        if (number.Length == 0)
            return "it does not begin with a number";
        var parts = number.Split(Between, StringSplitOptions.None);
        if (parts.Length != numbers)
            return numbers == 2 ? "two numbers with \"to\" between them are needed" : "one number is needed";
        var read = parts.Select(PrintedNumber.Read).ToArray();
        if (Array.FindIndex(read, r => r is null) is >= 0 and var bad)
            return $"\"{parts[bad].Trim()}\" is not a number";
        if (symbol.Length == 0 && bare is null)
            return "the unit is missing";
        if ((symbol.Length == 0 ? bare : UnitTable.Find(symbol)) is not { } unit)
            return $"\"{symbol}\" is not a unit";
        quantity = new(AsExact([.. read.Select(r => r!.Value)]), unit);
        return null;
    }

    /// <summary>Beside a vulgar fraction a whole number is meant as exactly: 1 in <c>½ to 1 in</c> is not "about one".</summary>
    private static PrintedNumber[] AsExact(PrintedNumber[] numbers) =>
        numbers.Any(n => n.HalfStep == 0) ? [.. numbers.Select(n => n with { HalfStep = 0 })] : numbers;

    /// <summary>The unit begins at the first sign that no number and no "to" is made of.</summary>
    private static (string Number, string Symbol) Split(string text)
    {
        var end = 0;
        while (end < text.Length && OfNumbers(text, end) is > 0 and var length)
            end += length;
        if (end < text.Length && text[end] == '/') // "1/min": its 1 is of the unit
            while (end > 0 && char.IsAsciiDigit(text[end - 1]))
                end--;
        return (text[..end].Trim(), text[end..].Trim());
    }

    private static int OfNumbers(string text, int at) =>
        string.CompareOrdinal(text, at, " to ", 0, 4) == 0 ? 4
        // "1/min" is a unit, "1/2" a number: a slash belongs to the number only before a digit
        : text[at] == '/' ? (at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]) ? 1 : 0)
        : char.IsAsciiDigit(text[at]) || " .+-–¼½¾⅓⅔⅛⅜⅝⅞".Contains(text[at]) ? 1
        : 0;
}
