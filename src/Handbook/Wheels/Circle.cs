using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wheels;

/// <summary>Angles of one turn.</summary>
internal static class Circle
{
    /// <summary>The same direction from 0 to below 360 deg.</summary>
    public static Angle OnCircle(this Angle angle)
    {
        var once = angle.Radians % Math.Tau;
        var positive = once < 0 ? once + Math.Tau : once;
        return new(positive >= Math.Tau ? 0 : positive);
    }
}
