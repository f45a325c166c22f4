using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Chassis;

/// <summary>How far the contact of the front tyre trails the steering axis.</summary>
/// <remarks>
/// <para><b>Formula.</b> trail = (R·sin ε − d)/cos ε on the ground; normal trail = R·sin ε − d, square to the steering axis.</para>
/// <para><b>Units.</b> R loaded radius of the front wheel and d offset of the axle ahead of the steering axis, in mm; ε rake of the steering axis from the
/// vertical (90° less the head angle) as the machine stands.</para>
/// <para><b>Source.</b> Geometry of a wheel on level ground; checked by coordinates and against the published solution 30.409 161 69 mm for
/// 0.6 m, 5°, 22 mm.</para>
/// <para><b>Valid when</b> wheel and steering axis lie in the plane of the machine, straight ahead. Some sources call d the rake: ask which is meant.</para>
/// </remarks>
public static class Trail
{
    /// <summary>Both trails; negative when the contact leads.</summary>
    /// <param name="wheelRadius">R, more than zero, in mm.</param>
    /// <param name="rake">ε, 0 to below 90°.</param>
    /// <param name="offset">d, positive forward, any sign, in mm.</param>
    public static TrailLengths Of(Length wheelRadius, Angle rake, Length offset)
    {
        var normal = wheelRadius * Math.Sin(rake.Radians) - offset;
        return new(normal / Math.Cos(rake.Radians), normal);
    }
}

/// <summary>How far the contact trails.</summary>
/// <param name="OnGround">Along the ground.</param>
/// <param name="Normal">Square to the steering axis: the lever that straightens the wheel.</param>
public sealed record TrailLengths(Length OnGround, Length Normal);
