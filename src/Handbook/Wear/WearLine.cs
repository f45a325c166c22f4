using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wear;

/// <summary>What is believed of a part's straight wear line after its readings, in mm and 1000 km.</summary>
/// <remarks>
/// With a = n/σ², b = Σx/σ², c = Σx²/σ² and the prior's variances p, q the matrix I + S·AᵀA/σ² has the determinant
/// 1 + p·a + q·c + p·q·n·Σ(x − x̄)²/σ⁴. Every term is positive: nothing cancels, and a deviation of zero needs no inverse.
/// </remarks>
internal sealed class WearLine
{
    /// <summary>In millimetres: the distance that the rate counts.</summary>
    public const double ThousandKilometres = 1e9;

    private readonly double startVariance;
    private readonly double rateVariance;
    private readonly double sigmaSquared;
    private readonly double determinant;
    private readonly (double X, double Y)[] points;

    private WearLine((double X, double Y)[] points, double sigma, FleetWear fleet)
    {
        this.points = points;
        sigmaSquared = sigma * sigma;
        startVariance = fleet.StartDeviation.Millimetres * fleet.StartDeviation.Millimetres;
        rateVariance = fleet.RateDeviation.Millimetres * fleet.RateDeviation.Millimetres;
        var (sum, squares) = (points.Sum(p => p.X), points.Sum(p => p.X * p.X));
        determinant =
            1
            + (startVariance * points.Length + rateVariance * squares) / sigmaSquared
            + startVariance * rateVariance * points.Length * Spread(points) / (sigmaSquared * sigmaSquared);
        var (m0, m1) = (fleet.Start.Millimetres, fleet.Rate.Millimetres);
        var miss = points.Sum(p => p.Y - m0 + m1 * p.X) / sigmaSquared;
        var tilt = points.Sum(p => p.X * (p.Y - m0 + m1 * p.X)) / sigmaSquared;
        var both = startVariance * rateVariance * sum / sigmaSquared / determinant;
        Start = m0 + startVariance * (1 + rateVariance * squares / sigmaSquared) / determinant * miss - both * tilt;
        Rate = m1 + both * miss - VarianceOfRate * tilt;
        ChiSquare = points.Sum(p => (p.Y - m0 + m1 * p.X) * (p.Y - Start + Rate * p.X)) / sigmaSquared;
    }

    /// <summary>μ₀, in mm.</summary>
    public double Start { get; }

    /// <summary>μ₁, in mm per 1000 km.</summary>
    public double Rate { get; }

    /// <summary>How far the readings lie from what the fleet foretold, in squared deviations.</summary>
    public double ChiSquare { get; }

    public static WearLine After(ReadOnlySpan<WearReading> readings, Length deviation, FleetWear fleet)
    {
        var points = new (double, double)[readings.Length];
        for (var i = 0; i < points.Length; i++)
            points[i] = (Thousands(readings[i].At), readings[i].Value.Millimetres);
        return new(points, deviation.Millimetres, fleet);
    }

    /// <summary>A distance in 1000 km.</summary>
    public static double Thousands(Length distance) => distance.Millimetres / ThousandKilometres;

    /// <summary>When the line reaches a limit, counted from a distance.</summary>
    public LimitPassage PassageOf(Length limit, Length from)
    {
        var now = Thousands(from);
        var (steps, squares) = (points.Sum(p => now - p.X), points.Sum(p => (now - p.X) * (now - p.X)));
        var product = startVariance * rateVariance / sigmaSquared;
        return new(
            Start - Rate * now - limit.Millimetres,
            Rate,
            (startVariance + rateVariance * now * now + product * squares) / determinant,
            (rateVariance * now + product * steps) / determinant,
            VarianceOfRate,
            startVariance * rateVariance / determinant
        );
    }

    private double VarianceOfRate => rateVariance * (1 + startVariance * points.Length / sigmaSquared) / determinant;

    private static double Spread((double X, double Y)[] points)
    {
        var mean = points.Length == 0 ? 0 : points.Average(p => p.X);
        return points.Sum(p => (p.X - mean) * (p.X - mean));
    }
}
