using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>Viscosity of an oil at any temperature from those at 40 °C and 100 °C.</summary>
/// <remarks>
/// <para><b>Formula.</b> log log Z = A − B·log T, decimal logarithms, T = °C + 273.15. Z = ν + 0.7 from 2 mm²/s up; below,
/// Z = ν + 0.7 + exp(−1.47 − 1.84ν − 0.51ν²). Back, with z = Z − 0.7: ν = z from 2 up; below,
/// ν = z − exp(−0.7487 − 3.295z + 0.6119z² − 0.3193z³).</para>
/// <para><b>Units.</b> ν in mm²/s, T in K; A and B are pure numbers.</para>
/// <para><b>Source.</b> ASTM D341-09 (2015), Viscosity-Temperature Charts for Liquid Petroleum Products, equations 1 to 3, as reprinted. Range of
/// the charts −70 °C to 370 °C and 0.21 to 20 000 000 mm²/s (from memory); straight up to 340 °C, clause 3.1.</para>
/// <para><b>Valid when</b> the oil is one homogeneous liquid: between cloud point and first boiling (clause 3.1), −70 °C to 340 °C at the
/// very most. A multigrade oil in the cold is thicker than this, so it says nothing about the cold-start grade.</para>
/// </remarks>
public static class OilViscosity
{
    private const double Kelvin = 273.15;
    private const double Warm = 40 + Kelvin;
    private const double Hot = 100 + Kelvin;

    // Ends of the charts
    private const double Coldest = -70;
    private const double Hottest = 340;
    private const double Thinnest = 0.21;
    private const double Thickest = 2e7;

    // An end written in °F is the same end.
    private const double Rounding = 1e-9;

    /// <summary>From here up Z is ν + 0.7 and nothing more.</summary>
    private const double PlainFrom = 2;

    /// <summary>The line through both points and the viscosity on it.</summary>
    /// <param name="at40">Kinematic viscosity at 40 °C.</param>
    /// <param name="at100">Kinematic viscosity at 100 °C, less than at 40 °C.</param>
    /// <param name="temperature">Where the viscosity is wanted.</param>
    /// <returns>Refused as <c>notThinning</c> or <c>outsideRange</c>; the line is still given where it holds.</returns>
    public static Answer<ViscosityLine> At(Viscosity at40, Viscosity at100, Temperature temperature)
    {
        if (at100 >= at40)
            return Answer<ViscosityLine>.Refuse(
                "notThinning",
                $"The oil would not get thinner from 40 °C to 100 °C, which no oil does: check whether the two figures are swapped."
            );
        if (!OnTheChart(at40.SquareMillimetresPerSecond) || !OnTheChart(at100.SquareMillimetresPerSecond))
            return Answer<ViscosityLine>.Refuse(
                "outsideRange",
                $"The equation holds from 0.21 to 20 000 000 mm²/s: a viscosity given lies outside."
            );
        var (warm, hot) = (DoubleLog(at40), DoubleLog(at100));
        var slope = (warm - hot) / (Math.Log10(Hot) - Math.Log10(Warm));
        var intercept = warm + slope * Math.Log10(Warm);
        return temperature.DegreesCelsius is >= Coldest - Rounding and <= Hottest + Rounding
            ? OnTheLine(intercept, slope, temperature)
            : Refused(
                intercept,
                slope,
                $"The equation holds from -70 °C to 340 °C at the most: ask for a temperature between."
            );
    }

    private static Answer<ViscosityLine> OnTheLine(double intercept, double slope, Temperature temperature)
    {
        var z = Math.Pow(10, Math.Pow(10, intercept - slope * Math.Log10(temperature.DegreesCelsius + Kelvin))) - 0.7;
        var viscosity = z >= PlainFrom ? z : z - Math.Exp(-0.7487 - 3.295 * z + 0.6119 * z * z - 0.3193 * z * z * z);
        return OnTheChart(viscosity)
            ? new ViscosityLine(new(viscosity), intercept, slope)
            : Refused(
                intercept,
                slope,
                $"At this temperature the line leaves the range of the equation, 0.21 to 20 000 000 mm²/s."
            );
    }

    private static double DoubleLog(Viscosity viscosity)
    {
        var v = viscosity.SquareMillimetresPerSecond;
        var z = v + 0.7 + (v < PlainFrom ? Math.Exp(-1.47 - 1.84 * v - 0.51 * v * v) : 0);
        return Math.Log10(Math.Log10(z));
    }

    private static bool OnTheChart(double viscosity) => viscosity is >= Thinnest and <= Thickest;

    private static Answer<ViscosityLine> Refused(double intercept, double slope, Sentence because) =>
        Answer<ViscosityLine>.Refuse("outsideRange", because, new(null, intercept, slope));
}

/// <summary>The line of one oil and a point on it.</summary>
/// <param name="Viscosity">At the temperature asked for, or null where the line does not reach.</param>
/// <param name="Intercept">A.</param>
/// <param name="Slope">B.</param>
public sealed record ViscosityLine(Viscosity? Viscosity, double Intercept, double Slope);
