using System.Globalization;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>Reads the register.</summary>
internal static class RegisterLookup
{
    /// <summary>Machines with the key inside, those found by themselves before those found by their owner.</summary>
    public static FoundMachines Find(SqliteConnection connection, string key, int most)
    {
        List<long> rows = [];
        foreach (var table in (string[])["machine_find", "owner_find"])
            if (rows.Count <= most)
                rows.AddRange(Rows(connection, table, key, most + 1).Except(rows).ToArray());
        return new([.. rows.Take(most).Select(r => Machine(connection, "row", r)!)], rows.Count > most);
    }

    /// <summary>A machine by one column, or null.</summary>
    public static FoundMachine? Machine(SqliteConnection connection, string column, object value)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"""
            SELECT m.row, m.id, m.vin, m.frame, m.plate, m.make, m.name, m.year, m.sheet, o.name, o.contact
            FROM machine m LEFT JOIN owner o ON o.machine = m.row WHERE m.{column} = $value
            """;
        command.Parameters.AddWithValue("$value", value);
        using var row = command.ExecuteReader();
        if (!row.Read())
            return null;
        string? Text(int at) => row.IsDBNull(at) ? null : row.GetString(at);
        return new(
            new(
                row.GetString(1),
                Text(2),
                Text(3),
                Text(4),
                Text(5),
                row.GetString(6),
                row.IsDBNull(7) ? null : row.GetInt32(7),
                Text(8),
                Distances(connection, row.GetInt64(0))
            ),
            Text(9) is { } owner ? new(owner, row.GetString(10)) : null
        );
    }

    private static List<long> Rows(SqliteConnection connection, string table, string key, int most)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT rowid FROM {table} WHERE {table} MATCH $key LIMIT $most";
        command.Parameters.AddWithValue("$key", $"\"{key}\""); // letters and digits only: no quote can end it early
        command.Parameters.AddWithValue("$most", most);
        using var row = command.ExecuteReader();
        List<long> rows = [];
        while (row.Read())
            rows.Add(row.GetInt64(0));
        return rows;
    }

    private static List<DistanceOnDay> Distances(SqliteConnection connection, long machine)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT day, km FROM distance WHERE machine = $machine ORDER BY day, km";
        command.Parameters.AddWithValue("$machine", machine);
        using var row = command.ExecuteReader();
        List<DistanceOnDay> distances = [];
        while (row.Read())
            distances.Add(
                new(DateOnly.ParseExact(row.GetString(0), "yyyy-MM-dd", CultureInfo.InvariantCulture), row.GetDouble(1))
            );
        return distances;
    }
}
