namespace Witnessmark.Bench.Record;

/// <summary>What can be wrong with an entry in its device's chain.</summary>
public enum ChainFaultKind
{
    /// <summary>The content does not fit the hash: it was changed.</summary>
    Changed,

    /// <summary>The entry before is missing. Natural where only one job's entries are at hand.</summary>
    Gap,

    /// <summary>It names another entry before it than the one that is there.</summary>
    BrokenLink,

    /// <summary>Two different entries hold one number.</summary>
    Doubled,
}

/// <summary>One fault of a chain.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Entry">Where.</param>
/// <param name="Says">The same in a sentence.</param>
public sealed record ChainFault(ChainFaultKind Kind, Entry Entry, string Says);

/// <summary>Walks the devices' chains and finds what was changed, left out or put in.</summary>
public static class ChainCheck
{
    /// <summary>All faults, by chain and number; empty when every chain is whole.</summary>
    public static IReadOnlyList<ChainFault> Of(IEnumerable<Entry> entries) =>
        [
            .. entries
                .GroupBy(e => (e.Device, e.Epoch))
                .OrderBy(chain => chain.Key.Device, StringComparer.Ordinal)
                .ThenBy(chain => chain.Key.Epoch)
                .SelectMany(OfChain),
        ];

    private static IEnumerable<ChainFault> OfChain(IEnumerable<Entry> chain)
    {
        Entry? before = null;
        foreach (var entry in chain.OrderBy(e => e.Seq).ThenBy(e => e.Id, StringComparer.Ordinal))
        {
            foreach (var fault in OfEntry(entry, before))
                yield return fault;
            before = entry;
        }
    }

    private static IEnumerable<ChainFault> OfEntry(Entry entry, Entry? before)
    {
        if (EntryHash.Of(entry) != entry.Hash)
            yield return Fault(ChainFaultKind.Changed, entry, "was changed: its content does not fit its hash");
        if (before?.Seq == entry.Seq)
            yield return Fault(ChainFaultKind.Doubled, entry, $"has the number of {before.Id}");
        else if (entry.Seq != (before?.Seq ?? 0) + 1)
            yield return Fault(ChainFaultKind.Gap, entry, $"follows on number {before?.Seq ?? 0}: some are missing");
        else if (entry.DevicePrevious != before?.Hash)
            yield return Fault(ChainFaultKind.BrokenLink, entry, "is not bound to the entry before it");
    }

    private static ChainFault Fault(ChainFaultKind kind, Entry entry, string what) =>
        new(kind, entry, $"Entry {entry.Id} (number {entry.Seq} of {entry.Chain}, job {entry.Job}) {what}.");
}
