using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Wording;

/// <summary>Numbers as they stand in sentences: no more digits than the uncertainty leaves worth reading.</summary>
public static class Numerals
{
    /// <summary>At most so many decimals, without trailing zeros.</summary>
    public static Sentence Plain(double value, int decimals = 2) => Sentence.Number(Digits(value, decimals));

    /// <summary><c>50 ± 1.2 mm</c>: the uncertainty with two figures below 3, else one, and the value as far as it reaches.</summary>
    public static Sentence WithUncertainty(double value, double? expanded, Unit unit)
    {
        if (expanded is not > 0)
            return With(value, unit, 4);
        return InUnits.Of(
            Uncertain(value, expanded.Value, unit),
            unit,
            other => Uncertain(new Written(value, unit).In(other).Value, Apart(expanded.Value, unit, other), other)
        );
    }

    /// <summary>A value with its unit: <c>18 mm</c>; a pure number stands alone.</summary>
    public static Sentence With(double value, Unit unit, int decimals = 2, RoundedTo rounded = RoundedTo.Nearest) =>
        InUnits.Of(
            Tailed(Digits(value, decimals), unit, value),
            unit,
            other => Tailed(ConvertedNumber.Of(Digits(value, decimals), unit, other, rounded), other, value)
        );

    /// <summary>A difference of two values with its unit: of a temperature, not where it stands but how far it is away.</summary>
    public static Sentence Apart(double difference, Unit unit, int decimals = 2) =>
        InUnits.Of(
            Tailed(Digits(difference, decimals), unit, difference),
            unit,
            other => Tailed(ConvertedNumber.Apart(Digits(difference, decimals), unit, other), other, difference)
        );

    /// <summary>From one value to another: <c>13 – 32 mm</c>. Converted ends are rounded into what is permitted.</summary>
    /// <param name="min">The lower end.</param>
    /// <param name="max">The upper end.</param>
    /// <param name="unit">The unit of both.</param>
    /// <param name="decimals">At most so many.</param>
    /// <param name="join">The words for both ends, the upper one with its unit.</param>
    public static Sentence Between(
        double min,
        double max,
        Unit unit,
        int decimals,
        Func<Sentence, Sentence, Sentence> join
    )
    {
        var (lower, upper) = (Digits(min, decimals), Digits(max, decimals));
        return InUnits.Of(
            join(Sentence.Number(lower), Tailed(upper, unit, max)),
            unit,
            other =>
                join(
                    Sentence.Number(ConvertedNumber.Of(lower, unit, other, RoundedTo.Above)),
                    Tailed(ConvertedNumber.Of(upper, unit, other, RoundedTo.Below), other, max)
                )
        );
    }

    /// <summary>A target with its tolerance: <c>4 ± 0.5 mm</c>; the converted tolerance is rounded down.</summary>
    public static Sentence PlusMinus(double target, double tolerance, Unit unit, int decimals)
    {
        var (value, half) = (Digits(target, decimals), Digits(tolerance, decimals));
        return InUnits.Of(
            $"{Sentence.Number(value)} ± {Tailed(half, unit, tolerance)}",
            unit,
            other =>
                $"{Sentence.Number(ConvertedNumber.Of(value, unit, other))} ± {Tailed(ConvertedNumber.Apart(half, unit, other, RoundedTo.Below), other, tolerance)}"
        );
    }

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

    private static string Digits(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        // a negative number that rounds to zero would print as -0
        return (rounded == 0 ? 0 : rounded).ToString(
            decimals == 0 ? "0" : "0." + new string('#', decimals),
            CultureInfo.InvariantCulture
        );
    }

    private static Sentence Uncertain(double value, double expanded, Unit unit)
    {
        var decimals = DecimalsFor(expanded);
        return $"{Plain(value, decimals)} ± {Tailed(Digits(expanded, decimals), unit, expanded)}";
    }

    private static double Apart(double difference, Unit unit, Unit other) => difference * unit.Factor / other.Factor;

    private static Sentence Tailed(string digits, Unit unit, double value) =>
        $"{Sentence.Number(digits)}{Tail(unit, value)}";

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
