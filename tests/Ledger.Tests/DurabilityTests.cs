using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Record;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Tests;

public sealed class DurabilityTests : IDisposable
{
    private readonly Shop _shop = new();
    private readonly IReadOnlyList<Entry> _chain = Made.Chain("bench", 4);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Everything_is_there_after_reopening()
    {
        var id = _shop.Ledger.Id;
        _shop.Post(_chain[0], _chain[1], _chain[3]);
        _shop.Reopen();
        Assert.Equal(id, _shop.Ledger.Id);
        Assert.Equal(["bench-1", "bench-2"], _shop.Ids());
        Assert.Equal(4, _shop.Post(_chain[2]).UpTo);
        Assert.Empty(_shop.Check().Faults);
    }

    [Fact]
    public void A_batch_broken_off_in_the_middle_leaves_nothing()
    {
        _shop.Post(_chain[0]);
        using (var context = Context())
        using (context.Database.BeginTransaction())
        using (var statements = new StraightStatements(context.Database.GetDbConnection()))
        {
            Batch whole = new("bench", 1, [.. _chain.Select(EntryJson.Write)]);
            Assert.Equal(4, Assert.Single(_shop.Ledger.Accept(context, statements, [Brought.By(whole)]).Receipts).UpTo);
        }
        Assert.Equal(["bench-1"], _shop.Ids());
        Assert.Equal(1, Assert.Single(_shop.Ledger.Jobs()).Entries);
        Assert.Equal(4, _shop.Post(_chain).UpTo);
        Assert.Empty(_shop.Check().Faults);
    }

    [Fact]
    public void Two_writers_at_once_lose_and_double_nothing()
    {
        var tablet = Made.Chain("tablet", 40);
        var bench = Made.Chain("bench", 40);
        using var other = _shop.Open();
        Parallel.Invoke(
            () => OneByOne(_shop.Ledger, bench),
            () => OneByOne(other, bench),
            () => OneByOne(other, tablet),
            () => OneByOne(_shop.Ledger, tablet)
        );
        Assert.Equal(bench.Concat(tablet).Select(e => e.Id).Order(), _shop.Ids().Order());
        Assert.Empty(_shop.Ledger.SetAside());
        Assert.Empty(_shop.Check().Faults);
    }

    [Fact]
    public void A_ledger_that_stays_locked_is_said_to_be_unavailable_and_keeps_nothing()
    {
        using (
            var connection = new SqliteConnection($"Data Source={Path.Combine(_shop.Folder, SqliteLedger.FileName)}")
        )
        {
            connection.Open();
            using var transaction = connection.BeginTransaction();
            using var impatient = new ShopLedgerThatWaitsOneSecond(_shop);
            Assert.Throws<LedgerUnavailable>(() => impatient.Post(_chain));
        }
        Assert.Empty(_shop.Ids());
        Assert.Equal(4, _shop.Post(_chain).UpTo);
    }

    // SQLite documentation, PRAGMA synchronous: 2 is FULL
    [Fact]
    public void Every_connection_writes_through()
    {
        using var context = Context();
        context.Database.OpenConnection();
        using var command = context.Database.GetDbConnection().CreateCommand();
        command.CommandText = "SELECT synchronous || ' ' || journal_mode FROM pragma_synchronous, pragma_journal_mode";
        Assert.Equal("2 wal", command.ExecuteScalar());
    }

    [Fact]
    public void An_old_SQLite_is_refused_with_a_clear_message()
    {
        SqliteLedger.Demand("3.51.3");
        SqliteLedger.Demand("3.100.0");
        var old = Assert.Throws<LedgerUnavailable>(() => SqliteLedger.Demand("3.51.2"));
        Assert.StartsWith("SQLite 3.51.2 is too old to keep a ledger; 3.51.3 or newer is needed.", old.Message);
    }

    [Fact]
    public void A_file_that_is_no_ledger_is_refused()
    {
        using var folder = new Shop();
        SqliteConnection.ClearAllPools();
        foreach (var file in Directory.GetFiles(folder.Folder))
            File.Delete(file);
        File.WriteAllText(Path.Combine(folder.Folder, SqliteLedger.FileName), new string('x', 5000));
        Assert.Throws<LedgerUnavailable>(() => folder.Open());
        Assert.Throws<LedgerUnavailable>(() => folder.Check());
    }

    private SqliteLedgerContext Context() =>
        new(SqliteLedger.Options(_shop.Folder, SqliteOpenMode.ReadWriteCreate, 30));

    private static void OneByOne(ShopLedger ledger, IReadOnlyList<Entry> chain)
    {
        foreach (var entry in chain)
            ledger.Accept(new(entry.Device, 1, [EntryJson.Write(entry)]));
    }

    private sealed class ShopLedgerThatWaitsOneSecond(Shop shop) : IDisposable
    {
        private readonly ShopLedger _ledger = new(
            () => new SqliteLedgerContext(SqliteLedger.Options(shop.Folder, SqliteOpenMode.ReadWriteCreate, 1)),
            TimeProvider.System,
            shop.Ledger.Id
        );

        public void Dispose() => _ledger.Dispose();

        public void Post(IEnumerable<Entry> entries) =>
            _ledger.Accept(new("bench", 1, [.. entries.Select(EntryJson.Write)]));
    }
}
