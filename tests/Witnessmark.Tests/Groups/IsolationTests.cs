using System.Net;
using System.Net.Http.Json;
using Npgsql;
using Witnessmark.Tests.Photographs;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; what keeps shops apart, tried by somebody who has the password of another shop's servers.
[Collection(StoreCollection.Name)]
public sealed class IsolationTests(StoreFixture fixture)
{
    private const string NoRights = PostgresErrorCodes.InsufficientPrivilege;
    private readonly Postgres store = fixture.Store;

    [Fact]
    public async Task No_server_gives_out_what_another_shop_has()
    {
        using var north = new GroupFolder("asked_north", store);
        using var south = new GroupFolder("asked_south", store);
        using var ours = north.Serve();
        using var theirs = south.Serve();
        var entry = Notes.Next("bench", 1, null);
        using (var taken = await theirs.Post(entry))
            Assert.True(taken.IsSuccessStatusCode);
        using (
            var put = await theirs.Client.PutAsync(
                $"/api/photographs/{TinyPicture.Sha256}",
                new ByteArrayContent(TinyPicture.Plain),
                TestContext.Current.CancellationToken
            )
        )
            Assert.Equal(HttpStatusCode.Created, put.StatusCode);
        Assert.Equal([entry.Id], await theirs.Ids());
        await OfRegisters(south, ours, theirs);

        Assert.Empty(await ours.Ids());
        foreach (
            var path in new[]
            {
                $"/api/photographs/{TinyPicture.Sha256}",
                "/api/jobs/412/handover.pdf",
                "/api/jobs/412/estimate.pdf",
                "/api/jobs/412/label.pdf",
                "/api/jobs/412/record.html",
                "/api/jobs/412/log-book.json",
            }
        )
        {
            using var answer = await ours.Client.GetAsync(path, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
        using (var same = await ours.Post(Notes.Next("bench", 1, null))) // the same id, in another shop
            Assert.True(same.IsSuccessStatusCode);
        Assert.Equal([entry.Id], await ours.Ids());
        Assert.Equal([entry.Id], await theirs.Ids());
        Assert.NotEqual(
            (await ours.Get("/api/entries")).GetProperty("ledger").GetString(),
            (await theirs.Get("/api/entries")).GetProperty("ledger").GetString()
        );
    }

    private static async Task OfRegisters(GroupFolder south, RunningShop ours, RunningShop theirs)
    {
        const string found = "/api/machines?find=fell";
        const string campaigns = "/api/campaigns?make=Tarnmoor&model=Fell%20640&year=2024";
        var list = south.In("machines.csv");
        await File.WriteAllTextAsync(list, "id,name,plate\nm1,Fell 640,HL 1\n");
        Assert.Equal(0, GroupFolder.Run("machines", "import", list, "--group", south.Group).Exit);
        Assert.Equal(0, GroupFolder.Run("campaigns", "import", Campaigns, "--group", south.Group).Exit);
        using (
            var set = await theirs.Client.PutAsJsonAsync("/api/sheets/fell-640/figures/chain.slack", Figures.Slack(4))
        )
            Assert.Equal(HttpStatusCode.OK, set.StatusCode);
        Assert.Equal(1, (await theirs.Get(found)).GetProperty("machines").GetArrayLength());
        Assert.Equal(0, (await ours.Get(found)).GetProperty("machines").GetArrayLength());
        using (var one = await ours.Client.GetAsync("/api/machines/m1"))
            Assert.Equal(HttpStatusCode.NotFound, one.StatusCode);
        using (var forget = await ours.Client.DeleteAsync("/api/machines/m1/owner"))
            Assert.Equal(HttpStatusCode.NotFound, forget.StatusCode);
        Assert.True((await theirs.Get(campaigns)).GetProperty("lookedUp").GetBoolean());
        Assert.False((await ours.Get(campaigns)).GetProperty("lookedUp").GetBoolean());
        Assert.Contains(Figures.SlackPrinted, await theirs.Client.GetStringAsync("/api/workbench"));
        Assert.DoesNotContain(Figures.SlackPrinted, await ours.Client.GetStringAsync("/api/workbench"));
    }

    private static readonly string Campaigns = Path.Combine(
        AppContext.BaseDirectory,
        "demo",
        "campaigns",
        "recalls.tsv"
    );

    [Fact]
    public void Whoever_has_the_password_of_one_shop_gets_at_no_table_of_another()
    {
        using var north = new GroupFolder("locked_north", store);
        using var south = new GroupFolder("locked_south", store);
        Add("locked_south");
        foreach (var table in Tables("locked_south"))
        {
            Assert.Equal(NoRights, Refusal(north, $"SELECT * FROM shop_locked_south.{table}"));
            Assert.Equal(NoRights, Refusal(north, $"DELETE FROM shop_locked_south.{table}"));
            Assert.Equal(NoRights, Refusal(north, $"SELECT * FROM witnessmark.{table}"));
        }
        Assert.Equal(NoRights, Refusal(north, "SET ROLE witnessmark_locked_south"));
        Assert.Equal(NoRights, Refusal(north, "ALTER TABLE turn DISABLE ROW LEVEL SECURITY"));
        Assert.Equal(NoRights, Refusal(north, "UPDATE entries SET \"By\" = 'Bram Okello'")); // not even its own
        Assert.Equal(NoRights, Refusal(north, "DELETE FROM event"));
        Assert.Equal(NoRights, Refusal(north, "UPDATE sheet_revision SET body = ''"));
    }

    [Fact]
    public void The_second_line_holds_when_the_first_is_gone()
    {
        using var north = new GroupFolder("second_north", store);
        using var south = new GroupFolder("second_south", store);
        Add("second_south");
        store.Sql(
            "GRANT USAGE ON SCHEMA shop_second_south TO witnessmark_second_north;"
                + "GRANT ALL ON ALL TABLES IN SCHEMA shop_second_south TO witnessmark_second_north;"
                + "GRANT ALL ON ALL TABLES IN SCHEMA witnessmark TO witnessmark_second_north"
        );
        foreach (var table in Tables("second_south"))
        {
            Assert.Equal("1", store.Value($"SELECT count(*) FROM shop_second_south.{table}"));
            Assert.Equal(0L, Answer(north, $"SELECT count(*) FROM shop_second_south.{table}"));
            Assert.Equal(
                0L,
                Answer(north, $"SELECT count(*) FROM witnessmark.{table} WHERE of_shop <> 'second_north'")
            );
            Assert.Equal(
                0L,
                Answer(
                    north,
                    $"WITH gone AS (DELETE FROM shop_second_south.{table} RETURNING 1) SELECT count(*) FROM gone"
                )
            );
            Assert.Equal(
                0L,
                Answer(
                    north,
                    $"WITH changed AS (UPDATE witnessmark.{table} SET of_shop = of_shop RETURNING 1) SELECT count(*) FROM changed"
                )
            );
        }
        Assert.Equal(NoRights, Refusal(north, "INSERT INTO shop_second_south.closed (row, at) VALUES (2, 1)"));
        Assert.Equal(
            NoRights,
            Refusal(north, "INSERT INTO witnessmark.closed (of_shop, row, at) VALUES ('second_south', 2, 1)")
        );

        store.Sql("ALTER TABLE shop_second_south.closed DISABLE ROW LEVEL SECURITY"); // the trying itself, tried
        Assert.Equal(1L, Answer(north, "SELECT count(*) FROM shop_second_south.closed"));
    }

    [Fact]
    public void Every_table_has_the_second_line_in_the_whole_and_in_each_part()
    {
        using var north = new GroupFolder("lined_north", store);
        Assert.Equal(
            "0",
            store.Value(
                "SELECT count(*) FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace WHERE c.relkind IN ('r', 'p') AND c.relname <> 'form' "
                    + "AND (n.nspname = 'witnessmark' OR n.nspname = 'shop_lined_north') AND NOT (c.relrowsecurity AND c.relforcerowsecurity)"
            )
        );
        Assert.Equal(
            Tables("lined_north").Count.ToString(System.Globalization.CultureInfo.InvariantCulture),
            store.Value("SELECT count(*) FROM pg_policies WHERE schemaname = 'shop_lined_north'")
        );
    }

    // a row in each table, whatever is in it
    private void Add(string shop)
    {
        foreach (var table in Tables(shop))
        {
            var columns = Column(
                $"SELECT column_name || ' ' || data_type FROM information_schema.columns WHERE table_schema = 'shop_{shop}' AND table_name = '{table}' AND column_name <> 'of_shop'"
            );
            var names = string.Join(", ", columns.Select(c => $"\"{c.Split(' ')[0]}\""));
            store.Sql(
                $"INSERT INTO shop_{shop}.{table} ({names}) VALUES ({string.Join(", ", columns.Select(c => c.EndsWith("bigint", StringComparison.Ordinal) || c.EndsWith("precision", StringComparison.Ordinal) ? "1" : "'x'"))})"
            );
        }
    }

    private List<string> Tables(string shop)
    {
        var tables = Column($"SELECT tablename FROM pg_tables WHERE schemaname = 'shop_{shop}'");
        Assert.InRange(tables.Count, 15, 40);
        return tables;
    }

    private List<string> Column(string sql)
    {
        using var connection = new NpgsqlConnection(store.Admin);
        connection.Open();
        using var command = new NpgsqlCommand(sql, connection);
        using var row = command.ExecuteReader();
        List<string> all = [];
        while (row.Read())
            all.Add(row.GetString(0));
        return all;
    }

    private static object? Answer(GroupFolder shop, string sql)
    {
        using var connection = new NpgsqlConnection(
            $"{shop.Connection};Search Path=shop_{shop.Shop};No Reset On Close=true"
        );
        connection.Open();
        using var command = new NpgsqlCommand(sql, connection);
        return command.ExecuteScalar();
    }

    private static string Refusal(GroupFolder shop, string sql) =>
        Assert.Throws<PostgresException>(() => Answer(shop, sql)).SqlState;
}
