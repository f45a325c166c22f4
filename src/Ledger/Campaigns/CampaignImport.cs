using System.Globalization;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Campaigns;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>One import as one transaction, with its line in the list of imports.</summary>
internal static class CampaignImport
{
    public static ImportTotals Run(
        SqliteConnection connection,
        CampaignSource source,
        string name,
        DateTimeOffset at,
        Func<CampaignWriter, ImportTotals> write
    )
    {
        connection.Run("PRAGMA cache_size = -49152; PRAGMA synchronous = FULL");
        using var transaction = connection.BeginTransaction();
        using var begin = new Prepared(
            connection,
            transaction,
            "INSERT INTO import (source, file, at, rows, set_aside) VALUES ($1, $2, $3, 0, 0) RETURNING run",
            3
        );
        var run = begin.Number((int)source, name, at.UtcDateTime.ToString("O", CultureInfo.InvariantCulture));
        using var writer = new CampaignWriter(connection, transaction, run!.Value);
        var totals = write(writer);
        using var end = new Prepared(
            connection,
            transaction,
            "UPDATE import SET rows = $2, set_aside = $3 WHERE run = $1",
            3
        );
        end.Change(run, totals.Rows, totals.SetAside);
        transaction.Commit();
        return totals;
    }
}
