using Witnessmark.Handbook.Chassis;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>trail</c>.</summary>
internal static class TrailContract
{
    private static readonly Input<Length> WheelRadius = Take.Positive<Length>(
        "wheelRadius",
        "loaded radius of the front wheel"
    );
    private static readonly Input<Angle> Rake = Take.Bounded<Angle>(
        "rake",
        "of the steering axis from the vertical",
        rad => rad is >= 0 and < Math.PI / 2,
        "0 to below 90 deg"
    );
    private static readonly Input<Length> Offset = Take.Signed<Length>(
        "offset",
        "of the axle ahead of the steering axis"
    );

    public static Calculation Calculation { get; } =
        new(
            "trail",
            "Chassis",
            "How far the contact of the front tyre trails the steering axis.",
            "geometry",
            typeof(Trail),
            [WheelRadius, Rake, Offset],
            [
                new("trail", "mm", "along the ground; negative leads"),
                new("normalTrail", "mm", "square to the steering axis"),
            ],
            given =>
            {
                var trail = Trail.Of(given.Of(WheelRadius), given.Of(Rake), given.Of(Offset));
                return new Gives().With("trail", trail.OnGround, "mm").With("normalTrail", trail.Normal, "mm");
            }
        );
}
