using Witnessmark.Groups;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; a store that an older program made goes on with all that is in it.
public sealed class UpgradeTests : IDisposable
{
    private static readonly string[] New =
    [
        "machine",
        "distance",
        "owner",
        "machine_find",
        "owner_find",
        "import",
        "model",
        "campaign",
        "says",
        "concern",
        "withdrawn",
        "sheet_revision",
    ];

    private readonly Postgres store = Postgres.Started();

    public void Dispose() => store.Dispose();

    [Fact]
    public void A_store_of_form_1_gets_what_it_lacks_and_keeps_what_it_has()
    {
        using var north = new GroupFolder("north", store);
        using var south = new GroupFolder("south", store);
        using (var before = GroupShop.Open(north.Connection, TimeProvider.System))
            before.Ledger.Accept(new("bench", 1, [Bench.Record.EntryJson.Write(Notes.Next("bench", 1, null))]));
        var tables = Tables();
        foreach (var table in New)
            store.Sql($"DROP TABLE witnessmark.{table} CASCADE");
        store.Sql("UPDATE witnessmark.form SET number = 1");
        Assert.NotEqual(tables, Tables());

        Assert.Contains(
            "witnessmark group upgrade",
            Assert.Throws<LedgerUnavailable>(() => GroupShop.Open(north.Connection, TimeProvider.System)).Message
        );
        Assert.Contains(
            "witnessmark group upgrade",
            Assert.Throws<LedgerUnavailable>(() => GroupAdmin.Add(store.Admin, ShopName.Of("west"))).Message
        );
        new GroupFile(store.Admin, null).Write(north.In("admin.json"));
        Assert.Equal(
            (0, "The store is up to date now. Start the servers of its shops anew, with this program."),
            GroupFolder.Run("group", "upgrade", "--group", north.In("admin.json"))
        );
        Assert.Equal(
            (0, "The store is up to date already."),
            GroupFolder.Run("group", "upgrade", "--group", north.In("admin.json"))
        );
        Assert.Equal(tables, Tables());
        using (var after = GroupShop.Open(north.Connection, TimeProvider.System))
        {
            Assert.Equal(1, after.Ledger.Head());
            Assert.True(after.Register.IsEmpty);
        }
        using var other = GroupShop.Open(south.Connection, TimeProvider.System);
        Assert.Empty(other.Campaigns.Lists());
        Assert.Equal(0, other.Sheets.Last());
        store.Sql("UPDATE witnessmark.form SET number = 3");
        Assert.Contains(
            "Use the newer one",
            Assert.Throws<LedgerUnavailable>(() => GroupAdmin.Upgrade(store.Admin)).Message
        );
    }

    // with their columns, rights, indices and policies
    private string? Tables() =>
        store.Value(
            """
            SELECT string_agg(line, E'\n' ORDER BY line) FROM (
                SELECT table_schema || '.' || table_name || '.' || column_name || ' ' || data_type || ' ' || coalesce(column_default, '') AS line
                    FROM information_schema.columns WHERE table_schema = 'witnessmark' OR table_schema LIKE 'shop%'
                UNION ALL SELECT table_schema || '.' || table_name || ' ' || grantee || ' ' || privilege_type
                    FROM information_schema.role_table_grants WHERE table_schema = 'witnessmark' OR table_schema LIKE 'shop%'
                UNION ALL SELECT indexdef FROM pg_indexes WHERE schemaname LIKE 'shop%'
                UNION ALL SELECT schemaname || '.' || tablename || ' ' || policyname FROM pg_policies) t
            """
        );
}
