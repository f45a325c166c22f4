using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-top-up</c>.</summary>
internal static class OilTopUpContract
{
    private static readonly Input<double> Level = Take.Number(
        "level",
        "level read: 0 low mark, 1 high mark; below and above too"
    );
    private static readonly Input<double> LevelDeviation = Take.Number(
        "levelDeviation",
        "one standard deviation of it",
        0
    );
    private static readonly Input<double> TargetLevel = Take.Number("targetLevel", "level wanted", 0, 1);
    private static readonly Input<Volume> BetweenMarks = Take.Positive<Volume>(
        "betweenMarks",
        "from the low to the high mark"
    );
    private static readonly Input<Volume> BetweenMarksDeviation = Take.Quantity<Volume>(
        "betweenMarksDeviation",
        "one standard deviation of it"
    );
    private static readonly Input<double> Risk = OverfillRisk.Taken;

    public static Calculation Calculation { get; } =
        new(
            "oil-top-up",
            "Fluids",
            "How much oil to add after a reading, guarded against overfilling.",
            "own derivation, checked by drawing at random (docs/handbook/oil-top-up.md)",
            typeof(OilTopUp),
            [Level, LevelDeviation, TargetLevel, BetweenMarks, BetweenMarksDeviation, Risk],
            [
                new("add", "L", "volume to add, zero when none is safe or needed"),
                new("levelAfter", "1", "level to expect"),
                new("levelAfterDeviation", "1", "one standard deviation"),
                new("overfillProbability", "1", "that the level then stands above the high mark"),
            ],
            Add
        );

    private static Reply Add(Given given)
    {
        var topUp = OilTopUp.Of(
            new(given.Of(Level), given.Of(LevelDeviation)),
            given.Of(TargetLevel),
            new(given.Of(BetweenMarks), given.Of(BetweenMarksDeviation)),
            OverfillRisk.In(given)
        );
        return new Gives()
            .With("add", topUp.Add, "L")
            .With("levelAfter", topUp.LevelAfter, "1")
            .With("levelAfterDeviation", topUp.LevelAfterDeviation, "1")
            .With("overfillProbability", topUp.OverfillProbability, "1");
    }
}
