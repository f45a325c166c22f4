using System.Globalization;

namespace Witnessmark.Handbook.Quantities;

/// <summary>Which way a converted number may be rounded.</summary>
public enum RoundedTo
{
    /// <summary>To the nearest: what was read.</summary>
    Nearest,

    /// <summary>Upwards: the lower end of what is permitted.</summary>
    Above,

    /// <summary>Downwards: the upper end of what is permitted.</summary>
    Below,
}

/// <summary>A number in another unit, with as many digits as it had.</summary>
/// <remarks>
/// <para><b>Formula.</b> x' = unit conversion of x, rounded to n significant digits, where n is the number of significant digits of x; one more
/// when the first digit of x' is smaller than that of x.</para>
/// <para><b>Units.</b> Any two that measure the same.</para>
/// <para><b>Source.</b> NIST SP 1038 (2006), 4.4 (from memory), which simplifies SP 811 (2008), B.7.2: 36 ft = 10.9728 m = 11.0 m; half is rounded
/// to the even digit, SP 811, B.7.1. Ends of a limit are rounded into what it permits: ASME A112.18.1-2018, A.2 e).</para>
/// <para><b>Valid when</b> every digit written is significant. Exceptions of our own: kilometres and miles keep their decimals, since
/// nobody reads tenths off a round number of the road, and so do temperatures, whose zero is arbitrary. And what is left has two digits at
/// least, for a sheet that prints 2 mm means it to a tenth.</para>
/// </remarks>
public static class ConvertedNumber
{
    private const int Least = 2;
    private const double Exact = 1e15; // from here on a double has no digit behind the point that is certain

    /// <summary>The number in the other unit, as English writes it.</summary>
    /// <param name="digits">The number as it is written, <c>0.35</c>.</param>
    /// <param name="from">Its unit.</param>
    /// <param name="to">Another unit of the same dimension.</param>
    /// <param name="rounded">Which way.</param>
    public static string Of(string digits, Unit from, Unit to, RoundedTo rounded = RoundedTo.Nearest) =>
        Rounded(digits, new Written(Number(digits), from).In(to).Value, to, rounded);

    /// <summary>A difference of two such numbers: a temperature's zero does not count.</summary>
    /// <param name="digits">The difference as it is written.</param>
    /// <param name="from">Its unit.</param>
    /// <param name="to">Another unit of the same dimension.</param>
    /// <param name="rounded">Which way.</param>
    public static string Apart(string digits, Unit from, Unit to, RoundedTo rounded = RoundedTo.Nearest) =>
        Rounded(digits, Number(digits) * from.Factor / to.Factor, to, rounded);

    private static string Rounded(string digits, double converted, Unit to, RoundedTo rounded) =>
        At(converted, Decimals(digits, converted, to), rounded);

    /// <summary>A number with so many decimals.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">How many.</param>
    /// <param name="rounded">Which way.</param>
    public static string At(double value, int decimals, RoundedTo rounded = RoundedTo.Nearest)
    {
        if (Math.Abs(value) >= Exact)
            return value.ToString("F0", CultureInfo.InvariantCulture); // no digit of it could be rounded
        var exact = (decimal)value; // fifteen digits: what the conversion adds behind them rounds nothing up
        var scale = (decimal)Math.Pow(10, decimals);
        var whole = rounded switch
        {
            RoundedTo.Above => Math.Ceiling(exact * scale),
            RoundedTo.Below => Math.Floor(exact * scale),
            _ => Math.Round(exact * scale, MidpointRounding.ToEven),
        };
        return (whole / scale).ToString($"F{decimals}", CultureInfo.InvariantCulture);
    }

    private static int Decimals(string digits, double converted, Unit to)
    {
        var point = digits.IndexOf('.', StringComparison.Ordinal);
        var own = point < 0 ? 0 : digits.Length - point - 1;
        var first = digits.AsSpan().IndexOfAnyInRange('1', '9');
        if (first < 0 || converted == 0 || to.Symbol is "km" or "mi" || to.Dimension == Dimension.Temperature)
            return own;
        var significant = digits[first..].Count(char.IsAsciiDigit);
        var exponent = Math.Floor(Math.Log10(Math.Abs(converted)));
        var leading = (int)(Math.Abs(converted) / Math.Pow(10, exponent) + 1e-9);
        var kept = Math.Max(Least, leading < digits[first] - '0' ? significant + 1 : significant);
        return Math.Max(0, kept - 1 - (int)exponent);
    }

    private static double Number(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);
}
