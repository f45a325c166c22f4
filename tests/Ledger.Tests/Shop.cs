using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Tests;

/// <summary>A ledger in a folder that goes away with it.</summary>
internal sealed class Shop : IDisposable
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);

    public Shop() => Ledger = Open();

    public string Folder { get; } = Directory.CreateTempSubdirectory("witnessmark-ledger-").FullName;

    public ShopLedger Ledger { get; private set; }

    public ShopLedger Open(int waitSeconds = 30) => SqliteLedger.Open(Folder, new Stopped(Noon), waitSeconds);

    public void Reopen()
    {
        Ledger.Dispose();
        Ledger = Open();
    }

    public Receipt Post(params IEnumerable<Entry> entries) => Post(entries.Select(EntryJson.Write));

    public Receipt Post(IEnumerable<JsonElement> entries) => Ledger.Accept(new("bench", 1, [.. entries]));

    public IEnumerable<string> Ids() => Ledger.After(0).Entries.Select(e => e.Entry.Id);

    public LedgerFinding Check() => SqliteLedger.Check(Folder);

    public void Sql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(Folder, SqliteLedger.FileName)}");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public void Dispose()
    {
        Ledger.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
    }

    private sealed class Stopped(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
