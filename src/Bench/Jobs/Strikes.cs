namespace Witnessmark.Bench.Jobs;

/// <summary>What is left when the strikes have done their work. A strike can be struck itself, which restores.</summary>
internal static class Strikes
{
    /// <summary>Facts that stand, without the strikes; in order.</summary>
    public static IReadOnlyList<Fact> Live(IReadOnlyList<Fact> facts)
    {
        var struck = new HashSet<string>(StringComparer.Ordinal);
        // from the last to the first: whether a strike stands is known before what it strikes is asked
        for (var i = facts.Count - 1; i >= 0; i--)
        {
            if (facts[i] is StrikeFact strike && !struck.Contains(strike.Entry.Id))
                struck.Add(strike.Entry.Strikes!);
        }
        return [.. facts.Where(f => f is ArrivalFact || (f is not StrikeFact && !struck.Contains(f.Entry.Id)))];
    }
}
