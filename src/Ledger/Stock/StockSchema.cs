using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Stock;

/// <summary>
/// The tables of <c>stock.db</c>. Moves are only ever added; amounts are decimal text, so that nothing is rounded.
/// </summary>
internal static class StockSchema
{
    public static readonly SchemaSteps Steps = new(
        "The moves of the stock",
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
        """
    );
}
