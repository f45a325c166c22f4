using System.Data.Common;
using System.Globalization;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>One import within its transaction, with its line in the list of imports.</summary>
internal static class CampaignImport
{
    public static ImportTotals Run(
        DbConnection connection,
        CampaignSource source,
        string name,
        DateTimeOffset at,
        Func<CampaignWriter, ImportTotals> write
    )
    {
        using var begin = Prepared.On(
            connection,
            "INSERT INTO import (source, file, at, rows, set_aside) VALUES ($1, $2, $3, 0, 0) RETURNING run",
            3
        );
        var run = begin.Number((int)source, name, at.UtcDateTime.ToString("O", CultureInfo.InvariantCulture));
        using var writer = CampaignWriter.On(connection, run!.Value);
        var totals = write(writer);
        connection.Change(
            "UPDATE import SET rows = $2, set_aside = $3 WHERE run = $1",
            run,
            totals.Rows,
            totals.SetAside
        );
        return totals;
    }
}
