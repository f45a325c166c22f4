using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>How tight the chain gets over the travel of the suspension, from the slack at the bench.</summary>
/// <remarks>
/// <para><b>Formula.</b> C(φ) = √(Lₛ² + f² + 2 Lₛ f cos(φ − φ₀)), largest when pivot, sprocket and axle are in line; e(φ) = e_bench −
/// (T(C(φ)) − T(C_bench)); slack and excess as in <see cref="ChainSlack"/>, exactly. The tightest angle is φ₀ brought within the
/// travel.</para>
/// <para><b>Units.</b> Angles of the swingarm below the horizontal are positive; slack and overstretch in mm.</para>
/// <para><b>Source.</b> Derived in docs/handbook/chain-travel.md; checked by coordinates swept in 4001 steps.</para>
/// <para><b>Valid when</b> neither run wraps a slider (a run that does is tighter than said here) and the bench slack is read
/// at the bench angle. The maker's slack figure comes first: this shows why it must not be undercut.</para>
/// </remarks>
public static class ChainTravel
{
    /// <summary>Slack left at the tightest place, and the bench slack that a margin there needs.</summary>
    /// <param name="swingarm">Lengths and angles.</param>
    /// <param name="sprockets">Teeth and pitch.</param>
    /// <param name="benchSlack">Slack read at the bench angle, zero or more.</param>
    /// <param name="margin">Slack wanted at the tightest place, zero or more.</param>
    /// <returns>Refused as <c>sprocketsTouch</c> or <c>tooSlack</c>.</returns>
    public static Answer<TightestPlace> From(Swingarm swingarm, Sprockets sprockets, Length benchSlack, Length margin)
    {
        var angle = swingarm.Tightest;
        if (
            ChainLoop.Between(sprockets, swingarm.CentreDistance(swingarm.Bench)) is not { } bench
            || ChainLoop.Between(sprockets, swingarm.CentreDistance(angle)) is not { } tight
        )
            return LoopRefusal.Touching<TightestPlace>();
        var drawn = tight.Taut - bench.Taut;
        var left = bench.ExcessFor(benchSlack.Millimetres) - drawn;
        var slack = left <= 0 ? new Reach(0, 0) : tight.Slack(left ?? double.PositiveInfinity);
        var needed = tight.ExcessFor(margin.Millimetres) + drawn;
        // A bench position beyond the travel can be tighter than all of it; then no slack is needed at all.
        var atBench = needed <= 0 ? new Reach(0, 0) : bench.Slack(needed ?? double.PositiveInfinity);
        if (slack is not { } there || atBench is not { } wanted)
            return Answer<TightestPlace>.Refuse(LoopRefusal.TooSlackKey, LoopRefusal.TooSlack);
        return new TightestPlace(angle, new(there.Slack), left <= 0, new(Math.Max(0, -left!.Value)), new(wanted.Slack));
    }
}

/// <summary>The swingarm with its pivot, as the chain sees it.</summary>
/// <param name="Length">Pivot to axle, more than zero.</param>
/// <param name="PivotToFrontSprocket">Pivot to the shaft of the front sprocket, zero or more.</param>
/// <param name="Inline">Angle at which pivot, sprocket and axle lie in line, sprocket and axle on opposite sides of the pivot.</param>
/// <param name="Bench">Angle at which the slack is read.</param>
/// <param name="Droop">Lowest angle of the travel.</param>
/// <param name="Bump">Highest angle of the travel, not above <paramref name="Droop"/> in value.</param>
public readonly record struct Swingarm(
    Length Length,
    Length PivotToFrontSprocket,
    Angle Inline,
    Angle Bench,
    Angle Droop,
    Angle Bump
)
{
    /// <summary>Where in the travel the sprockets are farthest apart.</summary>
    public Angle Tightest => new(Math.Clamp(Inline.Radians, Bump.Radians, Droop.Radians));

    /// <summary>Distance of the sprocket shafts at an angle.</summary>
    public Length CentreDistance(Angle at)
    {
        var (arm, offset) = (Length.Millimetres, PivotToFrontSprocket.Millimetres);
        return new(Math.Sqrt(arm * arm + offset * offset + 2 * arm * offset * Math.Cos(at.Radians - Inline.Radians)));
    }
}

/// <summary>The tightest place of the travel.</summary>
/// <param name="Angle">Where it is.</param>
/// <param name="Slack">Slack left there; zero when taut.</param>
/// <param name="Taut">Whether no slack is left there.</param>
/// <param name="Overstretch">How much chain is missing there.</param>
/// <param name="BenchSlackNeeded">Slack at the bench that leaves the margin there.</param>
public sealed record TightestPlace(Angle Angle, Length Slack, bool Taut, Length Overstretch, Length BenchSlackNeeded);
