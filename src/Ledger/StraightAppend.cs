using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Witnessmark.Ledger;

/// <summary>
/// The short way into the ledger, inside one transaction: for the next entry of a chain of which nothing is set aside, bound to the one before. That is
/// nearly all that ever comes; whatever is otherwise takes the long way of <see cref="Acceptance"/>, which gives every reason.
/// </summary>
/// <remarks>One statement for an entry, where the long way asks six times first.</remarks>
internal sealed class StraightAppend(LedgerContext ledger, DateTimeOffset now) : IDisposable
{
    private static readonly string[] Columns =
    [
        nameof(KeptEntry.Order),
        nameof(KeptEntry.Id),
        nameof(KeptEntry.Shop),
        nameof(KeptEntry.Job),
        nameof(KeptEntry.Device),
        nameof(KeptEntry.Epoch),
        nameof(KeptEntry.Seq),
        nameof(KeptEntry.Kind),
        nameof(KeptEntry.Body),
        nameof(KeptEntry.Strikes),
        nameof(KeptEntry.Covers),
        nameof(KeptEntry.At),
        nameof(KeptEntry.By),
        nameof(KeptEntry.DevicePrevious),
        nameof(KeptEntry.Hash),
        nameof(KeptEntry.JobHash),
        nameof(KeptEntry.Received),
    ];

    private readonly Dictionary<(string Device, int Epoch), Chain?> chains = [];
    private readonly Dictionary<string, JobHead> heads = new(StringComparer.Ordinal);
    private DbCommand? insert;
    private long? last;

    /// <summary>Takes an entry in; false when it has to go the long way.</summary>
    public bool Take(Arrived arrived)
    {
        if (arrived.Entry is not { } entry || ChainOf(entry.Device, entry.Epoch) is not { } chain)
            return false;
        if (entry.Seq != chain.Seq + 1 || entry.DevicePrevious != chain.Hash)
            return false;
        last ??= ledger.Entries.Max(e => (long?)e.Order) ?? 0;
        var head = HeadOf(entry.Job);
        var row = KeptEntry.Of(entry, last.Value + 1, JobChain.Next(head.Hash, last.Value + 1, entry.Hash), now);
        if (!Insert(row))
            return false; // its id is that of another entry
        last++;
        chains[(entry.Device, entry.Epoch)] = new(entry.Seq, entry.Hash);
        if (head.Entries == 0)
            ledger.Jobs.Add(head); // a job of which nothing was known
        (head.Hash, head.Entries, head.LastOrder) = (row.JobHash, head.Entries + 1, row.Order);
        return true;
    }

    /// <summary>The highest number held of a chain of which nothing is set aside; null: it has to be looked for.</summary>
    public int? UpTo(string device, int epoch) => ChainOf(device, epoch)?.Seq;

    /// <summary>Writes what it knows of the jobs and forgets all: from here on somebody else may write.</summary>
    public void Settle()
    {
        ledger.SaveChanges();
        ledger.ChangeTracker.Clear();
        heads.Clear();
        chains.Clear();
        last = null;
    }

    public void Dispose() => insert?.Dispose();

    private Chain? ChainOf(string device, int epoch)
    {
        if (chains.TryGetValue((device, epoch), out var known))
            return known;
        var held = ledger
            .Entries.AsNoTracking()
            .Where(e => e.Device == device && e.Epoch == epoch)
            .OrderByDescending(e => e.Seq)
            .Select(e => new { e.Seq, e.Hash })
            .FirstOrDefault();
        var aside = ledger.Aside.Any(a => a.Device == device && a.Epoch == epoch);
        return chains[(device, epoch)] = aside ? null : new(held?.Seq ?? 0, held?.Hash);
    }

    private JobHead HeadOf(string job)
    {
        if (!heads.TryGetValue(job, out var head))
            heads[job] = head = ledger.Jobs.Find(job) ?? new() { Job = job, Hash = "" };
        return head;
    }

    private bool Insert(KeptEntry row)
    {
        insert ??= Prepared();
        object?[] values =
        [
            row.Order,
            row.Id,
            row.Shop,
            row.Job,
            row.Device,
            row.Epoch,
            row.Seq,
            row.Kind,
            row.Body,
            row.Strikes,
            row.Covers,
            row.At,
            row.By,
            row.DevicePrevious,
            row.Hash,
            row.JobHash,
            row.Received,
        ];
        for (var i = 0; i < values.Length; i++)
            insert.Parameters[i].Value = values[i] ?? DBNull.Value;
        return insert.ExecuteNonQuery() == 1;
    }

    // in the words that both databases understand
    private DbCommand Prepared()
    {
        var command = ledger.Database.GetDbConnection().CreateCommand();
        command.Transaction = ledger.Database.CurrentTransaction!.GetDbTransaction();
        command.CommandText =
            $"INSERT INTO entries ({string.Join(", ", Columns.Select(c => $"\"{c}\""))}) "
            + $"VALUES ({string.Join(", ", Columns.Select(c => $"@{c}"))}) ON CONFLICT (\"Id\") DO NOTHING";
        foreach (var column in Columns)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = $"@{column}";
            command.Parameters.Add(parameter);
        }
        return command;
    }

    private sealed record Chain(int Seq, string? Hash);
}
