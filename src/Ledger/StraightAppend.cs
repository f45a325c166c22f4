namespace Witnessmark.Ledger;

/// <summary>
/// The short way into the ledger, inside one transaction: for the next entry of a chain of which nothing is set aside, bound to the one before. That is
/// nearly all that ever comes; whatever is otherwise takes the long way of <see cref="Acceptance"/>, which gives every reason.
/// </summary>
/// <remarks>One statement for an entry, where the long way asks six times first.</remarks>
internal sealed class StraightAppend(StraightStatements statements, DateTimeOffset now)
{
    private readonly Dictionary<(string Device, int Epoch), Chain?> chains = [];
    private readonly Dictionary<string, (JobHead Head, bool IsNew)> heads = new(StringComparer.Ordinal);
    private readonly string received = Moment.Text(now);
    private long? last;

    /// <summary>The last order that there is.</summary>
    public long Last => last ??= statements.LastOrder();

    /// <summary>Takes an entry in; false when it has to go the long way.</summary>
    public bool Take(Arrived arrived)
    {
        if (arrived is not { Entry: { } entry, Row: { } row } || ChainOf(entry.Device, entry.Epoch) is not { } chain)
            return false;
        if (entry.Seq != chain.Seq + 1 || entry.DevicePrevious != chain.Hash)
            return false;
        var head = HeadOf(entry.Job);
        (row.Order, row.Received) = (Last + 1, received);
        row.JobHash = JobChain.Next(head.Hash, row.Order, entry.Hash);
        if (!statements.Insert(row))
            return false; // its id is that of another entry
        last = row.Order;
        chains[(entry.Device, entry.Epoch)] = new(entry.Seq, entry.Hash);
        (head.Hash, head.Entries, head.LastOrder) = (row.JobHash, head.Entries + 1, row.Order);
        return true;
    }

    /// <summary>The highest number held of a chain of which nothing is set aside; null: it has to be looked for.</summary>
    public int? UpTo(string device, int epoch) => ChainOf(device, epoch)?.Seq;

    /// <summary>Writes what it knows of the jobs.</summary>
    public void Settle()
    {
        foreach (var (head, isNew) in heads.Values)
            if (head.Entries > 0)
                statements.Keep(head, isNew);
        heads.Clear();
    }

    /// <summary>Writes what it knows of the jobs and forgets all: from here on somebody else may write.</summary>
    public void Leave()
    {
        Settle();
        chains.Clear();
        last = null;
    }

    private Chain? ChainOf(string device, int epoch)
    {
        if (chains.TryGetValue((device, epoch), out var known))
            return known;
        var (seq, hash) = statements.EndOf(device, epoch);
        return chains[(device, epoch)] = statements.HasAside(device, epoch) ? null : new(seq, hash);
    }

    private JobHead HeadOf(string job)
    {
        if (!heads.TryGetValue(job, out var known))
            heads[job] = known = statements.HeadOf(job) is { } there
                ? (there, false)
                : (new() { Job = job, Hash = "" }, true);
        return known.Head;
    }

    private sealed record Chain(int Seq, string? Hash);
}
