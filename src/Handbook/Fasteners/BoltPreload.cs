using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fasteners;

/// <summary>Assembly preload and tightening torque of a bolt, for a part of its yield strength.</summary>
/// <remarks>
/// <para><b>Formula.</b> F = A_s·ν·R_p0.2/√(1 + 3·(1.5·(d₂/d₀)·(P/(π d₂) + 1.155 μ_G))²); M = F·(0.16 P + 0.58 d₂ μ_G + D_Km/2·μ_K),
/// with D_Km = (d_w + d_h)/2. Proof load = A_s·S_p.</para>
/// <para><b>Units.</b> mm, N/mm², N, N·m; frictions are pure numbers.</para>
/// <para><b>Source.</b> VDI 2230 part 1 (2001), assembly preload and tightening torque; EN ISO 898-1 for the strengths. Its tables come
/// out within 0.3 kN and 1.6 N·m up to M18; the edition of 1986 is lower.</para>
/// <para><b>Valid when</b> the bolt has a hexagon head of ISO 4014 on a medium hole of ISO 273, steel on steel, and the thread holds.
/// Friction is the user's own: ±0.02 moves the torque by about 15 %. A maker's torque comes first: into aluminium it is far lower.</para>
/// </remarks>
public static class BoltPreload
{
    /// <summary>ν, the part of the yield strength that is used when nobody says otherwise (VDI 2230: 0.9).</summary>
    public const double UsualUtilisation = 0.9;

    /// <summary>Preload and torque.</summary>
    /// <param name="thread">Size and pitch.</param>
    /// <param name="propertyClass">Strength.</param>
    /// <param name="threadFriction">μ_G, zero or more.</param>
    /// <param name="headFriction">μ_K, zero or more.</param>
    /// <param name="utilisation">ν, above 0, at most 1.</param>
    /// <returns>Refused as <c>overProof</c> when the preload would exceed the proof load.</returns>
    public static Answer<Assembly> From(
        MetricThread thread,
        PropertyClass propertyClass,
        double threadFriction,
        double headFriction,
        double utilisation = UsualUtilisation
    )
    {
        var preload = Preload(thread, utilisation * propertyClass.YieldOf(thread), threadFriction);
        var proofLoad = thread.StressArea * propertyClass.ProofOf(thread);
        var assembly = new Assembly(
            new(thread.StressArea),
            new(preload),
            new(preload * Lever(thread, threadFriction, headFriction) / 1000),
            new(proofLoad)
        );
        return preload <= proofLoad
            ? assembly
            : Answer<Assembly>.Refuse(
                "overProof",
                $"The torque would load the bolt beyond its proof load, so that it stretches for good: use a smaller part of its yield strength.",
                assembly with
                {
                    Torque = null,
                }
            );
    }

    private static double Preload(MetricThread t, double stress, double threadFriction)
    {
        var shear =
            1.5
            * (t.PitchDiameter / t.StressDiameter)
            * (t.Pitch / (Math.PI * t.PitchDiameter) + 1.155 * threadFriction);
        return t.StressArea * stress / Math.Sqrt(1 + 3 * shear * shear);
    }

    // Torque for each newton of preload, in mm. VDI 2230 rounds 1/2π to 0.16 and 1/(2 cos 30°) to 0.58.
    private static double Lever(MetricThread t, double threadFriction, double headFriction) =>
        0.16 * t.Pitch + 0.58 * t.PitchDiameter * threadFriction + t.BearingDiameter / 2 * headFriction;
}

/// <summary>A bolt as assembled.</summary>
/// <param name="StressArea">A_s.</param>
/// <param name="Preload">F.</param>
/// <param name="Torque">M, or null when refused.</param>
/// <param name="ProofLoad">Load that it bears without stretching for good.</param>
public sealed record Assembly(Area StressArea, Force Preload, Torque? Torque, Force ProofLoad);
