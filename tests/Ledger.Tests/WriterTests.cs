using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Record;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Tests;

/// <summary>The one writer keeps its connection from batch to batch; nobody may notice that but by the clock.</summary>
public sealed class WriterTests : IDisposable
{
    private readonly Shop shop = new();
    private readonly IReadOnlyList<Entry> chain = Made.Chain("bench", 4);

    private string LedgerFile => Path.Combine(shop.Folder, SqliteLedger.FileName);

    public void Dispose() => shop.Dispose();

    [Fact]
    public void It_begins_anew_only_after_something_went_wrong()
    {
        var begun = 0;
        using var ledger = new ShopLedger(
            () =>
            {
                begun++;
                return new SqliteLedgerContext(SqliteLedger.Options(shop.Folder, SqliteOpenMode.ReadWrite, 1));
            },
            TimeProvider.System,
            shop.Ledger.Id
        );
        Accept(ledger, chain[0]);
        Accept(ledger, chain[1]);
        Assert.Equal(1, begun);
        using (var other = Locked())
            Assert.Throws<LedgerUnavailable>(() => Accept(ledger, chain[2]));
        Accept(ledger, chain[2]);
        Accept(ledger, chain[3]);
        Assert.Equal(2, begun);
        Assert.Equal(chain.Select(e => e.Id), shop.Ids());
        Assert.Empty(shop.Check().Faults);
    }

    [Fact]
    public void What_another_program_wrote_and_changed_in_between_is_seen()
    {
        shop.Post(chain[0]);
        using (var other = shop.Open())
            Accept(other, chain[1]);
        shop.Sql("CREATE INDEX anothers ON entries (\"By\"); VACUUM;"); // the statements were made for other tables
        Assert.Equal(3, shop.Post(chain[2]).UpTo);
        shop.Sql("DELETE FROM entries WHERE \"Id\" = 'bench-3'");
        Assert.Equal("It waits for number 3 of bench/1.", Assert.Single(shop.Post(chain[3]).SetAside).Why);
    }

    [Fact]
    public void A_closed_ledger_has_nothing_open_and_takes_nothing_in()
    {
        shop.Post(chain[0]);
        Assert.Single(shop.Ids());
        Assert.True(File.Exists($"{LedgerFile}-wal"));
        shop.Ledger.Dispose();
        Assert.False(File.Exists($"{LedgerFile}-wal")); // SQLite takes it away when the last connection is closed
        Assert.Throws<LedgerUnavailable>(() => shop.Post(chain[1]));
        shop.Ledger.Dispose();
        shop.Reopen();
        Assert.Equal(2, shop.Post(chain[1]).UpTo);
    }

    [Fact]
    public void Nothing_is_acknowledged_that_goes_into_a_file_that_was_put_away()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "An open file cannot be moved there.");
        shop.Post(chain[0]);
        shop.Sql($"VACUUM INTO '{shop.Folder}/copy.db'");
        File.Move(LedgerFile, $"{LedgerFile}.away");
        File.Move(Path.Combine(shop.Folder, "copy.db"), LedgerFile);
        for (var again = 0; again < 2; again++)
            Assert.Equal(
                "The ledger cannot be used: its file was moved or replaced while it was open. Put it back, or start the server anew.",
                Assert.Throws<LedgerUnavailable>(() => shop.Post(chain[1])).Message
            );
        File.Move($"{LedgerFile}.away", LedgerFile, overwrite: true);
        Assert.Equal(2, shop.Post(chain[1]).UpTo);
        Assert.Empty(shop.Check().Faults);
    }

    private static void Accept(ShopLedger ledger, Entry entry) =>
        ledger.Accept(new("bench", 1, [EntryJson.Write(entry)]));

    private SqliteConnection Locked()
    {
        var connection = new SqliteConnection($"Data Source={LedgerFile};Pooling=False");
        connection.Open();
        connection.BeginTransaction();
        return connection;
    }
}
