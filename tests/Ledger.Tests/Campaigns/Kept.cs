using System.Text;
using Microsoft.Data.Sqlite;
using Witnessmark.Ledger.Campaigns;

namespace Witnessmark.Ledger.Tests.Campaigns;

/// <summary>A store of campaigns in a folder that goes away with it.</summary>
internal sealed class Kept : IDisposable
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);

    public string Folder { get; } = Directory.CreateTempSubdirectory("witnessmark-campaigns-").FullName;

    public List<(long Line, string Why, string Text)> Aside { get; } = [];

    public CampaignStore Store => CampaignStore.Open(Folder);

    public ImportTotals Import(params string[] lines) =>
        Import(Encoding.Latin1.GetBytes(string.Concat(lines.Select(l => l + "\n"))));

    public ImportTotals Import(byte[] file, CancellationToken cancel = default, Action<ImportProgress>? progress = null)
    {
        Aside.Clear();
        using var stream = new MemoryStream(file);
        return Store.ImportPublic(
            stream,
            "recalls.txt",
            Noon,
            row => Aside.Add((row.Line, row.Why, Encoding.Latin1.GetString(row.Bytes))),
            progress,
            cancel
        );
    }

    /// <summary>All that the store says, without the numbers that it gives its rows.</summary>
    public IReadOnlyList<string> Dump() =>
        Query(
            """
            SELECT concat_ws('|', c.source, c.number, c.component, m.make_key, m.model_key, m.make, m.model, k.year, hex(s.digest),
                s.maker, s.makers_number, s.built_from, s.built_to, s.recorded, s.affected, s.defect, s.consequence, s.remedy,
                s.notes, s.do_not_ride, s.park_outside, s.vins)
            FROM concern k JOIN model m ON m.id = k.model JOIN campaign c ON c.id = k.campaign JOIN says s ON s.id = k.says
            ORDER BY 1
            """
        );

    public IReadOnlyList<string> Query(string sql)
    {
        using var connection = Connection();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        using var row = command.ExecuteReader();
        List<string> rows = [];
        while (row.Read())
            rows.Add(row.GetString(0));
        return rows;
    }

    public void Sql(string sql)
    {
        using var connection = Connection();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private SqliteConnection Connection()
    {
        var connection = new SqliteConnection(
            $"Data Source={Path.Combine(Folder, CampaignStore.FileName)};Pooling=False"
        );
        connection.Open();
        return connection;
    }
}
