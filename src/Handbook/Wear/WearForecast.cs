using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wear;

/// <summary>How far a wearing part still goes, from its readings and what the fleet of like parts says about start and rate.</summary>
/// <remarks>
/// <para><b>Formula.</b> Thickness y = y₀ − r·x + ε, ε ~ N(0, σ²); before the readings (y₀, r) ~ N(m, S), S diagonal. After them
/// V = (S⁻¹ + AᵀA/σ²)⁻¹, μ = m + V·Aᵀ(y − A·m)/σ², rows A = (1, −x). At t beyond now, with the thickness left g = μ₀ − μ₁·now − limit and
/// v(t) the variance of the line there: P(limit reached) = Φ((μ₁·t − g)/√v(t)). Median t = g/μ₁; the 5 % and 95 % points are the roots of
/// (μ₁·t − g)² = z²·v(t), z = Φ⁻¹(0.95). Agreement: χ² = Σ (y − A·m)(y − A·μ)/σ² against its 95 % point for as many degrees of freedom as readings.</para>
/// <para><b>Units.</b> Thicknesses in mm, distances in 1000 km, the rate in mm per 1000 km; every deviation is one standard deviation.
/// The remaining distance counts from now; negative, the limit lies behind.</para>
/// <para><b>Source.</b> Normal straight line with a normal prior: A. Gelman et al., Bayesian Data Analysis, 3rd edition, 14.8 (from memory).
/// Roots for a ratio of normal variables: E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175 (from memory).</para>
/// <para><b>Valid when</b> the part wears in a straight line and was not renewed between the readings, and a rate at or below zero
/// is as good as excluded. Cracks, and pads that glaze, do not wear in a straight line: the forecast is then too long.</para>
/// </remarks>
public static class WearForecast
{
    /// <summary>The probability of each tail: the forecast reaches from 5 % to 95 %.</summary>
    public const double Tail = 0.05;

    private static readonly double Z = Normal.InvCDF(0, 1, 1 - Tail);

    /// <summary>The forecast for one part.</summary>
    /// <param name="readings">None or more, in any order, none beyond now; none: the fleet alone speaks.</param>
    /// <param name="readingDeviation">σ of one reading, more than zero.</param>
    /// <param name="fleet">What like parts did.</param>
    /// <param name="asked">The limit, now, and the next service, at or beyond now.</param>
    /// <returns>Refused as <c>cannotPredict</c> when the 95 % point has no bound; what still holds stands beside it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside these bounds.</exception>
    public static Answer<WearOutlook> For(
        ReadOnlySpan<WearReading> readings,
        Length readingDeviation,
        FleetWear fleet,
        WearQuestion asked
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(readingDeviation.Millimetres);
        ArgumentOutOfRangeException.ThrowIfNegative(fleet.StartDeviation.Millimetres);
        ArgumentOutOfRangeException.ThrowIfNegative(fleet.RateDeviation.Millimetres);
        ArgumentOutOfRangeException.ThrowIfLessThan(asked.NextService.Millimetres, asked.Now.Millimetres);
        foreach (var reading in readings)
            ArgumentOutOfRangeException.ThrowIfGreaterThan(reading.At.Millimetres, asked.Now.Millimetres);
        var line = WearLine.After(readings, readingDeviation, fleet);
        var passage = line.PassageOf(asked.Limit, asked.Now);
        var outlook = new WearOutlook(
            new Length(line.Start),
            new Length(line.Rate),
            Ahead(passage.Median),
            Ahead(passage.Lower(Z)),
            Ahead(passage.Upper(Z)),
            passage.ProbabilityBy(WearLine.Thousands(asked.NextService - asked.Now)),
            readings.IsEmpty ? null : line.ChiSquare <= ChiSquared.InvCDF(readings.Length, 1 - Tail)
        );
        return passage.Bounded(Z) ? outlook : Answer<WearOutlook>.Refuse("cannotPredict", NoBound, outlook);
    }

    private static Sentence NoBound =>
        $"Readings and fleet do not tell this part's wear from no wear at all, so the distance left has no upper bound: read again "
        + $"after some distance, or read more finely.";

    private static Length? Ahead(double? thousands) =>
        thousands is { } t ? new Length(t * WearLine.ThousandKilometres) : null;
}

/// <summary>One reading of the part.</summary>
/// <param name="At">Distance since the part was new, zero or more.</param>
/// <param name="Value">Thickness or depth read.</param>
public readonly record struct WearReading(Length At, Length Value);

/// <summary>What the fleet of like parts says before this one was read.</summary>
/// <param name="Start">Thickness when new.</param>
/// <param name="Rate">Wear per 1000 km.</param>
/// <param name="StartDeviation">One standard deviation of the start, zero when it is known.</param>
/// <param name="RateDeviation">One standard deviation of the rate from part to part, zero when it is known.</param>
public readonly record struct FleetWear(Length Start, Length Rate, Length StartDeviation, Length RateDeviation);

/// <summary>What is asked.</summary>
/// <param name="Limit">Thickness at which the part is worn out.</param>
/// <param name="Now">Distance of the part now.</param>
/// <param name="NextService">Distance of the part at the next service.</param>
public readonly record struct WearQuestion(Length Limit, Length Now, Length NextService);

/// <summary>What is to be expected.</summary>
/// <param name="Start">Thickness when new, by readings and fleet.</param>
/// <param name="Rate">Wear per 1000 km, by readings and fleet.</param>
/// <param name="Median">Distance from now that is as likely too long as too short; null when the rate is not above zero.</param>
/// <param name="Earliest">Distance by which one part in twenty is worn out; null when it was more at every distance, or never is.</param>
/// <param name="Latest">Distance by which nineteen parts in twenty are worn out; null when there is none.</param>
/// <param name="ByNextService">Probability that the limit is reached by the next service.</param>
/// <param name="Agrees">Whether the readings agree with the fleet and a straight line; null without readings.</param>
public sealed record WearOutlook(
    Length Start,
    Length Rate,
    Length? Median,
    Length? Earliest,
    Length? Latest,
    double ByNextService,
    bool? Agrees
);
