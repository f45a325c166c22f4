using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Chassis;

/// <summary>Force of the trapped air and of the spring in a telescopic fork at a place of its travel.</summary>
/// <remarks>
/// <para><b>Formula.</b> Air left when compressed V_c = A_i·h − V_s; at the top V_e = V_c + A_o·travel; at x V = V_e − A_o·x. Air force
/// A_o·p_a·((V_e/V)ⁿ − 1), air rate n·p·A_o²/V with p = p_a·(V_e/V)ⁿ. Spring force k·(p₀ + x). Total = 2·(air + spring).</para>
/// <para><b>Units.</b> h is the oil level in mm below the top of the tube, compressed, spring out; V_s the volume of the spring and what
/// goes in with it; areas from the diameters of the moving tube; forces in N, rate in N/mm, pressure absolute. All for one leg except the total.</para>
/// <para><b>Source.</b> Polytropic change of state p·Vⁿ = const of a perfect gas (textbook); geometry own derivation
/// (docs/handbook/fork-air.md); checked by integrating dp/dx = n·p·A_o/V. Standard atmosphere 101.325 kPa: ISO 2533:1975.</para>
/// <para><b>Valid when</b> the fork closed with atmospheric pressure inside at full extension, legs alike, no separate cartridge gas. n = 1 slow
/// (sag), 1.4 fastest; 1.3 when riding: common practice, no source.</para>
/// </remarks>
public static class ForkAir
{
    /// <summary>n when nobody says otherwise: riding. Common practice, no source.</summary>
    public const double UsualExponent = 1.3;

    /// <summary>n of a change so slow that the air keeps its temperature.</summary>
    public const double Isothermal = 1;

    /// <summary>n of a change so fast that no heat leaves: c_p/c_v of air (textbook).</summary>
    public const double Adiabatic = 1.4;

    /// <summary>p_a when nobody says otherwise: standard atmosphere at sea level, ISO 2533:1975.</summary>
    public static readonly Pressure StandardAtmosphere = new(101.325);

    private const double NewtonsPerKilopascalSquareMillimetre = 1e3 * 1e-6; // Pa per kPa · m² per mm²

    /// <summary>Forces at one place of the travel.</summary>
    /// <param name="leg">Measures and filling of one leg.</param>
    /// <param name="position">x, 0 at the top to the travel, in mm.</param>
    /// <param name="spring">Rate and preload in one leg, zero or more.</param>
    /// <param name="exponent">n, 1 to 1.4.</param>
    /// <param name="atmosphere">p_a, absolute, more than zero.</param>
    /// <returns>Refused as <c>noAir</c> when oil and spring fill the leg before the end of its travel.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The position or the exponent lies outside these bounds.</exception>
    public static Answer<ForkForces> At(
        ForkLeg leg,
        Length position,
        ForkSpring spring,
        double exponent,
        Pressure atmosphere
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegative(position.Millimetres, nameof(position));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(position.Millimetres, leg.Travel.Millimetres, nameof(position));
        ArgumentOutOfRangeException.ThrowIfLessThan(exponent, Isothermal);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(exponent, Adiabatic);
        if (leg.AirAt(leg.Travel) <= 0)
            return Answer<ForkForces>.Refuse(
                "noAir",
                $"Oil and spring fill the leg before the end of its travel: the fork would lock solid and burst its seals. Lower the oil, or check the measures."
            );
        var volume = leg.AirAt(position);
        var compression = Math.Pow(leg.AirAt(default) / volume, exponent);
        var area = leg.OuterArea;
        var push = area * atmosphere.Kilopascals * NewtonsPerKilopascalSquareMillimetre;
        var air = push * (compression - 1);
        var coil = spring.Rate.NewtonsPerMillimetre * (spring.Preload + position).Millimetres;
        return new ForkForces(
            new(air),
            new(coil),
            new(2 * (air + coil)),
            new(exponent * push * compression * area / volume)
        );
    }
}

/// <summary>One leg of a fork.</summary>
/// <param name="Outside">Outside diameter of the tube that slides in: what it sweeps.</param>
/// <param name="Inside">Inside diameter of the tube that the oil level is measured in, below <paramref name="Outside"/>.</param>
/// <param name="OilLevel">From the top of the tube down to the oil, compressed, spring out; more than zero.</param>
/// <param name="SpringVolume">What spring and spacer displace, zero or more.</param>
/// <param name="Travel">From topped out to the end, more than zero.</param>
public readonly record struct ForkLeg(
    Length Outside,
    Length Inside,
    Length OilLevel,
    Volume SpringVolume,
    Length Travel
)
{
    private const double CubicMillimetresPerLitre = 1e6;

    /// <summary>A_o in mm².</summary>
    internal double OuterArea => Disc(Outside);

    /// <summary>Air in mm³ at a place of the travel.</summary>
    internal double AirAt(Length position) =>
        Disc(Inside) * OilLevel.Millimetres
        - SpringVolume.Litres * CubicMillimetresPerLitre
        + OuterArea * (Travel - position).Millimetres;

    private static double Disc(Length diameter) => Math.PI / 4 * diameter.Millimetres * diameter.Millimetres;
}

/// <summary>The spring of one leg.</summary>
/// <param name="Rate">Zero in a fork that stands on air alone.</param>
/// <param name="Preload">Compression when topped out.</param>
public readonly record struct ForkSpring(Stiffness Rate, Length Preload);

/// <summary>What pushes a fork apart.</summary>
/// <param name="Air">Of the air in one leg, above the atmosphere.</param>
/// <param name="Spring">Of the spring in one leg.</param>
/// <param name="Total">Of both legs.</param>
/// <param name="AirRate">Of the air in one leg.</param>
public sealed record ForkForces(Force Air, Force Spring, Force Total, Stiffness AirRate);
