namespace Witnessmark.Bench.Searching;

/// <summary>What was found.</summary>
/// <param name="Shown">The best of them.</param>
/// <param name="All">How many there are.</param>
public sealed record SearchHits(IReadOnlyList<SearchEntry> Shown, int All)
{
    public static readonly SearchHits None = new([], 0);

    /// <summary>How many are found and not shown.</summary>
    public int More => All - Shown.Count;
}
