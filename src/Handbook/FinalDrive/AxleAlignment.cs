using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Turns on the left and the right adjuster that straighten the rear axle and set the slack at once.</summary>
/// <remarks>
/// <para><b>Formula.</b> δ = a_L − a_R; skew γ = atan(δ/W). Offsets: C·δ/W at the front sprocket, D·δ/W over the tyre, wheelbase·δ/W
/// at the front axle. With the chain at y_s from the middle, w_L = 1/2 + y_s/W, w_R = 1/2 − y_s/W and the wanted chain shift
/// d = (S² − S_t²)/k: turns_L = (d − w_R·δ)/P, turns_R = (d + w_L·δ)/P.</para>
/// <para><b>Units.</b> Lengths in mm, γ in rad, k in mm² per mm of axle, turns positive rearward. x forward, y left; a grows rearward;
/// δ above zero: the left side stands further back and the wheel points left. y_s above zero: the chain runs on the left.</para>
/// <para><b>Source.</b> Own derivation from coordinates (docs/handbook/axle-alignment.md); checked by an independent computation that
/// moves the axle's two ends in the plane.</para>
/// <para><b>Valid when</b> the marks of both sides agree when the axle is straight (their common error is the answer's), both
/// adjusters have the same thread, and γ is below 2°: then the offsets are right within 0.1 % of themselves.</para>
/// </remarks>
public static class AxleAlignment
{
    /// <summary>Where the axle stands and the turns that put it right.</summary>
    /// <param name="axle">The readings at the two adjusters and what they sit on.</param>
    /// <param name="slack">What the chain has and shall have.</param>
    /// <param name="threadPitch">Axle travel of one turn, more than zero.</param>
    /// <param name="reach">The distances over which the skew shows, as far as known.</param>
    public static AxlePosition Of(AxleReadings axle, SlackWish slack, Length threadPitch, SkewReach reach = default)
    {
        var difference = axle.ReadingGrowsRearward ? axle.Left - axle.Right : axle.Right - axle.Left;
        var slope = difference / axle.AdjusterDistance;
        var chainShift = slack.ChainShift;
        var offset = axle.ChainPlaneOffset / axle.AdjusterDistance;
        return new(
            difference,
            new Angle(Math.Atan(slope)),
            reach.CentreDistance * slope,
            reach.TyreDiameter * slope,
            reach.Wheelbase * slope,
            new Turns((chainShift - (0.5 - offset) * difference) / threadPitch),
            new Turns((chainShift + (0.5 + offset) * difference) / threadPitch)
        );
    }
}

/// <summary>What is read at the two adjusters.</summary>
/// <param name="Left">Reading on the left, zero or more.</param>
/// <param name="Right">Reading on the right, from the same kind of mark.</param>
/// <param name="ReadingGrowsRearward">Whether the number grows when the axle goes back; from the swingarm's end it shrinks.</param>
/// <param name="AdjusterDistance">W, between the two adjusters, more than zero.</param>
/// <param name="ChainPlaneOffset">y_s, from the middle to the chain; left positive, right negative.</param>
public readonly record struct AxleReadings(
    Length Left,
    Length Right,
    bool ReadingGrowsRearward,
    Length AdjusterDistance,
    Length ChainPlaneOffset
);

/// <summary>The slack that is and the slack that shall be.</summary>
/// <param name="Slack">Read now, zero or more.</param>
/// <param name="Target">Wanted, more than zero.</param>
/// <param name="Law">k, slack squared that a millimetre of axle takes, more than zero.</param>
public readonly record struct SlackWish(Length Slack, Length Target, AxleSlackLaw Law)
{
    /// <summary>How far the axle must go back in the plane of the chain.</summary>
    internal Length ChainShift =>
        new(
            (Slack.Millimetres * Slack.Millimetres - Target.Millimetres * Target.Millimetres)
                / Law.SquareMillimetresPerMillimetre
        );
}

/// <summary>Distances over which a skew becomes an offset; each null when not known.</summary>
/// <param name="CentreDistance">Between the sprockets.</param>
/// <param name="TyreDiameter">Outside diameter of the rear tyre.</param>
/// <param name="Wheelbase">Between the axles.</param>
public readonly record struct SkewReach(Length? CentreDistance, Length? TyreDiameter, Length? Wheelbase);

/// <summary>Where the axle stands and what puts it right.</summary>
/// <param name="Difference">Left less right; positive when the left side stands further back.</param>
/// <param name="Skew">Of the wheel; positive points left.</param>
/// <param name="LateralAtSprocket">Offset of the chain line at the front sprocket, or null.</param>
/// <param name="ToeOverTyre">Offset over the tyre's diameter, or null.</param>
/// <param name="MissAtFrontAxle">Offset at the front axle, or null.</param>
/// <param name="TurnsLeft">On the left adjuster, rearward positive.</param>
/// <param name="TurnsRight">On the right adjuster, rearward positive.</param>
public sealed record AxlePosition(
    Length Difference,
    Angle Skew,
    Length? LateralAtSprocket,
    Length? ToeOverTyre,
    Length? MissAtFrontAxle,
    Turns TurnsLeft,
    Turns TurnsRight
);
