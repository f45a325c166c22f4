using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wear;

/// <summary>On which day a remaining distance will have been ridden, from the machine's own odometer readings.</summary>
/// <remarks>
/// <para><b>Formula.</b> Between two readings kᵢ km in tᵢ days, kᵢ ~ N(u·tᵢ, s²·tᵢ): u = Σkᵢ/Σtᵢ, s² = Σ((kᵢ − u·tᵢ)²/tᵢ)/(n − 1),
/// variance of u = s²/Σtᵢ; with fewer than two intervals s is the scatter given. A prior joins by inverse variances. For D km left with
/// deviation σ: P(reached by day t) = Φ((u·t − D)/√(t²·var u + s²·t + σ²)). Median t = D/u; the 10 % day is the smaller root of
/// (u·t − D)² = z²·(t²·var u + s²·t + σ²), z = Φ⁻¹(0.9), and 0 when P is 10 % today.</para>
/// <para><b>Units.</b> Distances in km, times in days, s in km/√day; days count from the last reading.</para>
/// <para><b>Source.</b> Brownian motion with drift, moments by weighted least squares: standard statistics (from memory). The usual scatter
/// of 60 km/√day: common practice, no source.</para>
/// <para><b>Valid when</b> the machine is ridden on as it was: no change of owner or use, and readings spread over the seasons. Readings
/// from one season foretell that season only; a winter between turns weeks into months.</para>
/// </remarks>
public static class DateForecast
{
    /// <summary>The probability of the early day.</summary>
    public const double Early = 0.1;

    /// <summary>Scatter taken while the machine's own is unknown: common practice, no source.</summary>
    public static readonly DistanceScatter UsualScatter = new(60);

    private static readonly double Z = Normal.InvCDF(0, 1, 1 - Early);

    /// <summary>The forecast.</summary>
    /// <param name="odometer">One or more readings, each on a later day than the one before.</param>
    /// <param name="left">The distance still to go, zero or more, with its deviation.</param>
    /// <param name="prior">What is known of the machine's use beside the readings; needed with a single reading.</param>
    /// <param name="scatter">s while there are fewer than two intervals.</param>
    /// <param name="byDays">Days for which the probability is asked, zero or more.</param>
    /// <returns>Refused as <c>odometerBack</c>, <c>noUsage</c> (one reading, no prior) or <c>notRidden</c>.</returns>
    /// <exception cref="ArgumentException">There is no reading, or the days do not grow.</exception>
    public static Answer<DateOutlook> For(
        ReadOnlySpan<OdometerDay> odometer,
        DistanceLeft left,
        UsagePrior? prior,
        DistanceScatter scatter,
        ReadOnlySpan<double> byDays
    )
    {
        if (Backwards(odometer) is { } back)
            return Answer<DateOutlook>.Refuse("odometerBack", back);
        if (odometer.Length == 1 && prior is null)
            return Answer<DateOutlook>.Refuse(
                "noUsage",
                $"One odometer reading does not tell how much the machine is ridden: read again another day, or say what it is used."
            );
        var usage = Usage.Of(odometer, prior, scatter);
        var probabilities = new double[byDays.Length];
        for (var i = 0; i < byDays.Length; i++)
            probabilities[i] = usage.ProbabilityBy(byDays[i], left);
        var still = new DateOutlook(usage.PerDay, probabilities, null, null, usage.Intervals, Caution(usage));
        return usage.PerDay.Millimetres > 0
            ? still with
            {
                Median = left.Distance / usage.PerDay,
                Early = usage.EarlyDay(left, Z),
            }
            : Answer<DateOutlook>.Refuse(
                "notRidden",
                $"The machine was not ridden between the readings: there is no day to foretell.",
                still
            );
    }

    private static Sentence? Backwards(ReadOnlySpan<OdometerDay> odometer)
    {
        if (odometer.IsEmpty)
            throw new ArgumentException("At least one reading is needed.", nameof(odometer));
        Sentence? back = null;
        for (var i = 1; i < odometer.Length; i++)
            if (!(odometer[i].Day > odometer[i - 1].Day))
                throw new ArgumentException("Each day must be later than the one before.", nameof(odometer));
            else if (odometer[i].Distance < odometer[i - 1].Distance)
                back ??=
                    $"The odometer went back between day {odometer[i - 1].Day} and day {odometer[i].Day}: replaced, set back or misread. Give only the readings since, or put the entry right.";
        return back;
    }

    private static Sentence? Caution(Usage usage) =>
        usage.Intervals < Usage.IntervalsThatTell
            ? (Sentence)$"Fewer than three intervals: the scatter of riding is hardly known, take the dates as rough."
        : usage.Days < Usage.Year
            ? (Sentence)$"The readings cover less than a year: another season may be ridden otherwise."
        : null;
}

/// <summary>One odometer reading.</summary>
/// <param name="Day">On any count of days.</param>
/// <param name="Distance">What it showed.</param>
public readonly record struct OdometerDay(double Day, Length Distance);

/// <summary>A distance still to go.</summary>
/// <param name="Distance">Zero or more.</param>
/// <param name="Deviation">One standard deviation, zero or more.</param>
public readonly record struct DistanceLeft(Length Distance, Length Deviation);

/// <summary>What is known of the use beside the readings.</summary>
/// <param name="PerDay">Distance a day.</param>
/// <param name="Deviation">One standard deviation of it, more than zero.</param>
public readonly record struct UsagePrior(Length PerDay, Length Deviation);

/// <summary>When to expect it, in days from the last reading.</summary>
/// <param name="PerDay">Distance a day, by readings and prior.</param>
/// <param name="Probabilities">That the distance is ridden, for each of the days asked about.</param>
/// <param name="Median">The day that is as likely too early as too late; null when the machine is not ridden.</param>
/// <param name="Early">The day by which it is ridden with a probability of 10 %; null when the machine is not ridden.</param>
/// <param name="Intervals">Intervals between the readings.</param>
/// <param name="Caution">Why the dates are less sure than they look, or null.</param>
public sealed record DateOutlook(
    Length PerDay,
    IReadOnlyList<double> Probabilities,
    double? Median,
    double? Early,
    int Intervals,
    Sentence? Caution
);
