using Microsoft.Data.Sqlite;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Ledger.Machines;

/// <summary>
/// The tables of <c>machines.db</c>. SQLite's own <c>user_version</c> counts the steps that were taken; a file of an older
/// program takes the steps that it lacks, all in one transaction.
/// </summary>
/// <remarks>
/// Owners lie in tables of their own, also for finding, so that they can be taken away. <b>Source.</b> SQLite documentation, FTS5: the
/// trigram tokenizer finds any three signs or more inside a text; <c>secure-delete</c> leaves nothing of a removed row in the index.
/// </remarks>
internal static class RegisterSchema
{
    private static readonly string[] Steps =
    [
        """
            CREATE TABLE machine (
                row INTEGER PRIMARY KEY,
                id TEXT NOT NULL UNIQUE,
                vin TEXT UNIQUE,
                frame TEXT,
                plate TEXT,
                make TEXT,
                name TEXT NOT NULL,
                year INTEGER,
                sheet TEXT
            );
            CREATE TABLE distance (
                machine INTEGER NOT NULL REFERENCES machine,
                day TEXT NOT NULL,
                km REAL NOT NULL,
                PRIMARY KEY (machine, day, km)
            ) WITHOUT ROWID;
            CREATE TABLE owner (
                machine INTEGER PRIMARY KEY REFERENCES machine,
                name TEXT NOT NULL,
                contact TEXT NOT NULL
            );
            CREATE VIRTUAL TABLE machine_find USING fts5(keys, tokenize = 'trigram');
            CREATE VIRTUAL TABLE owner_find USING fts5(keys, tokenize = 'trigram');
            INSERT INTO owner_find(owner_find, rank) VALUES ('secure-delete', 1);
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
                $"The machines were kept by a newer Witnessmark (form {version}, this one knows up to {Steps.Length}). Use that one."
            );
    }
}
