namespace Witnessmark.Bench.Record;

/// <summary>How deep each entry stands on what had been seen; see <see cref="CausalOrder"/>.</summary>
/// <remarks>Depth grows along a chain, so of each chain only the last entry seen counts. Entries are resolved when all
/// that they saw is; when none is left to resolve but some remain, they stand in or behind a circle.</remarks>
internal sealed class CausalDepths
{
    private readonly IReadOnlyList<Entry> _entries;
    private readonly int[][] _saw;
    private readonly List<int>[] _seenBy;
    private readonly int[] _waitsFor;
    private readonly int[] _depths;
    private readonly Queue<int> _ready = new();

    /// <param name="entries">Sorted by device, epoch, seq, id.</param>
    public CausalDepths(IReadOnlyList<Entry> entries)
    {
        _entries = entries;
        var chains = ChainsOf(entries);
        _saw = [.. entries.Select((entry, i) => LastSeen(entry, i, chains))];
        _seenBy = [.. entries.Select(_ => new List<int>())];
        _waitsFor = [.. _saw.Select(s => s.Length)];
        _depths = new int[entries.Count];
        for (var i = 0; i < entries.Count; i++)
            foreach (var earlier in _saw[i])
                _seenBy[earlier].Add(i);
    }

    /// <summary>The depths, from 1, in the order of the entries.</summary>
    public IReadOnlyList<int> Of()
    {
        for (var i = 0; i < _entries.Count; i++)
            if (_waitsFor[i] == 0)
                _ready.Enqueue(i);
        ResolveReady();
        for (var i = 0; i < _entries.Count; i++)
            while (_depths[i] == 0)
            {
                _ready.Enqueue(WhereToCut(i));
                ResolveReady();
            }
        return _depths;
    }

    private void ResolveReady()
    {
        while (_ready.TryDequeue(out var i))
        {
            _depths[i] = 1 + _saw[i].Select(s => _depths[s]).DefaultIfEmpty().Max();
            foreach (var later in _seenBy[i])
                if (--_waitsFor[later] == 0 && _depths[later] == 0)
                    _ready.Enqueue(later);
        }
    }

    /// <summary>Walks back over unresolved entries until one comes again. The smallest of that circle whose own chain is
    /// resolved is cut; there is one, because no circle consists of steps within chains only.</summary>
    private int WhereToCut(int from)
    {
        var path = new List<int>();
        var at = from;
        var placeOf = new Dictionary<int, int>();
        while (placeOf.TryAdd(at, path.Count))
        {
            path.Add(at);
            at = _saw[at].First(s => _depths[s] == 0);
        }
        return path.Skip(placeOf[at]).Where(OwnChainIsResolved).Min();
    }

    private bool OwnChainIsResolved(int i) => !SameChain(i, i - 1) || _depths[i - 1] > 0;

    private bool SameChain(int i, int before) => before >= 0 && SameChain(_entries[i], _entries[before]);

    private static bool SameChain(Entry a, Entry b) => a.Device == b.Device && a.Epoch == b.Epoch;

    /// <summary>First place and number of entries of each chain.</summary>
    private static Dictionary<string, (int First, int Count)> ChainsOf(IReadOnlyList<Entry> entries)
    {
        var chains = new Dictionary<string, (int First, int Count)>(StringComparer.Ordinal);
        for (var i = 0; i < entries.Count; i++)
            chains[entries[i].Chain] = chains.TryGetValue(entries[i].Chain, out var chain)
                ? (chain.First, chain.Count + 1)
                : (i, 1);
        return chains;
    }

    /// <summary>The place of the entry before in its own chain comes first, then the last one seen of each other chain.</summary>
    private int[] LastSeen(Entry entry, int place, Dictionary<string, (int First, int Count)> chains)
    {
        var seen = new List<int>();
        if (SameChain(place, place - 1))
            seen.Add(place - 1);
        foreach (var (chain, seq) in (entry.Covers ?? Empty).OrderBy(c => c.Key, StringComparer.Ordinal))
            if (chain != entry.Chain && chains.TryGetValue(chain, out var at) && Last(at, seq) is >= 0 and var last)
                seen.Add(last);
        return [.. seen];
    }

    private static readonly IReadOnlyDictionary<string, int> Empty = new Dictionary<string, int>();

    private int Last((int First, int Count) chain, int seq)
    {
        var (low, high) = (chain.First, chain.First + chain.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_entries[middle].Seq <= seq)
                low = middle + 1;
            else
                high = middle;
        }
        return low - 1 >= chain.First ? low - 1 : -1;
    }
}
