using Microsoft.Data.Sqlite;
using Witnessmark.Ledger;

namespace Witnessmark.Benchmarks;

/// <summary>Microsoft.Data.Sqlite with one prepared statement, write-ahead log, FULL, and the same indices as the ledger.</summary>
internal sealed class SqliteAlone : IDisposable
{
    private const string Table =
        "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; CREATE TABLE entries (o INTEGER PRIMARY KEY, id TEXT, shop TEXT, job TEXT, device TEXT, epoch INTEGER, seq INTEGER, kind TEXT, body TEXT, at TEXT, by TEXT, previous TEXT, hash TEXT, jobhash TEXT, received TEXT); CREATE UNIQUE INDEX a ON entries (id); CREATE UNIQUE INDEX b ON entries (device, epoch, seq); CREATE INDEX c ON entries (job, o)";
    private const string Insert =
        "INSERT INTO entries VALUES ($0, $1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14)";
    private readonly SqliteConnection connection;
    private readonly SqliteCommand insert;

    public SqliteAlone(string file)
    {
        connection = new($"Data Source={file}");
        connection.Open();
        insert = connection.CreateCommand();
        insert.CommandText = Table;
        insert.ExecuteNonQuery();
        insert.CommandText = Insert;
        for (var i = 0; i < 15; i++)
            insert.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
    }

    public void Append(KeptEntry[] rows)
    {
        using var transaction = connection.BeginTransaction();
        insert.Transaction = transaction;
        foreach (var row in rows)
        {
            object?[] values = Values(row);
            for (var i = 0; i < values.Length; i++)
                insert.Parameters[i].Value = values[i] ?? DBNull.Value;
            insert.ExecuteNonQuery();
        }
        transaction.Commit();
    }

    public void Dispose()
    {
        insert.Dispose();
        connection.Dispose();
    }

    private static object?[] Values(KeptEntry row) =>
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
            row.At,
            row.By,
            row.DevicePrevious,
            row.Hash,
            row.JobHash,
            row.Received,
        ];
}
