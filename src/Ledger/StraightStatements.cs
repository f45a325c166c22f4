using System.Data.Common;

namespace Witnessmark.Ledger;

/// <summary>The statements of <see cref="StraightAppend"/>, each made ready once for a connection, in words that both databases understand.</summary>
/// <remarks>Asked through EF Core, a batch of ten took eight times as long as its rows alone; made ready for each batch, over twice (benchmarks, <c>append</c>).</remarks>
internal sealed class StraightStatements(DbConnection connection) : IDisposable
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

    private readonly Dictionary<string, Prepared> made = new(StringComparer.Ordinal);

    /// <summary>The last order that there is; 0 in an empty ledger.</summary>
    public long LastOrder() => One("SELECT MAX(\"Order\") FROM entries", row => row.GetInt64(0));

    /// <summary>The last entry of a device's chain.</summary>
    public (int Seq, string? Hash) EndOf(string device, int epoch) =>
        One(
            "SELECT \"Seq\", \"Hash\" FROM entries WHERE \"Device\" = $1 AND \"Epoch\" = $2 ORDER BY \"Seq\" DESC LIMIT 1",
            row => (row.GetInt32(0), (string?)row.GetString(1)),
            device,
            epoch
        );

    /// <summary>Whether anything of a chain is set aside.</summary>
    public bool HasAside(string device, int epoch) =>
        One("SELECT 1 FROM set_aside WHERE \"Device\" = $1 AND \"Epoch\" = $2 LIMIT 1", _ => true, device, epoch);

    /// <summary>The end of a job's chain; null for a job of which nothing is known.</summary>
    public JobHead? HeadOf(string job) =>
        One(
            "SELECT \"Hash\", \"Entries\", \"LastOrder\" FROM job_heads WHERE \"Job\" = $1",
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
                + $"VALUES ({string.Join(", ", Columns.Select((_, i) => $"${i + 1}"))}) ON CONFLICT (\"Id\") DO NOTHING",
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
                ? "INSERT INTO job_heads (\"Hash\", \"Entries\", \"LastOrder\", \"Job\") VALUES ($1, $2, $3, $4)"
                : "UPDATE job_heads SET \"Hash\" = $1, \"Entries\" = $2, \"LastOrder\" = $3 WHERE \"Job\" = $4",
            head.Hash,
            head.Entries,
            head.LastOrder,
            head.Job
        );

    public void Dispose()
    {
        foreach (var statement in made.Values)
            statement.Dispose();
    }

    private bool Change(string sql, params ReadOnlySpan<object?> values) =>
        Made(sql, values.Length).Change(values) == 1;

    private T? One<T>(string sql, Func<DbDataReader, T> read, params ReadOnlySpan<object?> values)
    {
        using var row = Made(sql, values.Length).Rows(values);
        return row.Read() && !row.IsDBNull(0) ? read(row) : default;
    }

    private Prepared Made(string sql, int values) =>
        made.TryGetValue(sql, out var there) ? there : made[sql] = Prepared.On(connection, sql, values);
}
