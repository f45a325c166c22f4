using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Figures.Plausibility;

/// <summary>Whether a tyre pressure is in the unit that it says.</summary>
/// <remarks>
/// <para><b>Formula.</b> Outside 80 to 450 kPa, and inside it when the same number is taken in another unit of pressure.</para>
/// <para><b>Source.</b> Motorcycle tyres run at 80 (off the road, on sand) to 450 kPa (laden sidecar): common practice, no source.</para>
/// </remarks>
internal static class TyrePressure
{
    private const double Least = 80;
    private const double Most = 450;

    /// <summary>The doubt in words, or null.</summary>
    public static Sentence? Doubt(Figure figure)
    {
        if (
            !figure.Key.StartsWith("tyre.pressure", StringComparison.Ordinal)
            || figure.Unit.Dimension != Dimension.Pressure
        )
            return null;
        var numbers = new[] { figure.Value ?? figure.Min ?? figure.Max, figure.Max }.OfType<double>().ToArray();
        if (numbers.All(n => Likely(figure.Unit.ToBase(n))))
            return null;
        var meant = UnitTable.Measuring(Dimension.Pressure).FirstOrDefault(u => numbers.All(n => Likely(u.ToBase(n))));
        return meant is null
            ? (Sentence)$"{figure.AsPrinted} is no pressure for a tyre (about {Least:0} to {Most:0} kPa): look again"
            : (Sentence)
                $"{figure.AsPrinted} is no pressure for a tyre (about {Least:0} to {Most:0} kPa); in {meant} it would be one: look at the unit";
    }

    private static bool Likely(double kilopascals) => kilopascals is >= Least and <= Most;
}
