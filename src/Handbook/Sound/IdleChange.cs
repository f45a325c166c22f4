using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Sound;

/// <summary>Whether the idle changed between two recordings, such as with the handlebar turned left and right.</summary>
/// <remarks>
/// <para><b>Formula.</b> d = after − before, u = √(u_before² + u_after²). Same when d lies within ± allowed with a probability of
/// 0.95 or more, changed when with 0.05 or less, else unproven.</para>
/// <para><b>Units.</b> All in Hz, or all as engine speed in 1/min; uncertainties are one standard deviation; the share is of before.</para>
/// <para><b>Source.</b> Uncertainty of a difference: JCGM 100:2008, 5.1.2. Probability of conformance: JCGM 106:2012, 7.2 to 7.4.</para>
/// <para><b>Valid when</b> nothing else changed between the two: engine warm, no load switched on or off. What change is allowed is the
/// technician's to say; that the idle must not change with the handlebar is common practice, no source.</para>
/// </remarks>
public static class IdleChange
{
    /// <summary>Judges the change.</summary>
    /// <param name="before">First recording, more than zero.</param>
    /// <param name="after">Second recording, more than zero.</param>
    /// <param name="uncertainBefore">One standard deviation, zero or more.</param>
    /// <param name="uncertainAfter">One standard deviation, zero or more.</param>
    /// <param name="allowed">Largest change that counts as none, zero or more.</param>
    public static ChangeOfIdle Between(
        Frequency before,
        Frequency after,
        Frequency uncertainBefore,
        Frequency uncertainAfter,
        Frequency allowed
    )
    {
        var change = after - before;
        var uncertainty = Math.Sqrt(
            uncertainBefore.Hertz * uncertainBefore.Hertz + uncertainAfter.Hertz * uncertainAfter.Hertz
        );
        var judged = Verdict.On(change.Hertz, uncertainty, new Limit(-allowed.Hertz, allowed.Hertz));
        return new(change, new Frequency(uncertainty), new Ratio(change / before), judged.Call);
    }
}

/// <summary>How the idle changed.</summary>
/// <param name="Change">After less before.</param>
/// <param name="Uncertainty">One standard deviation of it.</param>
/// <param name="Share">The change as a share of before.</param>
/// <param name="Call">Whether it is inside what is allowed.</param>
public sealed record ChangeOfIdle(Frequency Change, Frequency Uncertainty, Ratio Share, Call Call);
