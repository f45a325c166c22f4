using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-warmth</c>.</summary>
internal static class OilWarmthContract
{
    private static readonly Input<Volume> Volume = Take.Quantity<Volume>("volume", "oil in the engine");
    private static readonly Input<Volume> BetweenMarks = Take.Positive<Volume>(
        "betweenMarks",
        "from the low to the high mark"
    );
    private static readonly Input<Expansion> Oil = Take.Quantity<Expansion>(
        "expansion",
        "cubic coefficient of the oil, about 0.0007 1/K"
    );
    private static readonly Input<Expansion> Metal = Take.Quantity<Expansion>(
        "caseExpansion",
        "linear coefficient of the case, aluminium about 0.000023 1/K"
    );
    private static readonly Input<Temperature> ReadAt = Take.Quantity<Temperature>(
        "readAt",
        "oil temperature at which the level was read"
    );
    private static readonly Input<Temperature> MeantAt = Take.Quantity<Temperature>(
        "meantAt",
        "oil temperature for which the marks are made"
    );

    public static Calculation Calculation { get; } =
        new(
            "oil-warmth",
            "Fluids",
            "How the oil level changes between the temperature read and the one meant.",
            "own derivation; coefficient of oil by ASTM D1250-04",
            typeof(OilWarmth),
            [Volume, BetweenMarks, Oil, Metal, ReadAt, MeantAt],
            [
                new("volumeChange", "L", "how much more the oil fills than the case gives room"),
                new("levelChange", "1", "the same in parts of the distance of the marks; add it to the level read"),
            ],
            Warm
        );

    private static Reply Warm(Given given) =>
        Reply.To(
            OilWarmth.Of(
                given.Of(Volume),
                given.Of(BetweenMarks),
                given.Of(Oil),
                given.Of(Metal),
                given.Of(ReadAt),
                given.Of(MeantAt)
            ),
            r => new Gives().With("volumeChange", r.VolumeChange, "L").With("levelChange", r.LevelChange, "1")
        );
}
