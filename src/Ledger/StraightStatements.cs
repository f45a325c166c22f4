using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;

namespace Witnessmark.Ledger;

/// <summary>The statements of <see cref="StraightAppend"/>, each made once for a transaction, in words that both databases understand.</summary>
/// <remarks>Asked through EF Core, a batch of ten took eight times as long as its rows alone; this way a little over twice (benchmarks, <c>append</c>).</remarks>
internal sealed class StraightStatements(LedgerContext ledger) : IDisposable
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

    private readonly Dictionary<string, DbCommand> made = new(StringComparer.Ordinal);

    /// <summary>The last order that there is; 0 in an empty ledger.</summary>
    public long LastOrder() => One("SELECT MAX(\"Order\") FROM entries", row => row.GetInt64(0));

    /// <summary>The last entry of a device's chain.</summary>
    public (int Seq, string? Hash) EndOf(string device, int epoch) =>
        One(
            "SELECT \"Seq\", \"Hash\" FROM entries WHERE \"Device\" = @0 AND \"Epoch\" = @1 ORDER BY \"Seq\" DESC LIMIT 1",
            row => (row.GetInt32(0), (string?)row.GetString(1)),
            device,
            epoch
        );

    /// <summary>Whether anything of a chain is set aside.</summary>
    public bool HasAside(string device, int epoch) =>
        One("SELECT 1 FROM set_aside WHERE \"Device\" = @0 AND \"Epoch\" = @1 LIMIT 1", _ => true, device, epoch);

    /// <summary>The end of a job's chain; null for a job of which nothing is known.</summary>
    public JobHead? HeadOf(string job) =>
        One(
            "SELECT \"Hash\", \"Entries\", \"LastOrder\" FROM job_heads WHERE \"Job\" = @0",
            row => new JobHead
            {
                Job = job,
                Hash = row.GetString(0),
                Entries = row.GetInt32(1),
                LastOrder = row.GetInt64(2),
            },
            job
        );

    /// <summary>Keeps an entry; false when its id is that of another one.</summary>
    public bool Insert(KeptEntry row) =>
        Change(
            $"INSERT INTO entries ({string.Join(", ", Columns.Select(c => $"\"{c}\""))}) "
                + $"VALUES ({string.Join(", ", Columns.Select((_, i) => $"@{i}"))}) ON CONFLICT (\"Id\") DO NOTHING",
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
            row.Received
        );

    /// <summary>Keeps the new end of a job's chain.</summary>
    public void Keep(JobHead head, bool isNew) =>
        Change(
            isNew
                ? "INSERT INTO job_heads (\"Hash\", \"Entries\", \"LastOrder\", \"Job\") VALUES (@0, @1, @2, @3)"
                : "UPDATE job_heads SET \"Hash\" = @0, \"Entries\" = @1, \"LastOrder\" = @2 WHERE \"Job\" = @3",
            head.Hash,
            head.Entries,
            head.LastOrder,
            head.Job
        );

    public void Dispose()
    {
        foreach (var command in made.Values)
            command.Dispose();
    }

    private bool Change(string sql, params ReadOnlySpan<object?> values) => With(sql, values).ExecuteNonQuery() == 1;

    private T? One<T>(string sql, Func<DbDataReader, T> read, params ReadOnlySpan<object?> values)
    {
        using var row = With(sql, values).ExecuteReader();
        return row.Read() && !row.IsDBNull(0) ? read(row) : default;
    }

    private DbCommand With(string sql, ReadOnlySpan<object?> values)
    {
        if (!made.TryGetValue(sql, out var command))
            made[sql] = command = Made(sql, values.Length);
        for (var i = 0; i < values.Length; i++)
            command.Parameters[i].Value = values[i] ?? DBNull.Value;
        return command;
    }

    private DbCommand Made(string sql, int values)
    {
        var command = ledger.Database.GetDbConnection().CreateCommand();
        command.Transaction = ledger.Database.CurrentTransaction!.GetDbTransaction();
        command.CommandText = sql;
        for (var i = 0; i < values; i++)
        {
            var parameter = command.CreateParameter();
            parameter.ParameterName = $"@{i}";
            command.Parameters.Add(parameter);
        }
        return command;
    }
}
