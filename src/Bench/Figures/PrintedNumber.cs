using System.Globalization;

namespace Witnessmark.Bench.Figures;

/// <summary>A number as it is printed: decimal or with a vulgar fraction, and how coarsely it was rounded.</summary>
/// <param name="Value">The number.</param>
/// <param name="HalfStep">
/// Half of its last printed digit: 0.05 for <c>3.6</c>. A vulgar fraction counts as exact, since half of a quarter inch would
/// let anything pass; then the number beside it has to bear the rounding.
/// </param>
public readonly record struct PrintedNumber(double Value, double HalfStep)
{
    private const string Fractions = "¼½¾⅓⅔⅛⅜⅝⅞";
    private static readonly double[] Worth =
    [
        1 / 4.0,
        1 / 2.0,
        3 / 4.0,
        1 / 3.0,
        2 / 3.0,
        1 / 8.0,
        3 / 8.0,
        5 / 8.0,
        7 / 8.0,
    ];

    /// <summary>Reads <c>13</c>, <c>-0.5</c>, <c>½</c>, <c>1¼</c>, <c>1/2</c> or <c>1 1/4</c>; null when it is none of these.</summary>
    public static PrintedNumber? Read(string written)
    {
        var text = written.Trim();
        if (text.Length == 0)
            return null;
        if (Fractions.IndexOf(text[^1]) is >= 0 and var at)
            return Mixed(text[..^1], Worth[at]);
        return text.Contains('/') ? Slashed(text) : Decimal(text);
    }

    private static PrintedNumber? Mixed(string whole, double fraction) =>
        whole.Trim().Length == 0 ? new(fraction, 0)
        : int.TryParse(whole.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? new(n + fraction, 0)
        : null;

    private static PrintedNumber? Slashed(string text)
    {
        var (whole, fraction) = text.LastIndexOf(' ') is >= 0 and var space
            ? (text[..space], text[(space + 1)..])
            : ("", text);
        var parts = fraction.Split('/');
        return
            parts.Length == 2
            && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var over)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var under)
            && under > 0
            ? Mixed(whole, (double)over / under)
            : null;
    }

    private static PrintedNumber? Decimal(string text)
    {
        const NumberStyles plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        if (text[0] == '+' || !char.IsAsciiDigit(text[^1]) || text.StartsWith('.'))
            return null;
        if (!decimal.TryParse(text, plain, CultureInfo.InvariantCulture, out var value))
            return null;
        var point = text.IndexOf('.');
        var decimals = point < 0 ? 0 : text.Length - point - 1;
        return new((double)value, 0.5 * Math.Pow(10, -decimals));
    }
}
