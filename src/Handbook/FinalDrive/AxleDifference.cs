using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Whether repeated readings on both sides prove the rear axle straight.</summary>
/// <remarks>
/// <para><b>Formula.</b> δ = mean_L − mean_R; se² = s_p²(1/n_L + 1/n_R) + 2u² with the pooled scatter
/// s_p² = (Σ(l − mean_L)² + Σ(r − mean_R)²)/(n_L + n_R − 2); U = t₀.₉₇₅(n_L + n_R − 2)·se. One reading a side: U = 1.96·√2·u.
/// Outside when |δ| − U &gt; tolerance, inside when |δ| + U ≤ tolerance, else unproven.</para>
/// <para><b>Units.</b> All in mm; u is one standard deviation of what every reading of a side shares, U the 95 % half-width.</para>
/// <para><b>Source.</b> Own derivation: two-sample comparison with pooled scatter and JCGM 100:2008 (GUM), 5.1.2 (sum of variances)
/// and G.3 (t-factor). Checked by hand on two sets of readings.</para>
/// <para><b>Valid when</b> both sides scatter alike and both are read from the same kind of mark. The t-factor is on the safe
/// side for the part u, which has no degrees of freedom of its own.</para>
/// </remarks>
public static class AxleDifference
{
    /// <summary>Two-sided 95 % of a normal distribution, for one reading a side.</summary>
    private const double Normal95 = 1.96;

    /// <summary>Compares the two sides.</summary>
    /// <param name="left">One reading or more on the left.</param>
    /// <param name="right">One reading or more on the right.</param>
    /// <param name="readingUncertainty">u, zero or more.</param>
    /// <param name="tolerance">Largest permitted difference, zero or more.</param>
    /// <exception cref="ArgumentException">A side has no reading.</exception>
    public static SideComparison Of(
        ReadOnlySpan<Length> left,
        ReadOnlySpan<Length> right,
        Length readingUncertainty,
        Length tolerance
    )
    {
        if (left.IsEmpty || right.IsEmpty)
            throw new ArgumentException("Each side needs a reading.", left.IsEmpty ? nameof(left) : nameof(right));
        var difference = Mean(left) - Mean(right);
        var half = HalfWidth(left, right, readingUncertainty.Millimetres);
        var size = Math.Abs(difference);
        var call =
            size - half > tolerance.Millimetres ? Call.Outside
            : size + half <= tolerance.Millimetres ? Call.Inside
            : Call.Unproven;
        return new(new(difference), new(half), call);
    }

    private static double HalfWidth(ReadOnlySpan<Length> left, ReadOnlySpan<Length> right, double u)
    {
        var freedom = left.Length + right.Length - 2;
        if (freedom == 0)
            return Normal95 * Math.Sqrt(2) * u;
        var pooled = (Squares(left) + Squares(right)) / freedom;
        var se = Math.Sqrt(pooled * (1.0 / left.Length + 1.0 / right.Length) + 2 * u * u);
        return StudentT.InvCDF(0, 1, freedom, 0.975) * se;
    }

    private static double Mean(ReadOnlySpan<Length> readings)
    {
        var sum = 0.0;
        foreach (var reading in readings)
            sum += reading.Millimetres;
        return sum / readings.Length;
    }

    private static double Squares(ReadOnlySpan<Length> readings)
    {
        var mean = Mean(readings);
        var sum = 0.0;
        foreach (var reading in readings)
            sum += (reading.Millimetres - mean) * (reading.Millimetres - mean);
        return sum;
    }
}

/// <summary>How the two sides compare.</summary>
/// <param name="Difference">Mean of the left less mean of the right.</param>
/// <param name="Uncertainty">Half-width that holds in 95 of 100.</param>
/// <param name="Call">What the readings prove.</param>
public sealed record SideComparison(Length Difference, Length Uncertainty, Call Call);
