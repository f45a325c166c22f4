using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Tests.Groups;

// Source: PostgreSQL 15 documentation, 20.5 Write Ahead Log: what each setting gives up.
[Collection(StoreCollection.Name)]
public sealed class DurableTests(StoreFixture fixture)
{
    private readonly Postgres store = fixture.Store;

    [Theory]
    [InlineData("fsync", "off")]
    [InlineData("full_page_writes", "off")]
    [InlineData("synchronous_commit", "off")]
    [InlineData("synchronous_commit", "local")]
    [InlineData("synchronous_commit", "remote_write")]
    public void A_store_that_promises_less_is_not_served(string setting, string to)
    {
        using var shop = new GroupFolder($"less_{setting}_{to}", store);
        try
        {
            Set($"ALTER SYSTEM SET {setting} = {to}", setting, to);
            var refused = Assert.Throws<LedgerUnavailable>(() =>
                GroupShop.Open(shop.Connection, TimeProvider.System).Dispose()
            );
            Assert.Contains($"{setting} = {to}, with which acknowledged entries can be lost", refused.Message);
        }
        finally
        {
            Set($"ALTER SYSTEM RESET {setting}", setting, "on");
        }
        GroupShop.Open(shop.Connection, TimeProvider.System).Dispose();
    }

    private void Set(string sql, string setting, string to)
    {
        store.Sql(sql);
        store.Sql("SELECT pg_reload_conf()");
        Postgres.Until(() => store.Value($"SELECT current_setting('{setting}')") == to);
    }
}
