using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Record;
using Witnessmark.Doors;
using Witnessmark.Groups;
using Witnessmark.Keys;
using Witnessmark.Ledger.Campaigns;
using Witnessmark.Ledger.Machines;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;
using Witnessmark.Tests.Doors;
using Witnessmark.Tests.Photographs;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; what a shop had in its folder it has in the store.
[Collection(StoreCollection.Name)]
public sealed class MigrateTests : IDisposable
{
    private readonly Postgres store;
    private readonly TempFolder data = new();
    private readonly string identity;
    private readonly string key;

    public MigrateTests(StoreFixture fixture)
    {
        store = fixture.Store;
        using var ledger = SqliteLedger.Open(data.Path, TimeProvider.System);
        ledger.Accept(new("bench", 1, [.. Notes.Chain(3).Select(EntryJson.Write)]));
        ledger.Accept(new("other", 1, [EntryJson.Write(Notes.Next("other", 4, new string('0', 64)))])); // waits
        identity = ledger.Id;
        key = KeyFolder.ShopKey(data.Path).Seal.Key.Id;
        Registers();
        In("log-books/0123.json", "{}");
        In($"photographs/{TinyPicture.Sha256}.jpg", "");
        File.WriteAllBytes(Picture, TinyPicture.Plain);
        using var closed = new ClosedShop();
        Assert.Null(
            new Door(data.Path, () => closed.Workshop, TimeProvider.System)
                .Close(ClosedShop.Lead, ClosedShop.Passphrase)
                .No
        );
        SqliteConnection.ClearAllPools();
    }

    private string Picture => Path.Combine(data.Path, "photographs", $"{TinyPicture.Sha256}.jpg");

    public void Dispose() => data.Dispose();

    [Fact]
    public void A_folder_is_copied_whole_and_left_as_it_was()
    {
        using var shop = new GroupFolder("moved", store);
        var before = Hashes();
        var (exit, says) = Migrate(shop);
        Assert.StartsWith("Copied and checked: 3 entries in 1 jobs, 1 set aside, 1 photographs.", says);
        Assert.Equal(0, exit);
        Assert.Equal(before, Hashes());

        using var opened = GroupShop.Open(shop.Connection, TimeProvider.System);
        Assert.Equal(identity, opened.Ledger.Id);
        Assert.Equal(["bench-1", "bench-2", "bench-3"], opened.Ledger.After(0).Entries.Select(e => e.Entry.Id));
        Assert.Equal(TinyPicture.Plain, opened.Files.Photograph(TinyPicture.Sha256));
        Assert.Equal("{}", opened.Files.LogBook("0123"));
        Assert.Equal(key, GroupPlace.SigningKey(opened, GroupFile.Read(shop.Group).OpensSecrets).Seal.Key.Id);
        Assert.True(opened.Door.Look(rows => rows.IsClosed()));
        Assert.Equal("Ines Tallow closed the door.", Assert.Single(opened.Door.Look(rows => rows.AllEvents())).Says);

        var machine = opened.Register.Machine("m1")!;
        Assert.Equal(("HL 1", "Ada Brook"), (machine.Machine.Plate, machine.Owner!.Name));
        Assert.Equal(11840.5, Assert.Single(machine.Machine.Distances).Kilometres);
        foreach (var text in (string[])["fell 640", "ada"])
            Assert.Equal("m1", Assert.Single(opened.Register.Find(text)!.Machines).Machine.Id);
        var asked = new AskedMachine("Tarnmoor", "Fell 640", 2024, null);
        var here = CampaignStore.Open(data.Path);
        Assert.NotEmpty(here.Of(asked));
        Assert.Equal(Text(here.Of(asked)), Text(opened.Campaigns.Of(asked)));
        Assert.Equal(Text(here.Lists()), Text(opened.Campaigns.Lists()));
        Assert.Equal("TW-31", Assert.Single(opened.Campaigns.WithdrawnSoFar()).Number);

        // and goes on numbering where it stood
        opened.Register.Import(
            [new(1, new("m2", null, null, null, null, "Rook", null, null, null, null), null, "")],
            _ => { },
            TestContext.Current.CancellationToken
        );
        Assert.NotNull(opened.Register.Machine("m2"));
        opened.Ledger.Accept(new("x", 1, [JsonSerializer.Deserialize<JsonElement>("{}")]));
        Assert.Equal([1, 2], opened.Ledger.SetAside().Select(a => a.Number));
    }

    [Fact]
    public void What_cannot_be_copied_is_said_and_nothing_is_copied_over()
    {
        using var shop = new GroupFolder("refused", store);
        using (ServedFolder.Hold(data.Path))
            Assert.Contains("is being served", Migrate(shop).Says);
        Assert.Equal("0", Entries(shop));
        Assert.Equal(0, Migrate(shop).Exit);
        var (exit, says) = Migrate(shop);
        Assert.Contains("The store has rows of the shop \"refused\" already", says);
        Assert.Equal(2, exit);
        Assert.Equal("3", Entries(shop));
    }

