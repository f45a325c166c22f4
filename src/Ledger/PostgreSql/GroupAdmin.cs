using System.Data.Common;
using System.Security.Cryptography;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>What only whoever keeps the store may do: adding a shop, bringing the tables up to date.</summary>
public static class GroupAdmin
{
    private const int PasswordBytes = 32;
    private const int SaltBytes = 16;

    /// <summary>What to do with a store that an older program made.</summary>
    public const string HowToUpgrade = "Bring it up to date: witnessmark group upgrade.";

    /// <summary>Makes what the store of an older program lacks, in one transaction; false when it lacks nothing. What is in it stays as it is.</summary>
    /// <exception cref="LedgerUnavailable">A newer program made it, there is none, or it cannot be used.</exception>
    /// <exception cref="FormatException">The text is no connection.</exception>
    public static bool Upgrade(string connection)
    {
        try
        {
            using var source = GroupConnection.OfAdmin(connection);
            using var store = source.OpenConnection();
            using var transaction = store.BeginTransaction();
            store.Run("LOCK TABLE witnessmark.form IN ACCESS EXCLUSIVE MODE"); // another may be at it
            var form = FormOf(store);
            if (form > GroupSchema.Form)
                throw new LedgerUnavailable(
                    $"The store has tables of form {form}; this Witnessmark knows {GroupSchema.Form}. Use the newer one that made it."
                );
            if (form < RegisterTables.Since)
                store.Run(GroupSchema.FromFormOne(Shops(store)));
            transaction.Commit();
            return form < GroupSchema.Form;
        }
        catch (DbException broken)
        {
            throw new LedgerUnavailable($"Nothing was changed: {broken.GetBaseException().Message}", broken);
        }
    }

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
            if (FormOf(store) < GroupSchema.Form)
                throw new LedgerUnavailable($"The store was made by an older Witnessmark. {HowToUpgrade}");
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

    private static int FormOf(NpgsqlConnection store) =>
        store.Rows("SELECT number FROM witnessmark.form", row => row.GetInt32(0)).Single();

    private static IReadOnlyList<ShopName> Shops(NpgsqlConnection store) =>
        store.Rows(
            "SELECT rolname FROM pg_roles JOIN pg_namespace ON nspname = 'shop_' || substr(rolname, length('witnessmark_') + 1) WHERE rolname LIKE 'witnessmark\\_%' ORDER BY rolname",
            row => ShopName.OfRole(row.GetString(0))
        );

    private static bool Has(NpgsqlConnection store, string schema) =>
        store.Rows("SELECT 1 FROM pg_namespace WHERE nspname = $1", row => row.GetInt32(0), schema).Count > 0;

    private static string Kept(string password) => ScramSecret.Of(password, RandomNumberGenerator.GetBytes(SaltBytes));

    private static string OfShop(string connection, ShopName shop, string password) =>
        new NpgsqlConnectionStringBuilder(connection) { Username = shop.Role, Password = password }.ConnectionString;
}
