using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Lights;

/// <summary>How far the beam of a headlamp falls over a distance, and whether that is permitted.</summary>
/// <remarks>
/// <para><b>Formula.</b> drop = height of the lamp − height of the cut-off on the wall; inclination = drop / distance. Inside when min ≤ inclination ≤
/// max, else outside. On the wall the cut-off may stand from lamp height − max·distance to lamp height − min·distance.</para>
/// <para><b>Units.</b> Heights in mm above the ground that the wheels stand on, distance in m from the lens to the wall; inclination in per cent, down
/// positive (regulations write it negative).</para>
/// <para><b>Source.</b> Drop over distance: UNECE R53, 6.2.5, and the UK inspection manual for motorcycles, 4.1.2, both as listed in
/// ReferenceData/headlamp-inclination.csv with how each row was read. No limit is built in.</para>
/// <para><b>Valid when</b> ground and wall are level and square, tyres at pressure, the machine upright with the load that the limit is
/// written for, and the edge of the beam can be seen sharply. Heights are taken as exact.</para>
/// </remarks>
public static class HeadlampAim
{
    // An inclination that is computed to be the limit is inside, whatever its last binary digit.
    private const double Rounding = 1e-12;

    /// <summary>Judges one beam.</summary>
    /// <param name="distance">More than zero.</param>
    /// <param name="lampHeight">Centre of the lamp, more than zero.</param>
    /// <param name="cutoffHeight">Of the cut-off on the wall, zero or more; above the lamp the beam rises.</param>
    /// <param name="min">Least permitted inclination, down positive, any sign.</param>
    /// <param name="max">Largest permitted inclination, not below <paramref name="min"/>.</param>
    /// <exception cref="ArgumentException">The limits are not in order.</exception>
    public static BeamAim Of(Length distance, Length lampHeight, Length cutoffHeight, Ratio min, Ratio max)
    {
        if (min > max)
            throw new ArgumentException("The ends of the limit must be in order.", nameof(max));
        var drop = lampHeight - cutoffHeight;
        var inclination = drop / distance;
        var kept = inclination >= min.Value - Rounding && inclination <= max.Value + Rounding;
        return new(
            drop,
            new(inclination),
            kept ? Call.Inside : Call.Outside,
            lampHeight - distance * max.Value,
            lampHeight - distance * min.Value
        );
    }
}

/// <summary>Where a beam points.</summary>
/// <param name="Drop">From the lamp to the cut-off; negative rises.</param>
/// <param name="Inclination">Drop over distance.</param>
/// <param name="Call">Inside or outside; readings are taken as exact.</param>
/// <param name="CutoffLowest">Lowest permitted height of the cut-off on this wall; below zero it never reaches it.</param>
/// <param name="CutoffHighest">Highest permitted height of the cut-off on this wall.</param>
public sealed record BeamAim(Length Drop, Ratio Inclination, Call Call, Length CutoffLowest, Length CutoffHighest);
