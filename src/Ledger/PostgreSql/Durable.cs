using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>What a store must do with a commit before it says that it is done. Looked at on every connection: after the standby took over it is another server's word.</summary>
/// <remarks><b>Source.</b> PostgreSQL 15 documentation, 20.5 Write Ahead Log: without <c>fsync</c> or <c>full_page_writes</c> a power cut can leave the store beyond
/// repair; only <c>on</c> and <c>remote_apply</c> wait until the standby has a commit on its disk.</remarks>
internal static class Durable
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["fsync"] = ["on"],
        ["full_page_writes"] = ["on"],
        ["synchronous_commit"] = ["on", "remote_apply"],
    };

    /// <exception cref="LedgerUnavailable">It does not keep that promise.</exception>
    public static void Demand(NpgsqlConnection connection)
    {
        foreach (var (name, setting) in Settings(connection))
            if (!Allowed[name].Contains(setting))
                throw new LedgerUnavailable(
                    $"The store at {connection.Host} has {name} = {setting}, with which acknowledged entries can be lost; {string.Join(" or ", Allowed[name])} is allowed."
                );
        if (FormOf(connection) is var form && form != GroupSchema.Form)
            throw new LedgerUnavailable(
                $"The store at {connection.Host} has tables of form {form}; this Witnessmark knows {GroupSchema.Form}. "
                    + (form < GroupSchema.Form ? GroupAdmin.HowToUpgrade : "Use the newer one that made it.")
            );
    }

    private static IReadOnlyList<(string Name, string Setting)> Settings(NpgsqlConnection connection) =>
        connection.Rows(
            "SELECT name, setting FROM pg_settings WHERE name IN ('fsync', 'full_page_writes', 'synchronous_commit')",
            row => (row.GetString(0), row.GetString(1))
        );

    private static int FormOf(NpgsqlConnection connection) =>
        connection.Rows("SELECT number FROM witnessmark.form", row => row.GetInt32(0)).Single();
}
