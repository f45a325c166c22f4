using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// The tables of <c>campaigns.db</c>. SQLite's own <c>user_version</c> counts the steps that were taken; a file of an older
/// program takes the steps that it lacks, all in one transaction.
/// </summary>
/// <remarks>
/// Texts stand once: a campaign says the same of many models and years. A concern is one record: its key is campaign (number,
/// component, source), model and year. <c>run</c> is the import that last named it, <c>before</c> what it said before that import.
/// </remarks>
internal static class CampaignSchema
{
    private static readonly string[] Steps =
    [
        """
            CREATE TABLE import (
                run INTEGER PRIMARY KEY,
                source INTEGER NOT NULL,
                file TEXT NOT NULL,
                at TEXT NOT NULL,
                rows INTEGER NOT NULL,
                set_aside INTEGER NOT NULL
            );
            CREATE TABLE model (
                id INTEGER PRIMARY KEY,
                make_key TEXT NOT NULL,
                model_key TEXT NOT NULL,
                make TEXT NOT NULL,
                model TEXT NOT NULL,
                UNIQUE (make_key, model_key)
            );
            CREATE TABLE campaign (
                id INTEGER PRIMARY KEY,
                number TEXT NOT NULL,
                component TEXT NOT NULL,
                source INTEGER NOT NULL,
                UNIQUE (number, component, source)
            );
            CREATE TABLE says (
                id INTEGER PRIMARY KEY,
                digest BLOB NOT NULL UNIQUE,
                maker TEXT NOT NULL,
                makers_number TEXT NOT NULL,
                built_from TEXT,
                built_to TEXT,
                recorded TEXT,
                affected INTEGER,
                defect TEXT NOT NULL,
                consequence TEXT NOT NULL,
                remedy TEXT NOT NULL,
                notes TEXT NOT NULL,
                do_not_ride INTEGER,
                park_outside INTEGER,
                vins TEXT NOT NULL
            );
            CREATE TABLE concern (
                model INTEGER NOT NULL REFERENCES model,
                year INTEGER NOT NULL,
                campaign INTEGER NOT NULL REFERENCES campaign,
                says INTEGER NOT NULL REFERENCES says,
                run INTEGER NOT NULL REFERENCES import,
                before INTEGER,
                PRIMARY KEY (model, year, campaign)
            ) WITHOUT ROWID;
            """,
    ];

    /// <summary>What stands in the column for a year that is not known: a key cannot be null.</summary>
    public const int UnknownYear = 0;

    /// <summary>The version that this program writes.</summary>
    public static int Newest => Steps.Length;

    /// <summary>Takes the steps that the file lacks.</summary>
    /// <exception cref="LedgerUnavailable">A newer program made the file.</exception>
    public static void BringUpToDate(SqliteConnection connection)
    {
        var version = Version(connection);
        Demand(version);
        if (version == Newest)
            return;
        using var transaction = connection.BeginTransaction();
        for (version = Version(connection); version < Newest; version++)
            Run(connection, $"{Steps[version]} PRAGMA user_version = {version + 1};");
        transaction.Commit();
    }

    /// <exception cref="LedgerUnavailable">The file is newer than this program.</exception>
    public static void Demand(int version)
    {
        if (version > Newest)
            throw new LedgerUnavailable(
                $"The campaigns were kept by a newer Witnessmark (form {version}, this one knows up to {Newest}). Use that one."
            );
    }

    public static int Version(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA user_version";
        return Convert.ToInt32(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture);
    }

    public static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
