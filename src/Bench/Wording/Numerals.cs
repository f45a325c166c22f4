using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Wording;

/// <summary>Numbers as they stand in sentences: no more digits than the uncertainty leaves worth reading.</summary>
public static class Numerals
{
    /// <summary>At most so many decimals, without trailing zeros.</summary>
    public static Sentence Plain(double value, int decimals = 2)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        // a negative number that rounds to zero would print as -0
        return Sentence.Number(
            (rounded == 0 ? 0 : rounded).ToString(
                decimals == 0 ? "0" : "0." + new string('#', decimals),
                CultureInfo.InvariantCulture
            )
        );
    }

    /// <summary><c>50 ± 1.2 mm</c>: the uncertainty with two figures below 3, else one, and the value as far as it reaches.</summary>
    public static Sentence WithUncertainty(double value, double? expanded, Unit unit)
    {
        if (expanded is not > 0)
            return With(value, unit, 4);
        var decimals = DecimalsFor(expanded.Value);
        return $"{Plain(value, decimals)} ± {Plain(expanded.Value, decimals)}{Tail(unit, expanded.Value)}";
    }

    /// <summary>A value with its unit: <c>18 mm</c>; a pure number stands alone.</summary>
    public static Sentence With(double value, Unit unit, int decimals = 2) =>
        $"{Plain(value, decimals)}{Tail(unit, value)}";

    /// <summary>Turns: <c>½ turn</c>, <c>0.19 turn</c>, <c>2 turns</c>; without sign.</summary>
    public static Sentence Turns(double turns)
    {
        var size = Math.Abs(turns);
        var text = Math.Abs(size - 0.5) < 0.005 ? Sentence.Of("½") : Plain(size);
        return size > 1.005 ? (Sentence)$"{text} turns" : (Sentence)$"{text} turn";
    }

    /// <summary>Decimals after which nothing is known any more.</summary>
    public static int DecimalsFor(double expanded)
    {
        var exponent = (int)Math.Floor(Math.Log10(expanded));
        var leading = expanded / Math.Pow(10, exponent);
        return Math.Clamp((leading < 3 ? 1 : 0) - exponent, 0, 6);
    }

    private static Sentence Tail(Unit unit, double value) =>
        unit.Symbol switch
        {
            "1" => Sentence.Empty,
            // words, not symbols
            "day" => Math.Abs(value) > 1 ? (Sentence)$" days" : (Sentence)$" day",
            "month" => Math.Abs(value) > 1 ? (Sentence)$" months" : (Sentence)$" month",
            "turn" => Math.Abs(value) > 1 ? (Sentence)$" turns" : (Sentence)$" turn",
            "flat" => Math.Abs(value) > 1 ? (Sentence)$" flats" : (Sentence)$" flat",
            var symbol => $" {symbol}",
        };
}
