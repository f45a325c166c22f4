using System.Globalization;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Campaigns;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>Reads the store.</summary>
internal static class CampaignLookup
{
    public static IReadOnlyList<ImportedList> Lists(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = """
            SELECT source, file, at, rows, set_aside FROM import
            WHERE run IN (SELECT max(run) FROM import GROUP BY source, file) ORDER BY source, file
            """;
        using var row = command.ExecuteReader();
        List<ImportedList> lists = [];
        while (row.Read())
            lists.Add(
                new(
                    (CampaignSource)row.GetInt32(0),
                    row.GetString(1),
                    row.GetString(2),
                    row.GetInt64(3),
                    row.GetInt64(4)
                )
            );
        return lists;
    }

    /// <summary>Records of a machine that stand, and those of withdrawn campaigns.</summary>
    public static (IReadOnlyList<Campaign> Standing, IReadOnlyList<Campaign> Withdrawn) Of(
        SqliteConnection connection,
        AskedMachine machine
    )
    {
        var withdrawn = Withdrawals.UpTo(connection);
        using var command = connection.CreateCommand();
        command.CommandText = """
            SELECT c.source, c.number, m.make, m.model, k.year, c.component, s.maker, s.makers_number, s.built_from, s.built_to,
                s.recorded, s.affected, s.defect, s.consequence, s.remedy, s.notes, s.do_not_ride, s.park_outside, s.vins, k.run
            FROM model m JOIN concern k ON k.model = m.id JOIN campaign c ON c.id = k.campaign JOIN says s ON s.id = k.says
            WHERE m.make_key = $make AND m.model_key IN ($model, '') AND ($year IS NULL OR k.year IN ($year, 0))
            """;
        command.Parameters.AddWithValue("$make", NameKey.Of(machine.Make));
        command.Parameters.AddWithValue("$model", NameKey.Of(machine.Model));
        command.Parameters.AddWithValue("$year", (object?)machine.Year ?? DBNull.Value);
        using var row = command.ExecuteReader();
        List<(Campaign Campaign, long Run)> campaigns = [];
        while (row.Read())
            campaigns.Add((Campaign(row), row.GetInt64(19)));
        var stands = campaigns.ToLookup(c =>
            c.Campaign.Source == CampaignSource.Public
            || withdrawn.GetValueOrDefault(NameKey.Of(c.Campaign.Number)) < c.Run
        );
        return ([.. stands[true].Select(c => c.Campaign)], [.. stands[false].Select(c => c.Campaign)]);
    }

    public static IReadOnlyList<string> Alike(SqliteConnection connection, AskedMachine machine)
    {
        const int most = 20;
        using var command = connection.CreateCommand();
        command.CommandText = """
            SELECT model FROM model
            WHERE make_key = $make AND model_key <> $model AND model_key <> ''
                AND (substr(model_key, 1, length($model)) = $model OR substr($model, 1, length(model_key)) = model_key)
            ORDER BY model_key LIMIT $most
            """;
        command.Parameters.AddWithValue("$make", NameKey.Of(machine.Make));
        command.Parameters.AddWithValue("$model", NameKey.Of(machine.Model));
        command.Parameters.AddWithValue("$most", most);
        using var row = command.ExecuteReader();
        List<string> models = [];
        while (row.Read())
            models.Add(row.GetString(0));
        return models;
    }

    private static Campaign Campaign(SqliteDataReader row) =>
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
                row.IsDBNull(16) ? null : row.GetBoolean(16),
                row.IsDBNull(17) ? null : row.GetBoolean(17),
                row.GetString(18) is { Length: > 0 } vins ? vins.Split('\n') : []
            )
        );

    private static DateOnly? Day(SqliteDataReader row, int column) =>
        row.IsDBNull(column)
            ? null
            : DateOnly.ParseExact(row.GetString(column), "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
