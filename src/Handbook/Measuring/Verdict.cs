using MathNet.Numerics.Distributions;

namespace Witnessmark.Handbook.Measuring;

/// <summary>Whether a reading with its uncertainty proves that a limit is kept, that it is broken, or neither.</summary>
/// <remarks>
/// <para><b>Formula.</b> conformance p = Φ((max − y)/u) − Φ((min − y)/u); inside when p ≥ confidence, outside when
/// p ≤ 1 − confidence, else unproven. Acceptance limits: min + z·u and max − z·u with z = Φ⁻¹(confidence).</para>
/// <para><b>Units.</b> Value, uncertainty and limit in one and the same unit; conformance is a pure number.</para>
/// <para><b>Source.</b> JCGM 106:2012, 7.2 to 7.4 (conformance probability), 8.3.2 (guarded acceptance).</para>
/// <para><b>Valid when</b> the error of the reading is normally distributed. An exact reading (u = 0) on the limit is inside.</para>
/// </remarks>
public static class Verdict
{
    /// <summary>The confidence asked for when nobody says otherwise.</summary>
    public const double UsualConfidence = 0.95;

    /// <summary>Judges one reading.</summary>
    /// <param name="value">The reading.</param>
    /// <param name="standardUncertainty">One standard deviation, zero or more, same unit.</param>
    /// <param name="limit">At least one end, same unit; the ends in order.</param>
    /// <param name="confidence">Between 0.5 and 1, both excluded.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside these bounds.</exception>
    public static Judged On(double value, double standardUncertainty, Limit limit, double confidence = UsualConfidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(standardUncertainty);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(confidence, 0.5);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(confidence, 1);
        if (limit is { Min: null, Max: null } || limit.Min > limit.Max)
            throw new ArgumentOutOfRangeException(nameof(limit), limit, "At least one end, and the ends in order.");
        var conformance = Conformance(value, standardUncertainty, limit);
        var guard = standardUncertainty == 0 ? 0 : Normal.InvCDF(0, 1, confidence) * standardUncertainty;
        return new(
            Call(conformance, confidence),
            conformance,
            limit.Min + guard,
            limit.Max - guard,
            Math.Min(value - (limit.Min ?? double.NegativeInfinity), (limit.Max ?? double.PositiveInfinity) - value)
        );
    }

    private static double Conformance(double value, double u, Limit limit)
    {
        if (u == 0)
            return value >= (limit.Min ?? value) && value <= (limit.Max ?? value) ? 1 : 0;
        var below = limit.Max is { } max ? Normal.CDF(0, 1, (max - value) / u) : 1;
        var under = limit.Min is { } min ? Normal.CDF(0, 1, (min - value) / u) : 0;
        return below - under;
    }

    private static Call Call(double conformance, double confidence) =>
        conformance >= confidence ? Measuring.Call.Inside
        : conformance <= 1 - confidence ? Measuring.Call.Outside
        : Measuring.Call.Unproven;
}

/// <summary>What a reading proves.</summary>
public enum Call
{
    /// <summary>The limit is kept.</summary>
    Inside,

    /// <summary>The limit is broken.</summary>
    Outside,

    /// <summary>The instrument cannot tell.</summary>
    Unproven,
}

/// <summary>A verdict with its grounds.</summary>
/// <param name="Call">What the reading proves.</param>
/// <param name="Conformance">Probability that the limit is kept, 0 to 1.</param>
/// <param name="AcceptMin">Smallest reading that would be inside of the lower limit, or null.</param>
/// <param name="AcceptMax">Largest reading that would be inside of the upper limit, or null.</param>
/// <param name="Margin">Distance to the nearest limit, negative outside.</param>
public readonly record struct Judged(
    Call Call,
    double Conformance,
    double? AcceptMin,
    double? AcceptMax,
    double Margin
);
