using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>axle-nut-shift</c>.</summary>
internal static class AxleNutShiftContract
{
    private static readonly Input<Length> Before = Take.Positive<Length>("before", "slack with the axle snug");
    private static readonly Input<Length> After = Take.Positive<Length>("after", "slack with the nut tight");
    private static readonly Input<NutPair[]> Pairs = Take.Objects(
        "pairs",
        "what the nut did on this machine so far",
        [Before, After],
        g => new NutPair(g.Of(Before), g.Of(After)),
        0
    );
    private static readonly Input<Length> Target = Take.Positive<Length>("target", "slack wanted with the nut tight");
    private static readonly Input<Area> PriorMean = Take.Signed<Area>(
        "priorMean",
        "shift believed before the first pair; positive tightens"
    );
    private static readonly Input<Area> PriorDeviation = Take.Positive<Area>(
        "priorDeviation",
        "one standard deviation of that belief"
    );
    private static readonly Input<Area> JobScatter = Take.Quantity<Area>(
        "jobScatter",
        "one standard deviation from job to job"
    );
    private static readonly Input<Length> ReadingUncertainty = Take.Quantity<Length>(
        "readingUncertainty",
        "one standard deviation of a slack reading"
    );

    public static Calculation Calculation { get; } =
        new(
            "axle-nut-shift",
            "FinalDrive",
            "The slack to set before the axle nut is tightened, so that it is right afterwards.",
            "own derivation, checked by a posterior on a grid (docs/handbook/axle-nut-shift.md)",
            typeof(AxleNutShift),
            [Pairs, Target, PriorMean, PriorDeviation, JobScatter, ReadingUncertainty],
            [
                new("shift", "mm²", "slack squared that the nut takes"),
                new("shiftDeviation", "mm²", "one standard deviation"),
                new("setTo", "mm", "slack to set with the axle snug"),
                new("finalDeviation", "mm", "one standard deviation of the slack with the nut tight"),
            ],
            Learn
        );

    private static Reply Learn(Given given)
    {
        var pairs = given.Of(Pairs);
        var (scatter, uncertainty) = (given.Of(JobScatter), given.Of(ReadingUncertainty));
        if (pairs.Length > 0 && scatter.SquareMillimetres == 0 && uncertainty.Millimetres == 0)
            throw given.Wrong("readingUncertainty", "zero beside a jobScatter of zero", "one of the two above zero");
        return Reply.To(
            AxleNutShift.From(
                pairs,
                given.Of(Target),
                new(given.Of(PriorMean), given.Of(PriorDeviation)),
                scatter,
                uncertainty
            ),
            shift =>
                new Gives()
                    .With("shift", shift.Shift, "mm²")
                    .With("shiftDeviation", shift.ShiftDeviation, "mm²")
                    .With("setTo", shift.SetTo, "mm")
                    .With("finalDeviation", shift.FinalDeviation, "mm")
        );
    }
}
