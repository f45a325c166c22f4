using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>chain-slack</c>.</summary>
internal static class ChainSlackContract
{
    public static Calculation Calculation { get; } =
        new(
            "chain-slack",
            "FinalDrive",
            "Slack of a chain from its links, the teeth and the centre distance.",
            "own derivation, checked by brute force (docs/handbook/chain-slack.md)",
            typeof(ChainSlack),
            [
                DriveInputs.FrontTeeth,
                DriveInputs.RearTeeth,
                DriveInputs.Pitch,
                DriveInputs.Links,
                DriveInputs.CentreDistance,
            ],
            [
                new("slack", "mm", "total movement of the middle of a run"),
                new("excess", "mm", "chain beyond the taut loop, negative when too short"),
                new("run", "mm", "length of one tangent run"),
                new("wrapAngle", "deg", "half the angle between the runs"),
                new("slackPerAxle", "mm/mm", "change of slack when the axle goes back; none at zero slack"),
            ],
            given =>
                Reply.To(
                    ChainSlack.From(
                        DriveInputs.SprocketsOf(given, DriveInputs.Pitch),
                        given.Of(DriveInputs.Links),
                        given.Of(DriveInputs.CentreDistance)
                    ),
                    s =>
                        new Gives()
                            .With("slack", s.Slack, "mm")
                            .With("excess", s.Excess, "mm")
                            .With("run", s.Run, "mm")
                            .With("wrapAngle", s.WrapAngle, "deg")
                            .With("slackPerAxle", s.SlackPerAxle, "mm/mm")
                )
        );
}
