namespace Witnessmark.Handbook.Catalogue;

/// <summary>All calculations of the handbook, by name.</summary>
public static class Calculations
{
    /// <summary>In the order of the chapters.</summary>
    public static IReadOnlyList<Calculation> All { get; } =
    [
        ReadingContract.Calculation,
        VerdictContract.Calculation,
        ChainSlackContract.Calculation,
        ChainAdjustmentContract.Calculation,
        ChainTravelContract.Calculation,
        ChainRoundContract.Calculation,
        ChainLengthContract.Calculation,
        ChainWearContract.Calculation,
        ToothHuntingContract.Calculation,
        RoadSpeedContract.Calculation,
        TorqueToolContract.Calculation,
        BoltPreloadContract.Calculation,
        TighteningOrderContract.Calculation,
        AngleTighteningContract.Calculation,
    ];

    /// <summary>The calculation of that name, or null.</summary>
    public static Calculation? Named(string name) => All.FirstOrDefault(c => c.Name == name);
}
