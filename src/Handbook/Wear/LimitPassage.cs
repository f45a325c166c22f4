using MathNet.Numerics.Distributions;

namespace Witnessmark.Handbook.Wear;

/// <summary>When a straight line that is known only so well reaches its limit.</summary>
/// <remarks>
/// The line stands <paramref name="Left"/> above the limit and falls by <paramref name="Rate"/>; its variance at t is
/// v(t) = <paramref name="Here"/> + 2·<paramref name="Slope"/>·t + <paramref name="OfRate"/>·t².
/// (rate·t − left)² = z²·v(t) is A·t² − 2B·t + C = 0. Each root is written in the form in which its own terms do not cancel.
/// </remarks>
/// <param name="Left">g, thickness left.</param>
/// <param name="Rate">μ₁.</param>
/// <param name="Here">v(0).</param>
/// <param name="Slope">v′(0)/2.</param>
/// <param name="OfRate">Variance of the rate.</param>
/// <param name="Determinant">Here·OfRate − Slope², computed without cancelling.</param>
internal readonly record struct LimitPassage(
    double Left,
    double Rate,
    double Here,
    double Slope,
    double OfRate,
    double Determinant
)
{
    /// <summary>Where the line itself reaches the limit; null when it does not fall.</summary>
    public double? Median => Rate > 0 ? Left / Rate : null;

    /// <summary>Whether the upper root exists: the rate is told from zero at this z.</summary>
    public bool Bounded(double z) => Rate > 0 && A(z) > 0;

    /// <summary>P(limit reached by t).</summary>
    public double ProbabilityBy(double t)
    {
        var deviation = Math.Sqrt(Here + 2 * Slope * t + OfRate * t * t);
        var past = Rate * t - Left;
        return deviation == 0 ? (past >= 0 ? 1 : 0) : Normal.CDF(0, 1, past / deviation);
    }

    /// <summary>Where P rises through Φ(−z); null when it does so nowhere.</summary>
    public double? Lower(double z)
    {
        var (a, b, c, root) = (A(z), B(z), C(z), Root(z));
        if (double.IsNaN(root) || Rate + z * Math.Sqrt(OfRate) <= 0)
            return null;
        var t = b > 0 ? c / (b + root) : (b - root) / a;
        // the other branch of the square, on which P falls through Φ(z), is no answer
        return Rate * t <= Left ? t : null;
    }

    /// <summary>Where P rises through Φ(z); null when it does so nowhere.</summary>
    public double? Upper(double z)
    {
        if (!Bounded(z))
            return null;
        var (b, root) = (B(z), Root(z));
        return b >= 0 ? (b + root) / A(z) : C(z) / (b - root);
    }

    private double A(double z) => Rate * Rate - z * z * OfRate;

    private double B(double z) => Rate * Left + z * z * Slope;

    private double C(double z) => Left * Left - z * z * Here;

    // √(B² − A·C), multiplied out
    private double Root(double z) =>
        z * Math.Sqrt(Rate * Rate * Here + 2 * Rate * Left * Slope + Left * Left * OfRate - z * z * Determinant);
}
