using System.Globalization;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>The end of the shop's chain over one job; it shows when the last entries were taken away.</summary>
public sealed class JobHead
{
    public required string Job { get; set; }

    /// <summary>How many entries the job has.</summary>
    public int Entries { get; set; }

    /// <summary>The shop's order of the last one.</summary>
    public long LastOrder { get; set; }

    /// <summary>The chain's hash after the last one.</summary>
    public required string Hash { get; set; }
}

/// <summary>The shop's chain over the entries of one job, in the order in which they came in.</summary>
/// <remarks><b>Formula.</b> hₙ = SHA-256(hₙ₋₁ LF order LF entry's hash), lower-case hex, the order in decimal; h₀ is empty.</remarks>
public static class JobChain
{
    /// <summary>The hash after one more entry.</summary>
    public static string Next(string previous, long order, string entryHash) =>
        EntryHash.OfText($"{previous}\n{order.ToString(CultureInfo.InvariantCulture)}\n{entryHash}");
}
