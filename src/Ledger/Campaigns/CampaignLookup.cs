using System.Data.Common;
using System.Globalization;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>Reads the store.</summary>
internal static class CampaignLookup
{
    private const int MostAlike = 20;

    public static IReadOnlyList<ImportedList> Lists(DbConnection connection) =>
        connection.Rows(
            """
            SELECT source, file, at, rows, set_aside FROM import
            WHERE run IN (SELECT max(run) FROM import GROUP BY source, file) ORDER BY source, file
            """,
            row => new ImportedList(
                (CampaignSource)row.GetInt32(0),
                row.GetString(1),
                row.GetString(2),
                row.GetInt64(3),
                row.GetInt64(4)
            )
        );

    /// <summary>Records of a machine that stand, and those of withdrawn campaigns.</summary>
    public static (IReadOnlyList<Campaign> Standing, IReadOnlyList<Campaign> Withdrawn) Of(
        DbConnection connection,
        AskedMachine machine
    )
    {
        var withdrawn = Withdrawals.UpTo(connection);
        var campaigns = connection.Rows(
            """
            SELECT c.source, c.number, m.make, m.model, k.year, c.component, s.maker, s.makers_number, s.built_from, s.built_to,
                s.recorded, s.affected, s.defect, s.consequence, s.remedy, s.notes, s.do_not_ride, s.park_outside, s.vins, k.run
            FROM model m JOIN concern k ON k.model = m.id JOIN campaign c ON c.id = k.campaign JOIN says s ON s.id = k.says
            WHERE m.make_key = $1 AND m.model_key IN ($2, '') AND ($3 < 0 OR k.year IN ($3, 0))
            """,
            row => (Campaign: Campaign(row), Run: row.GetInt64(19)),
            NameKey.Of(machine.Make),
            NameKey.Of(machine.Model),
            (long)(machine.Year ?? AnyYear)
        );
        var stands = campaigns.ToLookup(c =>
            c.Campaign.Source == CampaignSource.Public
            || withdrawn.GetValueOrDefault(NameKey.Of(c.Campaign.Number)) < c.Run
        );
        return ([.. stands[true].Select(c => c.Campaign)], [.. stands[false].Select(c => c.Campaign)]);
    }

    public static IReadOnlyList<string> Alike(DbConnection connection, AskedMachine machine) =>
        connection.Rows(
            """
            SELECT model FROM model
            WHERE make_key = $1 AND model_key <> $2 AND model_key <> ''
                AND (substr(model_key, 1, length($2)) = $2 OR substr($2, 1, length(model_key)) = model_key)
            ORDER BY model_key LIMIT $3
            """,
            row => row.GetString(0),
            NameKey.Of(machine.Make),
            NameKey.Of(machine.Model),
            MostAlike
        );

    private const int AnyYear = -1;

    private static Campaign Campaign(DbDataReader row) =>
        new(
            (CampaignSource)row.GetInt32(0),
            row.GetString(1),
            row.GetString(2),
            row.GetString(3),
            row.GetInt32(4) is var year && year == CampaignSchema.UnknownYear ? null : year,
            row.GetString(5),
            new(
                row.GetString(6),
                row.GetString(7),
                Day(row, 8),
                Day(row, 9),
                Day(row, 10),
                row.IsDBNull(11) ? null : row.GetInt32(11),
                row.GetString(12),
                row.GetString(13),
                row.GetString(14),
                row.GetString(15),
                Yes(row, 16),
                Yes(row, 17),
                row.GetString(18) is { Length: > 0 } vins ? vins.Split('\n') : []
            )
        );

    // a number in both databases
    private static bool? Yes(DbDataReader row, int column) => row.IsDBNull(column) ? null : row.GetInt64(column) != 0;

    private static DateOnly? Day(DbDataReader row, int column) =>
        row.IsDBNull(column)
            ? null
            : DateOnly.ParseExact(row.GetString(column), "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
