using FsCheck.Xunit;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Record;

namespace Witnessmark.Ledger.Tests;

// Source: own derivation; the property is the promise itself.
public class AnySequenceTests
{
    private static readonly IReadOnlyList<Entry>[] Chains = [Made.Chain("bench", 12), Made.Chain("tablet", 7)];

    [Property(MaxTest = 15)]
    public void Every_entry_comes_in_once_and_in_device_order(int seed)
    {
        using var shop = new Shop();
        var chance = new Random(seed);
        foreach (var batch in Batches(chance))
            shop.Post(batch);

        var kept = shop.Ledger.After(0).Entries.Select(e => e.Entry).ToList();
        foreach (var chain in Chains)
            Assert.Equal(chain.Select(e => e.Hash), kept.Where(e => e.Device == chain[0].Device).Select(e => e.Hash));
        Assert.Equal(Chains.Sum(c => c.Count), kept.Count);
        Assert.Empty(shop.Ledger.SetAside());
        Assert.Empty(shop.Check().Faults);
    }

    /// <summary>All entries at least once, some twice, in any order, cut anywhere.</summary>
    private static IEnumerable<Entry[]> Batches(Random chance)
    {
        var all = Chains.SelectMany(c => c).ToArray();
        Entry[] sent = [.. all, .. all.Where(_ => chance.Next(2) == 0)];
        chance.Shuffle(sent);
        for (var at = 0; at < sent.Length; )
        {
            var size = chance.Next(1, 9);
            yield return [.. sent.Skip(at).Take(size)];
            at += size;
        }
    }
}
