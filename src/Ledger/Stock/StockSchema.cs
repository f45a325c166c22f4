using Microsoft.Data.Sqlite;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Ledger.Stock;

/// <summary>
/// The tables of <c>stock.db</c>. SQLite's own <c>user_version</c> counts the steps that were taken; a file of an older program takes
/// the steps that it lacks, all in one transaction. Moves are only ever added; amounts are decimal text, so that nothing is rounded.
/// </summary>
internal static class StockSchema
{
    private static readonly string[] Steps =
    [
        """
            CREATE TABLE move (
                row INTEGER PRIMARY KEY AUTOINCREMENT,
                id TEXT NOT NULL UNIQUE,
                kind TEXT NOT NULL,
                item TEXT NOT NULL,
                size TEXT,
                batch TEXT,
                amount TEXT NOT NULL,
                person TEXT NOT NULL,
                at TEXT NOT NULL,
                job TEXT,
                why TEXT
            );
            """,
    ];

    /// <summary>Takes the steps that the file lacks.</summary>
    /// <exception cref="LedgerUnavailable">A newer program made the file.</exception>
    public static void BringUpToDate(SqliteConnection connection)
    {
        Demand(CampaignSchema.Version(connection));
        using var transaction = connection.BeginTransaction();
        for (var version = CampaignSchema.Version(connection); version < Steps.Length; version++)
            CampaignSchema.Run(connection, $"{Steps[version]} PRAGMA user_version = {version + 1};");
        transaction.Commit();
    }

    /// <exception cref="LedgerUnavailable">The file is newer than this program.</exception>
    public static void Demand(int version)
    {
        if (version > Steps.Length)
            throw new LedgerUnavailable(
                $"The stock was kept by a newer Witnessmark (form {version}, this one knows up to {Steps.Length}). Use that one."
            );
    }
}
