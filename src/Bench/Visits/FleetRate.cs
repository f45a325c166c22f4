using MathNet.Numerics.Distributions;

namespace Witnessmark.Bench.Visits;

/// <summary>How fast a point wears on like machines, as it is known before one more of them was read.</summary>
/// <remarks>
/// <para><b>Formula.</b> Each machine's rate is the slope of the least-squares line through the readings since its point was last worked on:
/// b = Σ(x − x̄)(y − ȳ)/Σ(x − x̄)², with the variance u² = σ²/Σ(x − x̄)². Over n machines: mean b̄ = Σb/n, spread s² = Σ(b − b̄)²/(n − 1), or the
/// mean of the u² where that is more: machines that agree better than their readings can tell agree by chance. The deviation of one more
/// machine is s·√(1 + 1/n)·t/z, t = 95 % point of Student's t with n − 1 degrees of freedom, z = Φ⁻¹(0.95): a normal prior of that width
/// covers nine in ten further machines, as the prediction interval does.</para>
/// <para><b>Units.</b> Values in mm, distances in 1000 km, rates in mm per 1000 km, positive where the reading grows.</para>
/// <para><b>Source.</b> Least squares and its variance: JCGM 100:2008 (GUM), H.3.2 (from memory). Interval for one more observation of a normal
/// population: ISO 16269-8:2004, mean and deviation unknown (from memory).</para>
/// <para><b>Valid when</b> the machines are like each other and are ridden alike: their rates are taken as one normal population. One rate
/// for each machine, from readings that lie at least 1000 km apart (common practice, no source).</para>
/// </remarks>
/// <param name="Machines">n, three or more.</param>
/// <param name="Mean">b̄.</param>
/// <param name="Deviation">One standard deviation of one more machine's rate, above zero.</param>
public sealed record FleetRate(int Machines, double Mean, double Deviation)
{
    /// <summary>From so many machines on: two show no spread that could be relied on. Common practice, no source.</summary>
    public const int Fewest = 3;

    private const double ShortestThousands = 1;
    private const double Percentile = 0.95;

    /// <summary>The rate of like machines.</summary>
    /// <param name="others">The same point on each of them; those that do not show a rate count for nothing.</param>
    /// <returns>Null when fewer than <see cref="Fewest"/> show one; how many do.</returns>
    public static (FleetRate? Rate, int Machines) Of(IEnumerable<PointHistory> others)
    {
        var slopes = others.Select(SlopeOf).OfType<(double Rate, double Variance)>().ToArray();
        if (slopes.Length < Fewest)
            return (null, slopes.Length);
        var mean = slopes.Average(s => s.Rate);
        var spread = slopes.Sum(s => (s.Rate - mean) * (s.Rate - mean)) / (slopes.Length - 1);
        var variance = Math.Max(spread, slopes.Average(s => s.Variance)) * (1 + 1.0 / slopes.Length);
        var wider = StudentT.InvCDF(0, 1, slopes.Length - 1, Percentile) / Normal.InvCDF(0, 1, Percentile);
        return (new(slopes.Length, mean, Math.Sqrt(variance) * wider), slopes.Length);
    }

    private static (double Rate, double Variance)? SlopeOf(PointHistory history)
    {
        if (WearRun.Of(history).Run is not { } run)
            return null;
        var points = run.Readings.Select(r => (X: r.Kilometres!.Value / 1000, Y: run.Unit.ToBase(r.Value))).ToArray();
        if (points.Max(p => p.X) - points.Min(p => p.X) < ShortestThousands)
            return null;
        var (x, y) = (points.Average(p => p.X), points.Average(p => p.Y));
        var squares = points.Sum(p => (p.X - x) * (p.X - x));
        var deviation = run.Unit.Factor * run.Readings.Max(r => r.Deviation!.Value);
        return (points.Sum(p => (p.X - x) * (p.Y - y)) / squares, deviation * deviation / squares);
    }
}
