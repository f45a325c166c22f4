using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using Witnessmark.Ledger.Sqlite;
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

    public MigrateTests(StoreFixture fixture)
    {
        store = fixture.Store;
        using var shop = RunningShop.Serve(data.Path);
        foreach (var entry in Notes.Chain(3))
            shop.Post(entry).GetAwaiter().GetResult().Dispose();
        shop.Post(Notes.Next("other", 4, new string('0', 64))).GetAwaiter().GetResult().Dispose(); // waits
        using var picture = new ByteArrayContent(TinyPicture.Plain);
        shop.Client.PutAsync($"/api/photographs/{TinyPicture.Sha256}", picture).GetAwaiter().GetResult().Dispose();
        shop.Client.GetAsync("/api/jobs/412/log-book.json").GetAwaiter().GetResult().Dispose(); // makes the key
        Directory.CreateDirectory(Path.Combine(data.Path, "log-books"));
        File.WriteAllText(Path.Combine(data.Path, "log-books", "0123.json"), "{}");
        using var desk = new HttpDevice(shop, "d-desk");
        desk.Close("Ines Tallow", ClosedShop.Passphrase).GetAwaiter().GetResult().Dispose();
    }

    public void Dispose() => data.Dispose();

    [Fact]
    public async Task A_folder_is_copied_whole_and_left_as_it_was()
    {
        using var shop = new GroupFolder("moved", store);
        var ledger = SqliteLedger.Open(data.Path, TimeProvider.System);
        SqliteConnection.ClearAllPools();
        var before = Hashes(data.Path);
        var key = GroupFolder.Run("key", "show", "--data", data.Path);
        var (exit, says) = Migrate(shop, "--without", "campaigns");
        Assert.Equal(0, exit);
        Assert.StartsWith("Copied and checked: 4 entries in 1 jobs, 1 set aside, 1 photographs.", says);
        Assert.Equal(before, Hashes(data.Path));

        Assert.Equal(key, GroupFolder.Run("key", "show", "--group", shop.Group));
        Assert.Equal((0, "Intact: 4 entries in 1 jobs; 1 set aside."), GroupFolder.Run("verify", "--group", shop.Group));
        using var server = shop.Serve();
        using var desk = new HttpDevice(server, "d-other");
        Assert.Equal(System.Net.HttpStatusCode.Unauthorized, (await server.Client.GetAsync("/api/entries", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Contains("Ines Tallow closed the door.", GroupFolder.Run("door", "book", "--data", shop.Files, "--group", shop.Group).Says);
        Assert.Equal(ledger.Id, store.Value("SELECT \"Id\" FROM shop_moved.ledger_identity"));

        Assert.Equal("0123 {}", store.Value("SELECT name || ' ' || book FROM shop_moved.log_book"));

        // and goes on numbering where it stood
        using var opened = Ledger.PostgreSql.GroupShop.Open(shop.Connection, TimeProvider.System);
        opened.Ledger.Accept(new("x", 1, [JsonSerializer.Deserialize<JsonElement>("{}")]));
        Assert.Equal([1, 2], opened.Ledger.SetAside().Select(a => a.Number));
    }

    [Fact]
    public void What_cannot_be_copied_is_said_and_nothing_is_copied()
    {
        using var shop = new GroupFolder("refused", store);
        var (exit, says) = Migrate(shop);
        Assert.Contains("has what the store has no place for yet: campaigns.", says);
        Assert.Equal(2, exit);
        Assert.Equal("0", store.Value("SELECT count(*) FROM shop_refused.entries"));
        Assert.Equal(0, Migrate(shop, "--without", "campaigns").Exit);
        (exit, says) = Migrate(shop, "--without", "campaigns");
        Assert.Contains("The store has rows of the shop \"refused\" already", says);
        Assert.Equal(2, exit);
        Assert.Equal("4", store.Value("SELECT count(*) FROM shop_refused.entries"));
    }

    [Fact]
    public void A_folder_that_was_changed_is_not_copied()
    {
        using var shop = new GroupFolder("changed", store);
        using (var connection = new SqliteConnection($"Data Source={Path.Combine(data.Path, "ledger.db")};Pooling=false"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "UPDATE entries SET \"By\" = 'Bram Okello' WHERE \"Seq\" = 2";
            Assert.Equal(1, command.ExecuteNonQuery());
        }
        var (exit, says) = Migrate(shop, "--without", "campaigns");
        Assert.Contains("bench-2", says);
        Assert.Equal(1, exit);
        Assert.Equal("0", store.Value("SELECT count(*) FROM shop_changed.entries"));
    }

    [Fact]
    public void A_picture_that_is_another_than_its_name_says_is_not_copied()
    {
        using var shop = new GroupFolder("pictured", store);
        File.WriteAllBytes(Path.Combine(data.Path, "photographs", $"{TinyPicture.Sha256}.jpg"), TinyPicture.WithPlace);
        Assert.Equal(1, Migrate(shop, "--without", "campaigns").Exit);
        Assert.Equal("0", store.Value("SELECT count(*) FROM shop_pictured.entries"));
    }

    [Fact]
    public void A_folder_that_is_served_is_not_copied()
    {
        using var shop = new GroupFolder("served", store);
        using var server = RunningShop.Serve(data.Path);
        var (exit, says) = Migrate(shop, "--without", "campaigns");
        Assert.Contains("is being served", says);
        Assert.Equal(2, exit);
    }

    [Fact]
    public void A_folder_of_a_server_by_itself_is_not_served_beside_the_store()
    {
        using var shop = new GroupFolder("beside", store);
        var (exit, says) = GroupFolder.Run("serve", "--port", "0", "--data", data.Path, "--group", shop.Group);
        Assert.Contains("has ledger.db, which a server by itself writes", says);
        Assert.Equal(2, exit);
    }

    private (int Exit, string Says) Migrate(GroupFolder shop, params string[] more) =>
        GroupFolder.Run(["migrate", "--to", "postgres", "--data", data.Path, "--group", shop.Group, .. more]);

    // without what SQLite itself lays beside a file for whoever reads it
    private static List<string> Hashes(string folder) =>
        [
            .. Directory
                .GetFiles(folder, "*", SearchOption.AllDirectories)
                .Where(f => !f.EndsWith("-shm", StringComparison.Ordinal) && !(f.EndsWith("-wal", StringComparison.Ordinal) && new FileInfo(f).Length == 0))
                .Order(StringComparer.Ordinal)
                .Select(f => $"{f} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(f)))}"),
        ];
}
