using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Backups;
using Witnessmark.Bench.Record;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Backups;

// Source: own derivation; the promise of the backup, tried on real files.
public sealed class BackupTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);
    private readonly TempFolder folder = new();

    private string Data => Path.Combine(folder.Path, "data");

    private string Kept => Path.Combine(folder.Path, "kept");

    [Fact]
    public void What_is_brought_back_is_what_was_there()
    {
        using var ledger = Shop();
        var (backup, record) = BackupRun.Write(Data, Kept, Noon);
        Assert.Equal(Path.Combine(Kept, "witnessmark-2026-03-02T120000Z"), backup);
        Assert.Equal(3, record.Entries);
        Assert.Equal(["ledger.db", "photographs/note.txt", "shop.toml"], record.Files.Select(f => f.Name));

        var again = Path.Combine(folder.Path, "again");
        RestoreRun.Run(backup, again, TimeProvider.System);
        Assert.Equal("name = \"here\"", File.ReadAllText(Path.Combine(again, "shop.toml")));
        using var restored = SqliteLedger.Open(again, TimeProvider.System);
        Assert.Equal(ledger.OfJob("412").Select(e => e.Hash), restored.OfJob("412").Select(e => e.Hash));
        Assert.Empty(SqliteLedger.Check(again).Faults);
    }

    [Fact]
    public void A_restored_ledger_is_another_one_so_that_devices_send_again_and_nothing_is_doubled()
    {
        using var ledger = Shop();
        var (backup, _) = BackupRun.Write(Data, Kept, Noon);
        var chain = Notes.Chain(5);
        ledger.Accept(new("bench", 1, [.. chain.Skip(3).Select(EntryJson.Write)])); // after the backup
        var again = Path.Combine(folder.Path, "again");
        RestoreRun.Run(backup, again, TimeProvider.System);
        using var restored = SqliteLedger.Open(again, TimeProvider.System);
        Assert.NotEqual(ledger.Id, restored.Id);
        Assert.Equal(5, restored.Accept(new("bench", 1, [.. chain.Select(EntryJson.Write)])).UpTo);
        Assert.Equal(chain.Select(e => e.Id), restored.OfJob("412").Select(e => e.Id));
    }

    [Fact]
    public async Task It_is_written_while_others_write_and_stands_still()
    {
        using var ledger = Shop();
        var chain = Notes.Chain(300);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        TaskCompletionSource begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
        var writing = Task.Run(
            () =>
            {
                for (var at = 3; at < chain.Count && !stop.IsCancellationRequested; at++)
                {
                    ledger.Accept(new("bench", 1, [EntryJson.Write(chain[at])]));
                    begun.TrySetResult();
                }
            },
            TestContext.Current.CancellationToken
        );
        // on a busy machine four backups may be made before the writer had its first turn
        await Task.WhenAny(begun.Task, writing);
        List<BackupRecord> records =
        [
            .. Enumerable.Range(0, 4).Select(i => BackupRun.Write(Data, Kept, Noon.AddMinutes(i)).Record),
        ];
        await stop.CancelAsync();
        await writing;
        Assert.Equal(records.OrderBy(r => r.Entries), records);
        Assert.True(records[^1].Entries > 3, "Nothing was written meanwhile: the test proves nothing.");
        Assert.All(Directory.GetDirectories(Kept), backup => Assert.Empty(BackupCheck.Of(backup)));
    }

    [Theory]
    [InlineData("shop.toml", "shop.toml was changed")]
    [InlineData("ledger.db", "ledger.db was changed")]
    [InlineData("stranger.toml", "stranger.toml does not belong")]
    public void One_changed_byte_is_found_and_nothing_is_brought_back(string name, string said)
    {
        Shop();
        var (backup, _) = BackupRun.Write(Data, Kept, Noon);
        File.AppendAllText(Path.Combine(backup, name), "x");
        Assert.Contains(said, Assert.Single(BackupCheck.Of(backup)));
        var again = Path.Combine(folder.Path, "again");
        Assert.Throws<BrokenBackup>(() => RestoreRun.Run(backup, again, TimeProvider.System));
        Assert.False(Directory.Exists(again));
    }

    [Fact]
    public void A_missing_file_and_one_outside_are_found()
    {
        Shop();
        var (backup, record) = BackupRun.Write(Data, Kept, Noon);
        File.Delete(Path.Combine(backup, "shop.toml"));
        Assert.Equal(["shop.toml is missing."], BackupCheck.Of(backup));
        var outside = record with { Files = [new("../../data/shop.toml", 1, "00")] };
        File.WriteAllText(Path.Combine(backup, BackupRecord.FileName), outside.Text());
        Assert.Contains(BackupCheck.Of(backup), f => f.Contains("would lie outside"));
    }

    [Fact]
    public void A_broken_shop_gives_no_backup_and_says_why()
    {
        Shop().Dispose();
        using (var connection = new SqliteConnection($"Data Source={Path.Combine(Data, "ledger.db")};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "UPDATE entries SET Body = replace(Body, '24.4', '24.5') WHERE Seq = 2";
            Assert.Equal(1, command.ExecuteNonQuery());
        }
        var (code, said) = Run(Data);
        Assert.Equal(1, code);
        Assert.Contains("Entry bench-2", said);
        Assert.Empty(Directory.GetFileSystemEntries(Kept));
    }

    [Fact]
    public void A_photograph_that_is_another_picture_is_found()
    {
        Shop();
        File.WriteAllText(Path.Combine(Data, "photographs", $"{new string('a', 64)}.jpg"), "not that one");
        Assert.Contains("is another picture", Run(Data).Said);
    }

    [Fact]
    public void Nothing_is_written_over()
    {
        Shop();
        var (backup, _) = BackupRun.Write(Data, Kept, Noon);
        Assert.Contains(
            "is there already",
            Assert.Throws<IOException>(() => BackupRun.Write(Data, Kept, Noon)).Message
        );
        Assert.Contains(
            "is not empty",
            Assert.Throws<IOException>(() => RestoreRun.Run(backup, Data, TimeProvider.System)).Message
        );
        Assert.Equal("name = \"here\"", File.ReadAllText(Path.Combine(Data, "shop.toml")));
    }

    [Fact]
    public void A_backup_does_not_lie_in_what_it_backs_up()
    {
        Shop();
        var inside = Path.Combine(Data, "backups");
        Assert.Contains(
            "lies in the data folder",
            Assert.Throws<IOException>(() => BackupRun.Write(Data, inside, Noon)).Message
        );
        Assert.False(Directory.Exists(inside));
    }

    [Fact]
    public void Where_it_cannot_be_brought_back_whole_nothing_of_it_stays()
    {
        Shop();
        var (backup, _) = BackupRun.Write(Data, Kept, Noon);
        var again = Path.Combine(folder.Path, "again");
        Directory.CreateDirectory(Path.Combine(again, "shop.toml")); // a folder stands where the file has to go
        Assert.ThrowsAny<Exception>(() => RestoreRun.Run(backup, again, TimeProvider.System));
        Assert.False(File.Exists(Path.Combine(again, "ledger.db")));
    }

    [Fact]
    public void A_folder_that_is_served_is_not_restored_into()
    {
        Shop();
        var (backup, _) = BackupRun.Write(Data, Kept, Noon);
        var again = Directory.CreateDirectory(Path.Combine(folder.Path, "again")).FullName;
        using var held = ServedFolder.Hold(again);
        Assert.Contains(
            "is being served",
            Assert.Throws<IOException>(() => RestoreRun.Run(backup, again, TimeProvider.System)).Message
        );
    }

    [Theory]
    [InlineData(null, "no whole backup")]
    [InlineData("{", "cannot be read")]
    [InlineData("""{"backup":2,"files":[]}""", "form 2")]
    public void What_is_no_backup_is_said_to_be_none(string? record, string said)
    {
        var strange = Directory.CreateDirectory(Path.Combine(folder.Path, "strange")).FullName;
        if (record is not null)
            File.WriteAllText(Path.Combine(strange, BackupRecord.FileName), record);
        var errors = new StringWriter();
        Assert.Equal(
            2,
            RestoreCommand.Run(strange, null, check: true, json: false, TimeProvider.System, TextWriter.Null, errors)
        );
        Assert.Contains(said, errors.ToString());
    }

    [Fact]
    public void The_commands_print_JSON_for_programs()
    {
        Shop();
        var output = new StringWriter();
        Assert.Equal(0, BackupCommand.Run(Data, Kept, json: true, Noon, output, TextWriter.Null));
        using var written = JsonDocument.Parse(output.ToString());
        var backup = written.RootElement.GetProperty("backup").GetString()!;
        Assert.Equal(3, written.RootElement.GetProperty("entries").GetInt32());
        File.AppendAllText(Path.Combine(backup, "shop.toml"), "x");
        output = new();
        Assert.Equal(
            1,
            RestoreCommand.Run(backup, null, check: true, json: true, TimeProvider.System, output, TextWriter.Null)
        );
        using var found = JsonDocument.Parse(output.ToString());
        Assert.Equal("changed", found.RootElement.GetProperty("verdict").GetString());
        Assert.Single(found.RootElement.GetProperty("where").EnumerateArray());
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        folder.Dispose();
    }

    private ShopLedger Shop()
    {
        var ledger = SqliteLedger.Open(Data, TimeProvider.System);
        ledger.Accept(new("bench", 1, [.. Notes.Chain(3).Select(EntryJson.Write)]));
        File.WriteAllText(Path.Combine(Data, "shop.toml"), "name = \"here\"");
        Directory.CreateDirectory(Path.Combine(Data, "photographs"));
        File.WriteAllText(Path.Combine(Data, "photographs", "note.txt"), "kept as well");
        File.WriteAllText(Path.Combine(Data, "half.json.new"), "a write in progress");
        return ledger;
    }

    private (int Code, string Said) Run(string data)
    {
        var errors = new StringWriter();
        return (BackupCommand.Run(data, Kept, json: false, Noon, TextWriter.Null, errors), errors.ToString());
    }
}
