using System.Globalization;

namespace Witnessmark.Handbook.Quantities;

/// <summary>A number with its unit as somebody wrote it: <c>"50 mm"</c>, <c>"2.3e-05 1/K"</c>.</summary>
/// <param name="Value">The number, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Written(double Value, Unit Unit)
{
    /// <summary>The value in the base unit of its dimension.</summary>
    public double Base => Unit.ToBase(Value);

    /// <summary>The same quantity in another unit of the same dimension.</summary>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public Written In(Unit other) =>
        other.Dimension == Unit.Dimension
            ? new(other.FromBase(Base), other)
            : throw new ArgumentException($"{Unit} cannot be given in {other}.", nameof(other));

    /// <summary>Reads a number and a unit. The number is written as in JSON; white space between the two is optional.</summary>
    /// <returns>Why it cannot be read, or null.</returns>
    public static string? Read(string text, out Written written)
    {
        written = default;
        var end = EndOfNumber(text);
        if (end == 0)
            return "it does not begin with a number";
        if (!double.TryParse(text.AsSpan(0, end), NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
            return "the number cannot be read";
        if (!double.IsFinite(value))
            return "the number is too large";
        var symbol = text.AsSpan(end).Trim();
        if (symbol.Length == 0)
            return "the unit is missing";
        if (UnitTable.Find(symbol) is not { } unit)
            return $"\"{symbol}\" is not a unit";
        written = new(value + 0.0, unit); // minus zero is zero: what asks for "zero or more" must not see a sign
        return null;
    }

    /// <summary>Where the JSON number at the start of the text ends; 0 when there is none (JSON: no plus sign, no bare point).</summary>
    private static int EndOfNumber(string text)
    {
        var i = text.StartsWith('-') ? 1 : 0;
        var whole = Digits(text, i);
        if (whole == i || (text[i] == '0' && whole > i + 1))
            return 0;
        i = whole;
        if (i < text.Length && text[i] == '.')
        {
            var fraction = Digits(text, i + 1);
            if (fraction == i + 1)
                return 0;
            i = fraction;
        }
        if (i < text.Length && text[i] is 'e' or 'E')
        {
            var sign = i + 1 < text.Length && text[i + 1] is '+' or '-' ? 1 : 0;
            var exponent = Digits(text, i + 1 + sign);
            if (exponent > i + 1 + sign)
                i = exponent;
        }
        return i;
    }

    private static int Digits(string text, int from)
    {
        while (from < text.Length && char.IsAsciiDigit(text[from]))
            from++;
        return from;
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value:R} {Unit}");
}
