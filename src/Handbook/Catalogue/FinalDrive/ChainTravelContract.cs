using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>chain-travel</c>.</summary>
internal static class ChainTravelContract
{
    private static readonly Input<Length> Arm = Take.Bounded<Length>(
        "swingarm",
        "pivot to axle",
        mm => mm is > 0 and <= 10_000,
        "more than zero, at most 10 m"
    );
    private static readonly Input<Length> Offset = Take.Bounded<Length>(
        "pivotToFrontSprocket",
        "pivot to the shaft of the front sprocket",
        mm => mm is >= 0 and <= 10_000,
        "zero or more, at most 10 m"
    );
    private static readonly Input<Angle> Inline = Slope("inlineAngle", "where sprocket, pivot and axle lie in line");
    private static readonly Input<Angle> Bench = Slope("benchAngle", "where the slack is read");
    private static readonly Input<Angle> Droop = Slope("droopAngle", "wheel hanging");
    private static readonly Input<Angle> Bump = Slope("bumpAngle", "suspension fully in");
    private static readonly Input<Length> Pitch = DriveInputs.Pitch.Or(Sprockets.FiveEighthsInch, "15.875 mm");
    private static readonly Input<Length> BenchSlack = DriveInputs.Slack("benchSlack", "slack at the bench");
    private static readonly Input<Length> Margin = DriveInputs
        .Slack("margin", "slack wanted at the tightest place")
        .Or(new Length(5), "5 mm");

    public static Calculation Calculation { get; } =
        new(
            "chain-travel",
            "FinalDrive",
            "Slack left where the suspension pulls the chain tightest.",
            "own derivation, checked by brute force (docs/handbook/chain-travel.md)",
            typeof(ChainTravel),
            [
                Arm,
                Offset,
                Inline,
                Bench,
                Droop,
                Bump,
                DriveInputs.FrontTeeth,
                DriveInputs.RearTeeth,
                Pitch,
                BenchSlack,
                Margin,
            ],
            [
                new("tightestAngle", "deg", "of the swingarm"),
                new("slackAtTightest", "mm", "slack left there, 0 when taut"),
                new("taut", "true or false", "whether none is left"),
                new("overstretch", "mm", "chain that is missing there"),
                new("benchSlackNeeded", "mm", "slack at the bench that leaves the margin there"),
            ],
            Travel
        );

    private static Reply Travel(Given given)
    {
        var arm = new Swingarm(
            given.Of(Arm),
            given.Of(Offset),
            given.Of(Inline),
            given.Of(Bench),
            given.Of(Droop),
            given.Of(Bump)
        );
        if (arm.Bump > arm.Droop)
            throw given.Wrong("bumpAngle", "more than droopAngle", "the travel in order: droop hangs below bump");
        return Reply.To(
            ChainTravel.From(arm, DriveInputs.SprocketsOf(given, Pitch), given.Of(BenchSlack), given.Of(Margin)),
            t =>
                new Gives()
                    .With("tightestAngle", t.Angle, "deg")
                    .With("slackAtTightest", t.Slack, "mm")
                    .With("taut", t.Taut)
                    .With("overstretch", t.Overstretch, "mm")
                    .With("benchSlackNeeded", t.BenchSlackNeeded, "mm")
        );
    }

    private static Input<Angle> Slope(string name, string meaning) =>
        Take.Bounded<Angle>(
            name,
            meaning + ", positive below the horizontal",
            rad => Math.Abs(rad) <= Math.PI / 2,
            "-90 to 90 deg"
        );
}
