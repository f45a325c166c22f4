using FsCheck.Xunit;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

// Source: own derivation; the properties are the definition of the order itself.
public class CausalOrderTests
{
    private static readonly string[] Devices = ["bench", "tablet", "Phone", "ähre"];

    [Property(MaxTest = 300)]
    public void Any_permutation_gives_the_same_order(int seed)
    {
        var chance = new System.Random(seed);
        var entries = TrueHistory(chance, 30);
        Assert.Equal(Ids(entries), Ids(Shuffled(entries, chance)));
    }

    [Property(MaxTest = 300)]
    public void What_was_seen_stands_before_who_saw_it(int seed)
    {
        var order = CausalOrder.Of(TrueHistory(new(seed), 30));
        for (var i = 0; i < order.Count; i++)
        for (var j = i + 1; j < order.Count; j++)
            Assert.False(CausalOrder.Saw(order[i], order[j]), $"{order[i].Id} saw {order[j].Id}");
    }

    [Property(MaxTest = 300)]
    public void Forged_circles_end_and_give_the_same_order(int seed)
    {
        var chance = new System.Random(seed);
        var entries = Forged(chance, 30);
        var order = CausalOrder.Of(entries);
        Assert.Equal(30, order.Count);
        Assert.Equal(Ids(entries), Ids(Shuffled(entries, chance)));
        foreach (var chain in order.GroupBy(e => e.Chain))
            Assert.Equal(chain.Select(e => e.Seq).Order(), chain.Select(e => e.Seq));
    }

    [Fact]
    public void Who_only_stands_behind_a_circle_still_follows_what_it_saw()
    {
        var x = Made.Chain("x", 1, _ => Covers("y/1", 1))[0];
        var y = Made.Chain("y", 1, _ => Covers("x/1", 1))[0];
        var behind = Made.Chain("a", 1, _ => Covers("y/1", 1))[0];
        Assert.Equal(["x-1", "y-1", "a-1"], Ids([behind, y, x]));
    }

    [Fact]
    public void Depth_goes_before_the_name_of_the_device()
    {
        var first = Made.Chain("zulu", 1);
        var second = Made.Chain("alfa", 2, seq => seq == 1 ? Covers("zulu/1", 1) : null);
        Assert.Equal(["zulu-1", "alfa-1", "alfa-2"], Ids([.. second, .. first]));
    }

    [Fact]
    public void A_doubled_id_counts_once()
    {
        var chain = Made.Chain("bench", 2);
        var forged = chain[0] with { By = "Tom", Hash = "0" };
        Assert.Equal("Tom", CausalOrder.Of([chain[0], chain[1], chain[0], forged])[0].By);
        Assert.Equal(["bench-1", "bench-2"], Ids([.. chain, .. chain]));
    }

    [Fact]
    public void What_was_seen_but_is_not_here_yet_does_no_harm() =>
        Assert.Equal(["bench-1"], Ids(Made.Chain("bench", 1, _ => Covers("tablet/1", 9))));

    private static Dictionary<string, int> Covers(string chain, int seq) => new() { [chain] = seq };

    private static IEnumerable<string> Ids(IEnumerable<Entry> entries) => CausalOrder.Of(entries).Select(e => e.Id);

    private static Entry[] Shuffled(IReadOnlyList<Entry> entries, System.Random chance)
    {
        var shuffled = entries.Concat(entries.Take(3)).ToArray();
        chance.Shuffle(shuffled);
        return shuffled;
    }

    /// <summary>Devices write in turn; each has seen the others up to where it last looked.</summary>
    private static List<Entry> TrueHistory(System.Random chance, int count) =>
        History(chance, count, (chain, written) => chance.Next(0, written.Count(e => e.Chain == chain) + 1));

    private static List<Entry> Forged(System.Random chance, int count) =>
        History(chance, count, (_, _) => chance.Next(0, count));

    private static List<Entry> History(System.Random chance, int count, Func<string, List<Entry>, int> seen)
    {
        var written = new List<Entry>();
        for (var i = 0; i < count; i++)
        {
            var device = Devices[chance.Next(Devices.Length)];
            var own = written.Where(e => e.Device == device).ToList();
            var covers = Devices
                .Where(d => d != device)
                .Select(d => (Chain: $"{d}/1", Seq: seen($"{d}/1", written)))
                .Where(c => c.Seq > 0)
                .ToDictionary(c => c.Chain, c => c.Seq);
            var draft = Made.Draft($"{chance.Next():x8}-{i}", covers.Count > 0 ? covers : null);
            written.Add(Entries.Sealed(draft, device, 1, own.Count + 1, own.LastOrDefault()?.Hash));
        }
        return written;
    }
}
