using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Record;
using Witnessmark.Doctor;
using Witnessmark.Ledger.Doors;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Doctor;

public sealed class DoctorTests : IDisposable
{
    private readonly TempFolder folder = new();

    [Fact]
    public void A_served_shop_is_well_in_all_and_nothing_of_it_is_changed()
    {
        using var shop = RunningShop.Serve(folder.Path);
        var before = Names();
        var (code, said) = Run();
        Assert.Equal(0, code);
        Assert.DoesNotContain("AMISS", said);
        Assert.Contains("Being served now.", said);
        Assert.Contains("Intact: 1 entries in 1 jobs", said);
        Assert.Equal(before, Names());
    }

    [Fact]
    public void A_changed_entry_a_broken_file_and_another_picture_are_each_named()
    {
        Ledger(3);
        Sql("UPDATE entries SET Body = replace(Body, '24.4', '24.5') WHERE Seq = 2");
        File.WriteAllText(In("shop.toml"), "name = ");
        File.WriteAllBytes(In("stock.db"), [.. "SQLite format 3\0"u8, .. new byte[4000]]);
        Directory.CreateDirectory(In("photographs"));
        File.WriteAllText(In($"photographs/{new string('a', 64)}.jpg"), "not that one");
        var (code, said) = Run();
        Assert.Equal(1, code);
        var amiss = said.Split('\n').Where(l => l.StartsWith("AMISS", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, amiss.Count);
        Assert.Contains(amiss, l => l.Contains("shop.toml"));
        Assert.Contains(amiss, l => l.Contains("stock.db"));
        Assert.Contains(amiss, l => l.Contains("Entry bench-2"));
        Assert.Contains(amiss, l => l.Contains("aaaa.jpg"));
    }

    [Theory]
    [InlineData(-10, false)]
    [InlineData(-1, true)] // within the leeway of two minutes
    [InlineData(3, true)]
    public void A_clock_that_ran_back_is_said(int minutes, bool good)
    {
        var at = new DateTimeOffset(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);
        SqliteLedger
            .Open(folder.Path, new StoppedClock(at))
            .Accept(new("bench", 1, [.. Notes.Chain(1).Select(EntryJson.Write)]));
        var clock = Examination.Of(folder.Path, at.AddMinutes(minutes)).Single(f => f.Of == "clock");
        Assert.Equal(good, clock.Good);
        Assert.Equal(!good, clock.Says.Contains("set the clock"));
    }

    [Theory]
    [InlineData("", true, "Open; its book of 2 events is whole.")]
    [InlineData(
        "UPDATE event SET says = 'nobody was here' WHERE number = 1",
        false,
        "was changed after it was written"
    )]
    [InlineData("DELETE FROM event WHERE number = 1", false, "is missing")]
    public void The_book_of_the_door_is_looked_at_where_there_is_one(string spoilt, bool good, string says)
    {
        Assert.DoesNotContain(Examination.Of(folder.Path, DateTimeOffset.UnixEpoch), f => f.Of == "door");
        DoorStore
            .Open(folder.Path)
            .Do(rows =>
            {
                rows.Note(DateTimeOffset.UnixEpoch, "let-in", "Ines Tallow", "bench-1", "bench-1 was let in");
                rows.Note(DateTimeOffset.UnixEpoch, "came-in", "Ines Tallow", "bench-1", "Ines Tallow came in");
                return 0;
            });
        if (spoilt.Length > 0)
            Sql(spoilt, DoorStore.FileName);
        var door = Examination.Of(folder.Path, DateTimeOffset.UnixEpoch).Single(f => f.Of == "door");
        Assert.Equal(good, door.Good);
        Assert.Contains(says, door.Says);
    }

    // Source: SQLite documentation, "Write-Ahead Logging": WAL does not work over a network file system.
    [Theory]
    [InlineData(DriveType.Fixed, "ext4", false)]
    [InlineData(DriveType.Fixed, "NTFS", false)]
    [InlineData(DriveType.Unknown, "overlay", false)]
    [InlineData(DriveType.Network, "whatever", true)]
    [InlineData(DriveType.Unknown, "nfs4", true)]
    [InlineData(DriveType.Unknown, "CIFS", true)]
    [InlineData(DriveType.Fixed, "fuse.sshfs", true)]
    public void File_systems_of_other_computers_are_known(DriveType type, string format, bool network) =>
        Assert.Equal(network, DataPlace.IsOverTheNetwork(type, format));

    [Theory]
    [InlineData(DataPlace.LeastFree, true)]
    [InlineData(DataPlace.LeastFree - 1, false)]
    public void A_disk_that_is_nearly_full_is_said(long free, bool good) =>
        Assert.Equal(good, Examination.OfRoom(free).Good);

    [Fact]
    public void A_folder_is_served_once_and_free_again_when_its_server_is_killed()
    {
        using (var shop = RunningShop.Serve(folder.Path))
        {
            using var second = RunningShop.Start("serve", "--data", folder.Path, "--port", "0");
            var said = second.StandardError.ReadToEnd();
            second.WaitForExit();
            Assert.Equal(2, second.ExitCode);
            Assert.Contains("is being served", said);
            Assert.True(ServedFolder.IsHeld(folder.Path));
            shop.Kill();
        }
        Assert.False(ServedFolder.IsHeld(folder.Path));
    }

    [Fact]
    public void It_prints_JSON_and_knows_no_folder_that_is_not_there()
    {
        Ledger(1);
        var output = new StringWriter();
        DoctorCommand.Run(folder.Path, json: true, DateTimeOffset.UtcNow, output, TextWriter.Null);
        using var json = JsonDocument.Parse(output.ToString());
        Assert.False(json.RootElement.GetProperty("good").GetBoolean()); // it has no shop.toml
        Assert.Contains(
            json.RootElement.GetProperty("findings").EnumerateArray(),
            f => f.GetProperty("of").GetString() == "ledger"
        );
        Assert.Equal(2, DoctorCommand.Run(In("nowhere"), false, DateTimeOffset.UtcNow, output, TextWriter.Null));
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        folder.Dispose();
    }

    private string In(string name) => Path.Combine(folder.Path, name);

    private List<string> Names() => [.. Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories).Order()];

    private void Ledger(int entries)
    {
        using var ledger = SqliteLedger.Open(folder.Path, TimeProvider.System);
        ledger.Accept(new("bench", 1, [.. Notes.Chain(entries).Select(EntryJson.Write)]));
    }

    private void Sql(string sql, string file = "ledger.db")
    {
        using var connection = new SqliteConnection($"Data Source={In(file)};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        Assert.Equal(1, command.ExecuteNonQuery());
    }

    private (int Code, string Said) Run()
    {
        var output = new StringWriter();
        return (
            DoctorCommand.Run(folder.Path, json: false, DateTimeOffset.UtcNow, output, TextWriter.Null),
            output.ToString()
        );
    }

    private sealed class StoppedClock(DateTimeOffset at) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => at;
    }
}
