using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>verdict</c>.</summary>
internal static class VerdictContract
{
    private static readonly Input<Written> Value = Take.Any("value", "the reading");
    private static readonly Input<Written> Uncertainty = Take.Any(
        "standardUncertainty",
        "one standard deviation, 0 allowed"
    );
    private static readonly Input<Written> Min = Take.Any("min", "smallest permitted value").OrNothing();
    private static readonly Input<Written> Max = Take.Any("max", "largest permitted value").OrNothing();
    private static readonly Input<(Written? Min, Written? Max)> LimitGiven = Take.Object(
        "limit",
        "what is permitted, one end or both",
        [Min, Max],
        g => (g.Maybe(Min), g.Maybe(Max))
    );
    private static readonly Input<double> Confidence = Take.Number(
            "confidence",
            "probability asked for, above 0.5 and below 1",
            0.5,
            1
        )
        .Or(Measuring.Verdict.UsualConfidence, "0.95");

    public static Calculation Calculation { get; } =
        new(
            "verdict",
            "Measuring",
            "Whether a reading proves that a limit is kept, broken, or neither.",
            "JCGM 106:2012, 7.2 to 7.4, 8.3.2",
            typeof(Measuring.Verdict),
            [Value, Uncertainty, LimitGiven, Confidence],
            [
                new("verdict", "inside, outside or unproven", "what the reading proves"),
                new("conformance", "1", "probability that the limit is kept"),
                new("acceptMin", "unit that came in", "smallest reading that is inside"),
                new("acceptMax", "unit that came in", "largest reading that is inside"),
                new("margin", "unit that came in", "distance to the nearest limit, negative outside"),
            ],
            Judge
        );

    private static Reply Judge(Given given)
    {
        var value = given.Of(Value);
        var unit = value.Unit;
        var (min, max) = given.Of(LimitGiven);
        var limit = new Limit(
            min is { } low ? SameUnit.InUnit(given, "limit.min", low, unit) : null,
            max is { } high ? SameUnit.InUnit(given, "limit.max", high, unit) : null
        );
        if (limit is { Min: null, Max: null })
            throw given.Wrong("limit", "neither min nor max", "one end or both");
        if (limit.Min > limit.Max)
            throw given.Wrong("limit", "min above max", "the ends in order");
        var confidence = given.Of(Confidence);
        if (confidence is 0.5 or 1)
            throw given.Wrong("confidence", confidence is 1 ? "1" : "0.5", "above 0.5 and below 1");
        var u = SameUnit.NotNegative(
            given,
            "standardUncertainty",
            SameUnit.Width(given, "standardUncertainty", given.Of(Uncertainty), unit)
        );
        var judged = Measuring.Verdict.On(value.Value, u, limit, confidence);
        return new Gives()
            .With("verdict", judged.Call.Word())
            .With("conformance", judged.Conformance, "1")
            .With("acceptMin", judged.AcceptMin, unit.Symbol)
            .With("acceptMax", judged.AcceptMax, unit.Symbol)
            .With("margin", judged.Margin, unit.Symbol);
    }
}
