using System.Data.Common;
using System.Globalization;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// Campaigns of the shop's own lists that were taken back. A record stands again once an import after the withdrawal names it, so
/// that a withdrawal can never silence what a list says later.
/// </summary>
internal static class Withdrawals
{
    private const string RecordsOfSource = """
        SELECT c.number, max(k.run), count(*), i.file, i.at, i.rows, i.set_aside,
            k.run = (SELECT max(run) FROM import n WHERE n.source = i.source AND n.file = i.file)
        FROM concern k JOIN campaign c ON c.id = k.campaign JOIN import i ON i.run = k.run
        WHERE c.source = $1 GROUP BY c.number, k.run, i.source, i.file, i.at, i.rows, i.set_aside ORDER BY c.number
        """;

    /// <summary>All of them, the first one first.</summary>
    public static IReadOnlyList<(Withdrawn Withdrawn, long Run)> All(DbConnection connection) =>
        connection.Rows(
            "SELECT number, because, by, at, records, run FROM withdrawn ORDER BY at, number",
            row =>
                (
                    new Withdrawn(
                        row.GetString(0),
                        row.GetString(1),
                        row.GetString(2),
                        row.GetString(3),
                        row.GetInt32(4)
                    ),
                    row.GetInt64(5)
                )
        );

    /// <summary>Up to which import each number is withdrawn.</summary>
    public static IReadOnlyDictionary<string, long> UpTo(DbConnection connection) =>
        All(connection).GroupBy(w => NameKey.Of(w.Withdrawn.Number)).ToDictionary(g => g.Key, g => g.Max(w => w.Run));

    /// <summary>Takes a campaign back, or says why there is none to take back.</summary>
    public static WithdrawOutcome Take(
        DbConnection connection,
        string number,
        string because,
        string by,
        DateTimeOffset at
    )
    {
        var withdrawn = UpTo(connection);
        var standing = Records(connection, CampaignSource.Own)
            .Where(r => withdrawn.GetValueOrDefault(NameKey.Of(r.Number)) < r.Run)
            .ToList();
        var meant = standing.Where(r => NameKey.Of(r.Number) == NameKey.Of(number)).ToList();
        if (meant.Count == 0)
            return new(
                null,
                [],
                [.. standing.Select(r => r.Number).Distinct()],
                Records(connection, CampaignSource.Public).Any(r => NameKey.Of(r.Number) == NameKey.Of(number))
            );
        var record = new Withdrawn(
            meant[0].Number,
            because,
            by,
            at.UtcDateTime.ToString("O", CultureInfo.InvariantCulture),
            meant.Sum(r => r.Count)
        );
        Keep(connection, record);
        return new(record, [.. meant.Where(r => r.IsNewest).Select(r => r.List).DistinctBy(l => l.File)], [], false);
    }

    private static void Keep(DbConnection connection, Withdrawn record) =>
        connection.Change(
            """
            INSERT INTO withdrawn (number, because, by, at, records, run)
            VALUES ($1, $2, $3, $4, $5, (SELECT max(run) FROM import))
            """,
            record.Number,
            record.Because,
            record.By,
            record.At,
            record.Records
        );

    private static IReadOnlyList<Record> Records(DbConnection connection, CampaignSource source) =>
        connection.Rows(
            RecordsOfSource,
            row => new Record(
                row.GetString(0),
                row.GetInt64(1),
                row.GetInt32(2),
                new(source, row.GetString(3), row.GetString(4), row.GetInt64(5), row.GetInt64(6)),
                row.GetBoolean(7)
            ),
            (int)source
        );

    /// <summary>The records of one number that one import was the last to name.</summary>
    private sealed record Record(string Number, long Run, int Count, ImportedList List, bool IsNewest);
}
