using System.Globalization;

namespace Witnessmark.Bench.Findings;

/// <summary>Decimal text as a whole number of its smallest step, and back: money and quantities never pass through floating point.</summary>
public static class DecimalText
{
    private const int MostDigits = 12;

    /// <summary>The number of steps, or null with the reason why the text is no such number.</summary>
    /// <param name="text">Digits with at most one decimal point or comma: <c>12.50</c>, <c>0,5</c>, <c>3</c>. No sign, no spaces inside.</param>
    /// <param name="decimals">How many decimals one step has.</param>
    /// <param name="why">What is wrong and what is allowed, or null.</param>
    public static long? Read(string text, int decimals, out Sentence? why)
    {
        var trimmed = text.Trim();
        var at = trimmed.IndexOfAny(['.', ',']);
        var whole = at < 0 ? trimmed : trimmed[..at];
        var part = at < 0 ? "" : trimmed[(at + 1)..];
        why =
            whole.Length == 0
            || !whole.All(char.IsAsciiDigit)
            || !part.All(char.IsAsciiDigit)
            || (at >= 0 && part.Length == 0)
                ? (Sentence)$"\"{text}\" is no number; right would be digits such as \"{Example(decimals)}\""
            : part.Length > decimals
                ? (Sentence)$"\"{text}\" has {part.Length} decimals; at most {decimals} are allowed here"
            : whole.TrimStart('0').Length + decimals > MostDigits ? (Sentence)$"\"{text}\" is too large"
            : null;
        return why is null
            ? long.Parse(whole + part.PadRight(decimals, '0'), NumberStyles.None, CultureInfo.InvariantCulture)
            : null;
    }

    /// <summary>With all its decimals: <c>12.50</c>.</summary>
    public static string Of(long steps, int decimals)
    {
        var digits = steps.ToString(CultureInfo.InvariantCulture).PadLeft(decimals + 1, '0');
        return decimals == 0 ? digits : $"{digits[..^decimals]}.{digits[^decimals..]}";
    }

    /// <summary>Without zeros at the end: <c>0.5</c>, <c>19</c>.</summary>
    public static string Short(long steps, int decimals) =>
        decimals == 0 ? Of(steps, 0) : Of(steps, decimals).TrimEnd('0').TrimEnd('.');

    private static string Example(int decimals) =>
        decimals == 0 ? "12"
        : decimals == 2 ? "12.50"
        : "1.5";
}
