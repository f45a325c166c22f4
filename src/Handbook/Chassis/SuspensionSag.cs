using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Chassis;

/// <summary>How far a suspension settles without and with its rider, what preload brings the rider sag to its target, and which spring would meet both targets.</summary>
/// <remarks>
/// <para><b>Formula.</b> sag = max(0, F·MR/k − p)·MR, with F = F_sprung for the static sag and F_sprung + F_rider for the rider sag. Preload
/// wanted p′ = F·MR/k − target/MR, change p′ − p, turns (p′ − p)/pitch. Spring for both targets k′ = F_rider·MR²/(rider target − static target).</para>
/// <para><b>Units.</b> F is the force at the wheel in N, without the unsprung mass; k in N/mm and preload p in mm at the spring; sag in mm of wheel
/// travel; MR = wheel travel / spring travel, a pure number. Both legs of a fork count as one spring: twice the rate of one.</para>
/// <para><b>Source.</b> Equilibrium of a linear spring, own derivation (docs/handbook/suspension-sag.md); checked by solving the equilibrium
/// by bisection.</para>
/// <para><b>Valid when</b> MR is constant between the two sags (a linkage: its mean near the rider sag) and the sags are read as the mean of
/// one reading after pushing down and one after lifting, so that friction cancels.</para>
/// </remarks>
public static class SuspensionSag
{
    // A static sag that is computed to be the minimum is enough, whatever its last binary digit. mm
    private const double Rounding = 1e-9;

    /// <summary>Sags as set, the correction of the preload, and the spring for both targets.</summary>
    /// <param name="load">Forces at the wheel, more than zero, in N.</param>
    /// <param name="spring">The spring as installed; rate, motion ratio and pitch more than zero, preload zero or more.</param>
    /// <param name="targets">The rider target above the static target, zero or more, in mm.</param>
    /// <exception cref="ArgumentException">The rider target is not above the static one.</exception>
    public static SagSetting Of(WheelLoad load, SpringInstalled spring, SagTargets targets)
    {
        if (targets.Rider <= targets.Static)
            throw new ArgumentException("The rider target must be above the static one.", nameof(targets));
        var change = spring.PreloadFor(load.WithRider, targets.Rider) - spring.Preload;
        var after = spring with { Preload = spring.Preload + change };
        var staticAfter = after.SagUnder(load.Sprung);
        var forBoth = spring with
        {
            Rate = SpringRate.Between(load.Rider, targets.Static, targets.Rider, spring.MotionRatio),
        };
        return new(
            spring.SagUnder(load.Sprung),
            spring.SagUnder(load.WithRider),
            change,
            new(change / spring.CollarPitch),
            after.Preload,
            staticAfter,
            staticAfter.Millimetres >= targets.StaticMinimum.Millimetres - Rounding,
            forBoth.Rate,
            forBoth.PreloadFor(load.WithRider, targets.Rider)
        );
    }
}

/// <summary>What the wheel carries.</summary>
/// <param name="Sprung">Of the machine alone, unsprung mass left out.</param>
/// <param name="Rider">What the rider adds to it.</param>
public readonly record struct WheelLoad(Force Sprung, Force Rider)
{
    /// <summary>Machine and rider.</summary>
    public Force WithRider => Sprung + Rider;
}

/// <summary>A spring as it sits in the machine.</summary>
/// <param name="Rate">At the spring.</param>
/// <param name="Preload">How far it is compressed when the suspension is topped out.</param>
/// <param name="MotionRatio">Wheel travel / spring travel.</param>
/// <param name="CollarPitch">Preload that one turn of the collar or cap adds.</param>
public readonly record struct SpringInstalled(Stiffness Rate, Length Preload, double MotionRatio, Length CollarPitch)
{
    /// <summary>Wheel travel taken by a force at the wheel; none while the preload carries it.</summary>
    public Length SagUnder(Force atWheel) => new(Math.Max(0, Compression(atWheel) - Preload.Millimetres) * MotionRatio);

    /// <summary>Preload with which a force at the wheel takes that sag; negative when the spring would lie loose in its seat.</summary>
    public Length PreloadFor(Force atWheel, Length sag) => new(Compression(atWheel) - sag.Millimetres / MotionRatio);

    private double Compression(Force atWheel) => atWheel.Newtons * MotionRatio / Rate.NewtonsPerMillimetre;
}

/// <summary>The sags wanted.</summary>
/// <param name="Rider">With the rider in riding position.</param>
/// <param name="Static">Of the machine alone.</param>
/// <param name="StaticMinimum">Least static sag that is accepted.</param>
public readonly record struct SagTargets(Length Rider, Length Static, Length StaticMinimum);

/// <summary>How the suspension stands and what to change.</summary>
/// <param name="StaticSag">Of the machine alone, as set.</param>
/// <param name="RiderSag">With the rider, as set.</param>
/// <param name="PreloadChange">Brings the rider sag to its target; positive compresses the spring.</param>
/// <param name="Turns">The same in turns of the collar.</param>
/// <param name="PreloadAfter">Preload then; negative: the spring would lie loose, the target cannot be set with it.</param>
/// <param name="StaticAfter">Static sag then.</param>
/// <param name="StaticEnough">Whether that reaches the least accepted.</param>
/// <param name="SpringForBoth">The rate that meets both targets.</param>
/// <param name="PreloadWithIt">The preload that this spring needs.</param>
public sealed record SagSetting(
    Length StaticSag,
    Length RiderSag,
    Length PreloadChange,
    Turns Turns,
    Length PreloadAfter,
    Length StaticAfter,
    bool StaticEnough,
    Stiffness SpringForBoth,
    Length PreloadWithIt
);
