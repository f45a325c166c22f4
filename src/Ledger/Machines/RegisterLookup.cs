using System.Data.Common;
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
    public static FoundMachines Find(DbConnection connection, FindText text, int most)
    {
        List<long> rows = [];
        var more = false;
        Look([text.Whole], []);
        if (text.HasWords)
            Look(text.Words, text.Short);
        return new([.. rows.Take(most).Select(r => Machine(connection, "row", r)!)], more || rows.Count > most);

        void Look(IReadOnlyList<string> words, IReadOnlyList<string> also)
        {
            foreach (var table in (string[])["machine_find", "owner_find"])
                if (rows.Count <= most)
                {
                    var (found, cut) = Rows(connection, table, words, also, most + 1);
                    rows.AddRange(found.Except(rows).ToArray());
                    more |= cut;
                }
        }
    }

    /// <summary>Whether there is any.</summary>
    public static bool HasAny(DbConnection connection) =>
        connection.Rows("SELECT 1 FROM machine LIMIT 1", row => row.GetInt64(0)).Count > 0;

    /// <summary>A machine by one column, or null.</summary>
    public static FoundMachine? Machine(DbConnection connection, string column, object value) =>
        connection
            .Rows(
                $"""
                SELECT m.row, m.id, m.vin, m.frame, m.plate, m.make, m.name, m.year, m.sheet, o.name, o.contact
                FROM machine m LEFT JOIN owner o ON o.machine = m.row WHERE m.{column} = $1
                """,
                Kept,
                value
            )
            .Select(m => new FoundMachine(m.Machine with { Distances = Distances(connection, m.Row) }, m.Owner))
            .SingleOrDefault();

    private static (long Row, RegisterMachine Machine, MachineOwner? Owner) Kept(DbDataReader row)
    {
        string? Text(int at) => row.IsDBNull(at) ? null : row.GetString(at);
        return (
            row.GetInt64(0),
            new(
                row.GetString(1),
                Text(2),
                Text(3),
                Text(4),
                Text(5),
                row.GetString(6),
                row.IsDBNull(7) ? null : row.GetInt32(7),
                Text(8),
                []
            ),
            Text(9) is { } owner ? new(owner, row.GetString(10)) : null
        );
    }

    private static (List<long> Rows, bool Cut) Rows(
        DbConnection connection,
        string table,
        IReadOnlyList<string> words,
        IReadOnlyList<string> also,
        int most
    )
    {
        var limit = also.Count == 0 ? most : MostLookedThrough;
        using var command = connection.CreateCommand();
        command.CommandText = connection is SqliteConnection ? Indexed(table) : Scanned(table, words.Count);
        object[] values =
            connection is SqliteConnection ? [string.Join(" AND ", words.Select(Quoted)), limit] : [limit, .. words];
        command.With(values);
        using var row = command.ExecuteReader();
        List<long> rows = [];
        var looked = 0;
        for (; rows.Count < most && row.Read(); looked++)
            if (also.All(w => row.GetString(1).Contains(w, StringComparison.Ordinal)))
                rows.Add(row.GetInt64(0));
        return (rows, also.Count > 0 && looked == limit);
    }

    private static string Indexed(string table) => $"SELECT rowid, keys FROM {table} WHERE {table} MATCH $1 LIMIT $2";

    // PostgreSQL by itself has no such index: all of the shop's machines are looked through
    private static string Scanned(string table, int words) =>
        $"SELECT rowid, keys FROM {table} WHERE {string.Join(" AND ", Enumerable.Range(2, words).Select(i => $"strpos(keys, ${i}) > 0"))} ORDER BY rowid LIMIT $1";

    // letters and digits only: no quote can end it early
    private static string Quoted(string key) => $"\"{key}\"";

    private static IReadOnlyList<DistanceOnDay> Distances(DbConnection connection, long machine) =>
        connection.Rows(
            "SELECT day, km FROM distance WHERE machine = $1 ORDER BY day, km",
            row => new DistanceOnDay(
                DateOnly.ParseExact(row.GetString(0), "yyyy-MM-dd", CultureInfo.InvariantCulture),
                row.GetDouble(1)
            ),
            machine
        );
}
