using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fasteners;

/// <summary>Preload of a bolt tightened to a snug torque and then by an angle.</summary>
/// <remarks>
/// <para><b>Formula.</b> F = T/(K·d) + k_b·k_j/(k_b + k_j) · P · angle/360°.</para>
/// <para><b>Units.</b> Torque in N·m, lengths in mm, stiffness in N/mm, preload in N.</para>
/// <para><b>Source.</b> Own derivation (bolt and joint as springs in series); T = K·d·F after Shigley, Mechanical Engineering Design,
/// 8-8. Checked by stepping the angle.</para>
/// <para><b>Valid when</b> bolt and joint stay elastic: past yield the real preload is lower, which is what a yield-tightened bolt is
/// made for. The scatter of K (20 % and more) acts on the snug part only. Never turn an angle stage into a torque.</para>
/// </remarks>
public static class AngleTightening
{
    /// <summary>The preload.</summary>
    /// <param name="snugTorque">First stage, zero or more.</param>
    /// <param name="nutFactor">K, more than zero.</param>
    /// <param name="diameter">Nominal diameter of the thread.</param>
    /// <param name="pitch">Pitch of the thread.</param>
    /// <param name="boltStiffness">k_b, more than zero.</param>
    /// <param name="jointStiffness">k_j, more than zero.</param>
    /// <param name="angle">Second stage, zero or more.</param>
    public static StagedPreload From(
        Torque snugTorque,
        double nutFactor,
        Length diameter,
        Length pitch,
        Stiffness boltStiffness,
        Stiffness jointStiffness,
        Angle angle
    )
    {
        var snug = snugTorque.NewtonMetres * 1000 / (nutFactor * diameter.Millimetres);
        var (bolt, joint) = (boltStiffness.NewtonsPerMillimetre, jointStiffness.NewtonsPerMillimetre);
        // Written so that neither product nor quotient of two stiff springs can overflow.
        var series = bolt / (1 + bolt / joint);
        var added = series * pitch.Millimetres * angle.Radians / (2 * Math.PI);
        return new(new(snug), new(added));
    }
}

/// <summary>Preload of the two stages.</summary>
/// <param name="Snug">By the torque.</param>
/// <param name="Added">By the angle.</param>
public readonly record struct StagedPreload(Force Snug, Force Added)
{
    /// <summary>Both together.</summary>
    public Force Total => Snug + Added;
}
