namespace Witnessmark.Handbook.Catalogue;

/// <summary>All calculations of the handbook, by name.</summary>
public static class Calculations
{
    /// <summary>In the order of the chapters.</summary>
    public static IReadOnlyList<Calculation> All { get; } =
    [
        ReadingContract.Calculation,
        VerdictContract.Calculation,
        ChainAdjustmentContract.Calculation,
        ValveShimsContract.Calculation,
        CompressionSpreadContract.Calculation,
        BenchOrderContract.Calculation,
    ];

    /// <summary>The calculation of that name, or null.</summary>
    public static Calculation? Named(string name) => All.FirstOrDefault(c => c.Name == name);
}
