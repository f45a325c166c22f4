using System.Globalization;
using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>Reads the register.</summary>
internal static class RegisterLookup
{
    /// <summary>How many machines with a word are looked through for one too short for the index.</summary>
    private const int MostLookedThrough = 2000;

    /// <summary>
    /// Machines with the whole text inside, then those with all its words; those found by themselves before those found by their
    /// owner.
    /// </summary>
    public static FoundMachines Find(SqliteConnection connection, FindText text, int most)
    {
        List<long> rows = [];
        var more = false;
        Look(Quoted(text.Whole), []);
        if (text.HasWords)
            Look(string.Join(" AND ", text.Words.Select(Quoted)), text.Short);
        return new([.. rows.Take(most).Select(r => Machine(connection, "row", r)!)], more || rows.Count > most);

        void Look(string match, IReadOnlyList<string> also)
        {
            foreach (var table in (string[])["machine_find", "owner_find"])
                if (rows.Count <= most)
                {
                    var (found, cut) = Rows(connection, table, match, also, most + 1);
                    rows.AddRange(found.Except(rows).ToArray());
                    more |= cut;
                }
        }
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

    private static (List<long> Rows, bool Cut) Rows(
        SqliteConnection connection,
        string table,
        string match,
        IReadOnlyList<string> also,
        int most
    )
    {
        var limit = also.Count == 0 ? most : MostLookedThrough;
        using var command = connection.CreateCommand();
        command.CommandText = $"SELECT rowid, keys FROM {table} WHERE {table} MATCH $match LIMIT $limit";
        command.Parameters.AddWithValue("$match", match);
        command.Parameters.AddWithValue("$limit", limit);
        using var row = command.ExecuteReader();
        List<long> rows = [];
        var looked = 0;
        for (; rows.Count < most && row.Read(); looked++)
            if (also.All(w => row.GetString(1).Contains(w, StringComparison.Ordinal)))
                rows.Add(row.GetInt64(0));
        return (rows, also.Count > 0 && looked == limit);
    }

    // letters and digits only: no quote can end it early
    private static string Quoted(string key) => $"\"{key}\"";

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
