using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// The tables of <c>campaigns.db</c>.
/// </summary>
/// <remarks>
/// Texts stand once: a campaign says the same of many models and years. A concern is one record: its key is campaign (number,
/// component, source), model and year. <c>run</c> is the import that last named it, <c>before</c> what it said before that import.
/// </remarks>
internal static class CampaignSchema
{
    public static readonly SchemaSteps Steps = new(
        "The campaigns",
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
        // run is the newest import at that time: what a later one names stands again
        """
        CREATE TABLE withdrawn (
            number TEXT NOT NULL,
            because TEXT NOT NULL,
            by TEXT NOT NULL,
            at TEXT NOT NULL,
            records INTEGER NOT NULL,
            run INTEGER NOT NULL REFERENCES import
        );
        """
    );

    /// <summary>What stands in the column for a year that is not known: a key cannot be null.</summary>
    public const int UnknownYear = 0;
}
