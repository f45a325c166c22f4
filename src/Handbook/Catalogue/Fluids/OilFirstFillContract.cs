using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>oil-first-fill</c>.</summary>
internal static class OilFirstFillContract
{
    private static readonly Input<Volume> Capacity = Take.Positive<Volume>(
        "capacity",
        "to the high mark, dry and with a new filter"
    );
    private static readonly Input<Volume> FilterVolume = Take.Quantity<Volume>("filterVolume", "what the filter holds");
    private static readonly Input<bool> FilterReplaced = Take.Truth(
        "filterReplaced",
        "whether a new, empty filter is fitted"
    );
    private static readonly Input<Volume> Retained = Take.Quantity<Volume>("retained", "oil that does not drain");
    private static readonly Input<Volume> RetainedDeviation = Take.Quantity<Volume>(
        "retainedDeviation",
        "one standard deviation of it"
    );
    private static readonly Input<Volume> CapacityDeviation = Take.Quantity<Volume>(
        "capacityDeviation",
        "one standard deviation of the capacity"
    );
    private static readonly Input<Volume> BetweenMarks = Take.Positive<Volume>(
        "betweenMarks",
        "from the low to the high mark"
    );
    private static readonly Input<double> TargetLevel = Take.Number(
        "targetLevel",
        "level wanted: 0 low mark, 1 high mark",
        0,
        1
    );
    private static readonly Input<double> Risk = OverfillRisk.Taken;

    public static Calculation Calculation { get; } =
        new(
            "oil-first-fill",
            "Fluids",
            "How much oil to pour first after a change, so that the engine is not overfilled.",
            "own derivation; JCGM 106:2012, 8.3.2",
            typeof(OilFirstFill),
            [
                Capacity,
                FilterVolume,
                FilterReplaced,
                Retained,
                RetainedDeviation,
                CapacityDeviation,
                BetweenMarks,
                TargetLevel,
                Risk,
            ],
            [
                new("volumeToHigh", "L", "what fits up to the high mark"),
                new("doseForTarget", "L", "up to the target; negative when it is already there"),
                new("firstDose", "L", "safe to pour before the first reading"),
            ],
            Fill
        );

    private static Reply Fill(Given given)
    {
        var sump = new DrainedSump(
            given.Of(Capacity),
            given.Of(CapacityDeviation),
            given.Of(FilterVolume),
            given.Of(FilterReplaced),
            given.Of(Retained),
            given.Of(RetainedDeviation)
        );
        if (sump.VolumeToHigh.Litres <= 0)
            throw given.Wrong("capacity", "not above what stays inside", "more than retained and the old filter hold");
        var fill = OilFirstFill.Of(sump, given.Of(BetweenMarks), given.Of(TargetLevel), OverfillRisk.In(given));
        return new Gives()
            .With("volumeToHigh", fill.VolumeToHigh, "L")
            .With("doseForTarget", fill.DoseForTarget, "L")
            .With("firstDose", fill.FirstDose, "L");
    }
}