    [Fact]
    public void A_folder_that_was_changed_is_not_copied()
    {
        using var shop = new GroupFolder("changed", store);
        File.WriteAllBytes(Picture, TinyPicture.WithPlace);
        Assert.Equal(1, Migrate(shop).Exit);
        File.WriteAllBytes(Picture, TinyPicture.Plain);
        Sql("ledger.db", "UPDATE entries SET \"By\" = 'Bram Okello' WHERE \"Seq\" = 2");
        var (exit, says) = Migrate(shop);
        Assert.Contains("bench-2", says);
        Assert.Equal(1, exit);
        Sql("ledger.db", "UPDATE entries SET \"By\" = 'Ines Tallow' WHERE \"Seq\" = 2");
        Sql("door.db", "UPDATE event SET says = 'Odo Fenn closed the door.'");
        (exit, says) = Migrate(shop);
        Assert.Contains("Event 1 of the door", says);
        Assert.Equal(1, exit);
        Assert.Equal("0", Entries(shop));
    }

    [Fact]
    public void A_folder_of_a_server_by_itself_is_not_served_beside_the_store()
    {
        var listening = new Listening("http://127.0.0.1:0", 0, null);
        Assert.Contains(
            "has ledger.db, which a server by itself writes",
            GroupStart.Refusal(new(data.Path), listening, false)
        );
        using var shop = new GroupFolder("beside", store);
        Assert.Null(GroupStart.Refusal(new(shop.Files), listening, false));
        Assert.Contains("--demo", GroupStart.Refusal(new(shop.Files), listening, true));
        Assert.Contains("certificate", GroupStart.Refusal(new(shop.Files), listening with { Https = 5443 }, false));
    }

    [Fact]
    public void Registers_of_an_older_program_are_copied_and_found_as_those_of_this_one()
    {
        using var shop = new GroupFolder("older", store);
        Sql("machines.db", "UPDATE machine_find SET keys = 'A'");
        Sql("machines.db", "PRAGMA user_version = 1", 0);
        Sql("campaigns.db", "DROP TABLE withdrawn; PRAGMA user_version = 1", 0);
        Assert.Equal(0, Migrate(shop).Exit);
        using var opened = GroupShop.Open(shop.Connection, TimeProvider.System);
        Assert.Equal("m1", Assert.Single(opened.Register.Find("fell 640")!.Machines).Machine.Id);
        Assert.NotEmpty(opened.Campaigns.Lists());
        Assert.Empty(opened.Campaigns.WithdrawnSoFar());
    }

    private void Registers()
    {
        MachineRegister
            .Open(data.Path)
            .Import(
                [
                    new(
                        1,
                        new(
                            "m1",
                            null,
                            null,
                            "HL 1",
                            "Tarnmoor",
                            "Fell 640",
                            2024,
                            null,
                            new(new(2026, 3, 1), 11840.5),
                            new("Ada Brook", "")
                        ),
                        null,
                        ""
                    ),
                ],
                _ => { }
            );
        DemoShop.FirstCampaigns(new(data.Path), AppContext.BaseDirectory, TimeProvider.System);
        Assert.NotNull(
            CampaignStore.Open(data.Path).Withdraw("tw-31", "x", "Ines Tallow", DateTimeOffset.UnixEpoch).Done
        );
    }

    private static string Text(object all) => JsonSerializer.Serialize(all);

    private (int Exit, string Says) Migrate(GroupFolder shop)
    {
        var says = new StringWriter();
        var exit = MigrateCommand.Run(data.Path, () => GroupFile.Read(shop.Group), says, says);
        return (exit, says.ToString());
    }

    private string? Entries(GroupFolder shop) => store.Value($"SELECT count(*) FROM shop_{shop.Shop}.entries");

    private void In(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(data.Path, name))!);
        File.WriteAllText(Path.Combine(data.Path, name), text);
    }

    private void Sql(string file, string sql, int changes = 1)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(data.Path, file)};Pooling=false");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        Assert.Equal(changes, command.ExecuteNonQuery());
    }

    // without what SQLite itself lays beside a file for whoever reads it
    private List<string> Hashes() =>
        [
            .. Directory
                .GetFiles(data.Path, "*", SearchOption.AllDirectories)
                .Where(f => !f.EndsWith("-shm", StringComparison.Ordinal))
                .Where(f => !f.EndsWith("-wal", StringComparison.Ordinal) || new FileInfo(f).Length > 0)
                .Order(StringComparer.Ordinal)
                .Select(f => $"{f} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))}"),
        ];
}
