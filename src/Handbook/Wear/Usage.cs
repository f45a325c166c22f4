using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wear;

/// <summary>How a machine is ridden: distance a day and its scatter, in km and days.</summary>
internal sealed class Usage
{
    /// <summary>From this number of intervals on their scatter is worth something.</summary>
    public const int IntervalsThatTell = 3;

    /// <summary>In days: readings over less than this have not seen every season.</summary>
    public const double Year = 365;

    private const double Kilometre = 1e6; // mm

    private readonly double perDay;
    private readonly double perDayVariance;
    private readonly double scatterVariance; // km² a day

    private Usage(int intervals, double days, double perDay, double perDayVariance, double scatterVariance)
    {
        (Intervals, Days) = (intervals, days);
        (this.perDay, this.perDayVariance, this.scatterVariance) = (perDay, perDayVariance, scatterVariance);
    }

    public int Intervals { get; }

    /// <summary>From the first reading to the last.</summary>
    public double Days { get; }

    public Length PerDay => new(perDay * Kilometre);

    public static Usage Of(ReadOnlySpan<OdometerDay> odometer, UsagePrior? prior, DistanceScatter scatter)
    {
        var intervals = odometer.Length - 1;
        var days = odometer[^1].Day - odometer[0].Day;
        var given = scatter.KilometresPerRootDay * scatter.KilometresPerRootDay;
        if (intervals == 0)
            return new(0, 0, In(prior!.Value.PerDay), Squared(prior.Value.Deviation), given);
        var rate = In(odometer[^1].Distance - odometer[0].Distance) / days;
        var s2 = intervals < 2 ? given : ScatterAbout(rate, odometer) / (intervals - 1);
        return Joined(new(intervals, days, rate, s2 / days, s2), prior);
    }

    /// <summary>P(the distance is ridden by a day).</summary>
    public double ProbabilityBy(double day, DistanceLeft left)
    {
        var deviation = Math.Sqrt(day * day * perDayVariance + scatterVariance * day + Squared(left.Deviation));
        var past = perDay * day - In(left.Distance);
        return deviation == 0 ? (past >= 0 ? 1 : 0) : Normal.CDF(0, 1, past / deviation);
    }

    /// <summary>The day on which P rises through Φ(−z), for a machine that is ridden.</summary>
    public double EarlyDay(DistanceLeft left, double z)
    {
        var (distance, variance, z2) = (In(left.Distance), Squared(left.Deviation), z * z);
        var c = distance * distance - z2 * variance;
        if (c <= 0)
            return 0;
        // (B² − A·C)/z², multiplied out: with C above zero no term is negative
        var inner =
            perDay * distance * scatterVariance
            + z2 * scatterVariance * scatterVariance / 4
            + perDay * perDay * variance
            + perDayVariance * c;
        return c / (perDay * distance + z2 * scatterVariance / 2 + z * Math.Sqrt(inner));
    }

    private static double ScatterAbout(double rate, ReadOnlySpan<OdometerDay> odometer)
    {
        var sum = 0.0;
        for (var i = 1; i < odometer.Length; i++)
        {
            var t = odometer[i].Day - odometer[i - 1].Day;
            var miss = In(odometer[i].Distance - odometer[i - 1].Distance) - rate * t;
            sum += miss * miss / t;
        }
        return sum;
    }

    private static Usage Joined(Usage own, UsagePrior? prior)
    {
        if (prior is not { } other)
            return own;
        var (mine, its) = (own.perDayVariance, Squared(other.Deviation));
        var joined = (own.perDay * its + In(other.PerDay) * mine) / (mine + its);
        return new(own.Intervals, own.Days, joined, mine * its / (mine + its), own.scatterVariance);
    }

    private static double In(Length length) => length.Millimetres / Kilometre;

    private static double Squared(Length length) => In(length) * In(length);
}
