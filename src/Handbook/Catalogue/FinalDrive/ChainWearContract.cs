using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>chain-wear</c>.</summary>
internal static class ChainWearContract
{
    private static readonly Input<Length> Outer = Take.Bounded<Length>(
        "outer",
        "outside over two rollers",
        mm => mm is > 0 and <= 200_000,
        "more than zero, at most 200 m"
    );
    private static readonly Input<Length> Inner = Take.Bounded<Length>(
        "inner",
        "inside between the same rollers",
        mm => mm is > 0 and <= 200_000,
        "more than zero, at most 200 m"
    );
    private static readonly Input<int> Links = Take.Count("links", "pitches between the two rollers", 1, 2000);
    private static readonly Input<Length> Caliper = DriveInputs.Slack(
        "caliperUncertainty",
        "one standard deviation of a caliper reading"
    );
    private static readonly Input<Ratio> Limit = Take.Positive<Ratio>("limit", "elongation at which it is replaced")
        .Or(ChainWear.UsualLimit, "2 %");

    public static Calculation Calculation { get; } =
        new(
            "chain-wear",
            "FinalDrive",
            "Elongation of a chain from a caliper, and whether it must be replaced.",
            "own derivation; limit 2 % common practice, no source",
            typeof(ChainWear),
            [Outer, Inner, Links, DriveInputs.Pitch, Caliper, Limit],
            [
                new("elongation", "%", "beyond the nominal length"),
                new("uncertainty", "%", "one standard deviation"),
                new("verdict", "keep, replace or again", "again: measure elsewhere, the caliper cannot tell"),
            ],
            Measure
        );

    private static Reply Measure(Given given)
    {
        var (outer, inner) = (given.Of(Outer), given.Of(Inner));
        if (inner >= outer)
            throw given.Wrong("inner", "not less than outer", "inside between the same two rollers");
        return Reply.To(
            ChainWear.From(
                outer,
                inner,
                given.Of(Links),
                given.Of(DriveInputs.Pitch),
                given.Of(Caliper),
                given.Of(Limit)
            ),
            e =>
                new Gives()
                    .With("elongation", e.Value, "%")
                    .With("uncertainty", e.Uncertainty, "%")
                    .With("verdict", Word(e.Verdict))
        );
    }

    private static string? Word(WearVerdict? verdict) =>
        verdict switch
        {
            WearVerdict.Keep => "keep",
            WearVerdict.Replace => "replace",
            WearVerdict.Again => "again",
            _ => null,
        };
}
