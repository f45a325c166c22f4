using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-tilt</c>.</summary>
internal static class OilTiltContract
{
    private static readonly Input<Angle> Tilt = Take.Signed<Angle>("tilt", "how far the machine leans, either way");
    private static readonly Input<Length> StickOffset = Take.Signed<Length>(
        "stickOffset",
        "from the middle of the oil surface to the stick, positive towards the side that a positive tilt lowers"
    );
    private static readonly Input<Length> MarksApart = Take.Positive<Length>(
        "marksApart",
        "height from the low to the high mark"
    );

    public static Calculation Calculation { get; } =
        new(
            "oil-tilt",
            "Fluids",
            "How far a leaning machine falsifies the oil level.",
            "own derivation, checked by slices (docs/handbook/oil-tilt.md)",
            typeof(OilTilt),
            [Tilt, StickOffset, MarksApart],
            [
                new("levelShift", "mm", "how much higher the oil stands at the stick"),
                new("levelError", "1", "the same in parts of the distance of the marks; take it off the level read"),
            ],
            given =>
                Reply.To(
                    OilTilt.Of(given.Of(Tilt), given.Of(StickOffset), given.Of(MarksApart)),
                    r => new Gives().With("levelShift", r.Shift, "mm").With("levelError", r.Error, "1")
                )
        );
}
