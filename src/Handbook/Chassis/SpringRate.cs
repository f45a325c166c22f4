using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Chassis;

/// <summary>The rate of the spring that is fitted, from the sag without and with the rider.</summary>
/// <remarks>
/// <para><b>Formula.</b> k = F_rider·MR²/(rider sag − static sag).</para>
/// <para><b>Units.</b> F_rider in N at the wheel; sags in mm of wheel travel; MR = wheel travel / spring travel, a pure number; k in N/mm at the
/// spring. Both legs of a fork count as one spring.</para>
/// <para><b>Source.</b> Equilibrium of a linear spring, own derivation (docs/handbook/spring-rate.md); the preload cancels.</para>
/// <para><b>Valid when</b> the machine sinks under its own weight: topped out, the stop carries a part that nobody knows. Sags are
/// the mean of one reading after pushing down and one after lifting.</para>
/// </remarks>
public static class SpringRate
{
    /// <summary>The rate at the spring.</summary>
    /// <param name="riderForce">What the rider adds at the wheel, more than zero, in N.</param>
    /// <param name="staticSag">Of the machine alone, zero or more, in mm.</param>
    /// <param name="riderSag">With the rider, above the static sag unless that is zero, in mm.</param>
    /// <param name="motionRatio">Wheel travel / spring travel, more than zero.</param>
    /// <returns>Refused as <c>toppedOut</c> when the static sag is zero.</returns>
    /// <exception cref="ArgumentException">The rider sag is not above a static sag.</exception>
    public static Answer<FittedSpring> From(Force riderForce, Length staticSag, Length riderSag, double motionRatio)
    {
        if (staticSag.Millimetres <= 0)
            return Answer<FittedSpring>.Refuse(
                "toppedOut",
                $"Without the rider the suspension stands at its top stop, so the sags do not show the spring: take preload off until the machine sinks under its own weight, and read both again."
            );
        if (riderSag <= staticSag)
            throw new ArgumentException("The rider sag must be above the static sag.", nameof(riderSag));
        return new FittedSpring(Between(riderForce, staticSag, riderSag, motionRatio));
    }

    /// <summary>The rate of the spring that a force moves from one sag to another.</summary>
    internal static Stiffness Between(Force force, Length less, Length more, double motionRatio) =>
        new(force.Newtons * motionRatio * motionRatio / (more - less).Millimetres);
}

/// <summary>The spring that is fitted.</summary>
/// <param name="Rate">At the spring.</param>
public sealed record FittedSpring(Stiffness Rate);
