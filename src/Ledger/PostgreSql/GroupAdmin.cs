using System.Data.Common;
using System.Security.Cryptography;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>What only whoever keeps the store may do: adding a shop.</summary>
public static class GroupAdmin
{
    private const int PasswordBytes = 32;
    private const int SaltBytes = 16;

    /// <summary>Adds a shop with nothing in it, in one transaction; the connection text of its servers.</summary>
    /// <exception cref="LedgerUnavailable">The shop is there already, or the store cannot be used.</exception>
    /// <exception cref="FormatException">The text is no connection.</exception>
    public static string Add(string connection, ShopName shop)
    {
        try
        {
            using var source = GroupConnection.OfAdmin(connection);
            var password = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(PasswordBytes));
            using var store = source.OpenConnection();
            using var transaction = store.BeginTransaction();
            if (!Has(store, "witnessmark"))
                store.Run(GroupSchema.Whole);
            if (Has(store, shop.Schema))
                throw new LedgerUnavailable($"The store has a shop \"{shop}\" already.");
            store.Run($"CREATE ROLE {shop.Role} LOGIN PASSWORD '{Kept(password)}'");
            store.Run(GroupSchema.Part(shop));
            transaction.Commit();
            return OfShop(connection, shop, password);
        }
        catch (DbException broken)
        {
            throw new LedgerUnavailable(
                $"The shop \"{shop}\" was not added: {broken.GetBaseException().Message}",
                broken
            );
        }
    }

    private static bool Has(NpgsqlConnection store, string schema) =>
        store.Rows("SELECT 1 FROM pg_namespace WHERE nspname = $1", row => row.GetInt32(0), schema).Count > 0;

    private static string Kept(string password) => ScramSecret.Of(password, RandomNumberGenerator.GetBytes(SaltBytes));

    private static string OfShop(string connection, ShopName shop, string password) =>
        new NpgsqlConnectionStringBuilder(connection) { Username = shop.Role, Password = password }.ConnectionString;
}
