using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Slack of a chain from its links and the distance of the sprockets.</summary>
/// <remarks>
/// <para><b>Formula.</b> r = z·p/2π, sin β = (r₂ − r₁)/C, L = C cos β, T = 2L + (π + 2β) r₂ + (π − 2β) r₁, e = N·p − T. The middle
/// of a run at height h takes leg(r₁) + leg(r₂) − L more chain, leg = t − r·δ with t = √(d² − r²), d² = (L/2)² + (h + r)² and
/// δ = atan2(h + r, L/2) − asin(r/d). The roots of e on both sides, added, are the slack.</para>
/// <para><b>Units.</b> Slack is the total movement of the middle of one run, both ways, in mm; β in degrees; dS/dC in mm per mm.</para>
/// <para><b>Source.</b> Derived in docs/handbook/chain-slack.md; checked by a brute-force loop of polygons in coordinates.</para>
/// <para><b>Valid when</b> the other run is taut and the hand pushes hard enough to straighten the chain (20 N or more),
/// away from any slider or tensioner. Real sprockets ripple by ±0.05 mm of chain with their phase.</para>
/// </remarks>
public static class ChainSlack
{
    /// <summary>The slack.</summary>
    /// <param name="sprockets">Teeth and pitch.</param>
    /// <param name="links">Links of the chain, more than zero.</param>
    /// <param name="centreDistance">Between the sprocket shafts, more than zero.</param>
    /// <returns>Refused as <c>taut</c>, <c>tooSlack</c> or <c>sprocketsTouch</c>.</returns>
    public static Answer<Slackness> From(Sprockets sprockets, int links, Length centreDistance)
    {
        if (ChainLoop.Between(sprockets, centreDistance) is not { } loop)
            return LoopRefusal.Touching<Slackness>();
        var excess = links * sprockets.Pitch.Millimetres - loop.Taut;
        var shape = new Slackness(null, new(excess), new(loop.Run), new(loop.WrapAngle), null);
        if (excess < 0)
            return Answer<Slackness>.Refuse(
                "taut",
                $"The chain is shorter than the taut loop: it cannot be fitted so, and the axle must come forward or the chain be longer.",
                shape
            );
        if (loop.Slack(excess) is not { } reach)
            return Answer<Slackness>.Refuse(LoopRefusal.TooSlackKey, LoopRefusal.TooSlack, shape);
        return shape with
        {
            Slack = new Length(reach.Slack),
            SlackPerAxle = reach.Slack > 0 ? new Slope(loop.SlackPerCentreDistance(reach)) : null,
        };
    }
}

/// <summary>Slack of a chain with the geometry behind it.</summary>
/// <param name="Slack">Total movement of the middle of a run.</param>
/// <param name="Excess">Chain beyond the taut loop; negative when it is too short.</param>
/// <param name="Run">Length of one tangent run.</param>
/// <param name="WrapAngle">β, half the angle between the runs.</param>
/// <param name="SlackPerAxle">How the slack changes when the axle goes back; none at zero slack, where it has no bound.</param>
public sealed record Slackness(Length? Slack, Length Excess, Length Run, Angle WrapAngle, Slope? SlackPerAxle);
