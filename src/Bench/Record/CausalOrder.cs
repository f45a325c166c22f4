namespace Witnessmark.Bench.Record;

/// <summary>One order for one job's entries, the same on every device however they arrived.</summary>
/// <remarks>
/// <para><b>Formula.</b> An entry's depth is 1 + the greatest depth of what its writer had seen: the earlier entries of its
/// own chain and those named in <see cref="Entry.Covers"/>. Ordered by depth, then by device, epoch, seq and id (ordinal).</para>
/// <para><b>Source.</b> Own derivation, after the logical clocks of Lamport, Communications of the ACM 21 (1978) 558; checked by permuting.</para>
/// <para><b>Valid when</b> nobody forged what they had seen. Forged entries that saw each other in a circle are cut at the
/// smallest one of the circle; their chains keep their own order.</para>
/// </remarks>
public static class CausalOrder
{
    /// <summary>The entries in order. An id that comes twice counts once: the one with the smaller hash.</summary>
    public static IReadOnlyList<Entry> Of(IEnumerable<Entry> entries)
    {
        var distinct = entries
            .GroupBy(e => e.Id, StringComparer.Ordinal)
            .Select(same => same.MinBy(e => e.Hash, StringComparer.Ordinal)!)
            .ToList();
        distinct.Sort(ByChain);
        var depths = new CausalDepths(distinct).Of();
        return [.. Enumerable.Range(0, distinct.Count).OrderBy(i => depths[i]).ThenBy(i => i).Select(i => distinct[i])];
    }

    /// <summary>Whether the writer of <paramref name="later"/> had seen <paramref name="earlier"/>.</summary>
    public static bool Saw(Entry later, Entry earlier) =>
        later.Device == earlier.Device && later.Epoch == earlier.Epoch
            ? earlier.Seq < later.Seq
            : later.Covers is { } covers && covers.TryGetValue(earlier.Chain, out var seq) && earlier.Seq <= seq;

    private static int ByChain(Entry a, Entry b)
    {
        var device = string.CompareOrdinal(a.Device, b.Device);
        if (device != 0)
            return device;
        if (a.Epoch != b.Epoch)
            return a.Epoch.CompareTo(b.Epoch);
        return a.Seq != b.Seq ? a.Seq.CompareTo(b.Seq) : string.CompareOrdinal(a.Id, b.Id);
    }
}
