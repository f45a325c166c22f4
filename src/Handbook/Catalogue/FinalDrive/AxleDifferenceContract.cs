using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>axle-difference</c>.</summary>
internal static class AxleDifferenceContract
{
    private static readonly Input<Length[]> Left = Take.List(
        Take.Quantity<Length>("left", "readings at the left adjuster")
    );
    private static readonly Input<Length[]> Right = Take.List(
        Take.Quantity<Length>("right", "readings at the right adjuster")
    );
    private static readonly Input<Length> ReadingUncertainty = Take.Quantity<Length>(
        "readingUncertainty",
        "one standard deviation of what all readings of a side share"
    );
    private static readonly Input<Length> Tolerance = Take.Quantity<Length>(
        "tolerance",
        "largest permitted difference of the sides"
    );

    public static Calculation Calculation { get; } =
        new(
            "axle-difference",
            "FinalDrive",
            "Whether repeated readings on both sides prove the rear axle straight.",
            "own derivation; JCGM 100:2008 (GUM) 5.1.2, G.3",
            typeof(AxleDifference),
            [Left, Right, ReadingUncertainty, Tolerance],
            [
                new("difference", "mm", "mean of the left less mean of the right"),
                new("uncertainty", "mm", "half-width that holds in 95 of 100"),
                new("verdict", "inside, outside or unproven", "what the readings prove"),
            ],
            Compare
        );

    private static Reply Compare(Given given)
    {
        var sides = AxleDifference.Of(
            given.Of(Left),
            given.Of(Right),
            given.Of(ReadingUncertainty),
            given.Of(Tolerance)
        );
        return new Gives()
            .With("difference", sides.Difference, "mm")
            .With("uncertainty", sides.Uncertainty, "mm")
            .With("verdict", sides.Call.Word());
    }
}
