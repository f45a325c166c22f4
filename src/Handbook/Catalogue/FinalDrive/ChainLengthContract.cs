using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>chain-length</c>.</summary>
internal static class ChainLengthContract
{
    public static Calculation Calculation { get; } =
        new(
            "chain-length",
            "FinalDrive",
            "Links that a drive needs, and where they put the axle.",
            "own derivation, checked by bisection; Bhandari, Design of Machine Elements, example 14.3",
            typeof(ChainLength),
            [DriveInputs.FrontTeeth, DriveInputs.RearTeeth, DriveInputs.Pitch, DriveInputs.CentreDistance],
            [
                new("linksExact", "1", "links of the taut loop, with the fraction"),
                new("links", "count", "the even count at or above it"),
                new("centreDistance", "mm", "where that chain is taut"),
                new("shift", "mm", "how far back that is"),
            ],
            given =>
                Reply.To(
                    ChainLength.From(
                        DriveInputs.SprocketsOf(given, DriveInputs.Pitch),
                        given.Of(DriveInputs.CentreDistance)
                    ),
                    l =>
                        new Gives()
                            .With("linksExact", l.Exact, "1")
                            .With("links", l.Links)
                            .With("centreDistance", l.CentreDistance, "mm")
                            .With("shift", l.Shift, "mm")
                )
        );
}
