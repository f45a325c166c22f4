using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>How the oil level changes between the temperature at which it was read and the one for which its marks are made.</summary>
/// <remarks>
/// <para><b>Formula.</b> ΔV = V·[(1 + a·ΔT)/(1 + 3·a_c·ΔT) − 1], ΔT = meant − read; level change = ΔV/V_lh. The oil grows by its cubic
/// coefficient a, the case around it by three times its linear one, a_c.</para>
/// <para><b>Units.</b> V in L, a and a_c in 1/K, temperatures in °C, V_lh between the marks in L.</para>
/// <para><b>Source.</b> Own derivation from linear expansion. For a: API MPMS 11.1 / ASTM D1250-04, lubricating oil,
/// 0.6278/ρ per K with ρ in kg/m³ at 15 °C (this constant from memory), 7.2·10⁻⁴ 1/K at 870 kg/m³. For an aluminium case 2.3·10⁻⁵ 1/K
/// (common practice, no source).</para>
/// <para><b>Valid when</b> nothing is added or burnt between and neither oil nor case grows by more than a fifth. The filter and the galleries must be
/// filled alike both times.</para>
/// </remarks>
public static class OilWarmth
{
    /// <summary>Beyond this growth of the volume a constant coefficient means nothing.</summary>
    private const double MostGrowth = 0.2;

    /// <summary>The change on the way from one temperature to the other.</summary>
    /// <param name="volume">V at the temperature read, zero or more.</param>
    /// <param name="betweenMarks">V_lh, more than zero.</param>
    /// <param name="oil">a, the cubic coefficient of the oil.</param>
    /// <param name="metal">a_c, the linear coefficient of the case.</param>
    /// <param name="readAt">Temperature at which the level was read.</param>
    /// <param name="meantAt">Temperature for which the marks are made.</param>
    /// <returns>Refused as <c>expansionTooLarge</c> when oil or case would grow or shrink by more than a fifth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no volume between the marks.</exception>
    public static Answer<WarmedOil> Of(
        Volume volume,
        Volume betweenMarks,
        Expansion oil,
        Expansion metal,
        Temperature readAt,
        Temperature meantAt
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(betweenMarks.Litres, 0, nameof(betweenMarks));
        var warmer = (meantAt - readAt).DegreesCelsius;
        var (oilGrows, caseGrows) = (oil.PerKelvin * warmer, 3 * metal.PerKelvin * warmer);
        if (Math.Max(Math.Abs(oilGrows), Math.Abs(caseGrows)) > MostGrowth)
            return Answer<WarmedOil>.Refuse(
                "expansionTooLarge",
                $"Oil or case would change by more than a fifth of its volume: check both coefficients (oil about 0.0007 1/K, aluminium about 0.000023 1/K) and both temperatures."
            );
        var change = volume * ((1 + oilGrows) / (1 + caseGrows) - 1);
        return new WarmedOil(change, change / betweenMarks);
    }
}

/// <summary>What warmth does to the oil.</summary>
/// <param name="VolumeChange">How much more the oil fills than the case gives room, positive when it rises.</param>
/// <param name="LevelChange">The same in parts of the distance of the marks; add it to the level read.</param>
public sealed record WarmedOil(Volume VolumeChange, double LevelChange);
