using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>axle-alignment</c>.</summary>
internal static class AxleAlignmentContract
{
    private static readonly Input<Length> Left = Take.Quantity<Length>("left", "reading at the left adjuster");
    private static readonly Input<Length> Right = Take.Quantity<Length>("right", "reading at the right adjuster");
    private static readonly Input<bool> GrowsRearward = Take.Truth(
        "readingGrowsRearward",
        "whether the number grows when the axle goes back"
    );
    private static readonly Input<Length> AdjusterDistance = Take.Positive<Length>(
        "adjusterDistance",
        "between the two adjusters"
    );
    private static readonly Input<Length> ChainPlaneOffset = Take.Signed<Length>(
        "chainPlaneOffset",
        "from the middle to the chain; left positive"
    );
    private static readonly Input<Length> CentreDistance = Take.Positive<Length>(
            "centreDistance",
            "between the sprockets; asks for lateralAtSprocket"
        )
        .OrNothing();
    private static readonly Input<Length> TyreDiameter = Take.Positive<Length>(
            "tyreDiameter",
            "outside diameter of the rear tyre; asks for toeOverTyre"
        )
        .OrNothing();
    private static readonly Input<Length> Wheelbase = Take.Positive<Length>(
            "wheelbase",
            "between the axles; asks for missAtFrontAxle"
        )
        .OrNothing();
    private static readonly Input<Length> ThreadPitch = Take.Positive<Length>(
        "threadPitch",
        "axle travel of one turn of an adjuster"
    );
    private static readonly Input<Length> Slack = Take.Quantity<Length>("slack", "chain slack read now");
    private static readonly Input<Length> TargetSlack = Take.Positive<Length>("targetSlack", "chain slack wanted");
    private static readonly Input<AxleSlackLaw> SlackLaw = Take.Positive<AxleSlackLaw>(
        "slackLaw",
        "slack squared that a millimetre of axle takes"
    );

    public static Calculation Calculation { get; } =
        new(
            "axle-alignment",
            "FinalDrive",
            "Turns left and right that straighten the rear axle and set the slack at once.",
            "own derivation, checked by coordinates (docs/handbook/axle-alignment.md)",
            typeof(AxleAlignment),
            [
                Left,
                Right,
                GrowsRearward,
                AdjusterDistance,
                ChainPlaneOffset,
                CentreDistance,
                TyreDiameter,
                Wheelbase,
                ThreadPitch,
                Slack,
                TargetSlack,
                SlackLaw,
            ],
            [
                new("difference", "mm", "left side less right side; positive: the left stands further back"),
                new("skew", "deg", "of the wheel; positive points left"),
                new("lateralAtSprocket", "mm", "offset of the chain line at the front sprocket"),
                new("toeOverTyre", "mm", "offset over the tyre's diameter"),
                new("missAtFrontAxle", "mm", "offset at the front axle"),
                new("turnsLeft", "turn", "on the left adjuster; positive moves rearward"),
                new("turnsRight", "turn", "on the right adjuster; positive moves rearward"),
            ],
            Align
        );

    private static Reply Align(Given given)
    {
        var position = AxleAlignment.Of(
            new(
                given.Of(Left),
                given.Of(Right),
                given.Of(GrowsRearward),
                given.Of(AdjusterDistance),
                given.Of(ChainPlaneOffset)
            ),
            new(given.Of(Slack), given.Of(TargetSlack), given.Of(SlackLaw)),
            given.Of(ThreadPitch),
            new(given.Maybe(CentreDistance), given.Maybe(TyreDiameter), given.Maybe(Wheelbase))
        );
        return new Gives()
            .With("difference", position.Difference, "mm")
            .With("skew", position.Skew, "deg")
            .With("lateralAtSprocket", position.LateralAtSprocket, "mm")
            .With("toeOverTyre", position.ToeOverTyre, "mm")
            .With("missAtFrontAxle", position.MissAtFrontAxle, "mm")
            .With("turnsLeft", position.TurnsLeft, "turn")
            .With("turnsRight", position.TurnsRight, "turn");
    }
}
