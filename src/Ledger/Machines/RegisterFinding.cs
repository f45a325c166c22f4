using System.Data.Common;

namespace Witnessmark.Ledger.Machines;

/// <summary>What machines of a register are found by, made anew from the register itself.</summary>
internal static class RegisterFinding
{
    /// <summary>Of all machines and owners; there is none yet.</summary>
    public static void MakeAnew(DbConnection connection)
    {
        using var machines = new FindIndex(connection, "machine_find");
        foreach (
            var (row, keys) in connection.Rows(
                "SELECT row, id, vin, frame, plate, make, name, year FROM machine",
                OfMachine
            )
        )
            machines.Put(row, before: false, keys);
        machines.Write();
        using var owners = new FindIndex(connection, "owner_find");
        foreach (var (row, keys) in connection.Rows("SELECT machine, name, contact FROM owner", OfOwner))
            owners.Put(row, before: false, keys);
        owners.Write();
    }

    /// <summary>Make, model and year are one text: people type them in one go.</summary>
    public static IEnumerable<string?> OfMachine(
        string id,
        string? vin,
        string? frame,
        string? plate,
        string? make,
        string name,
        int? year
    ) => [id, vin, frame, plate, $"{make} {name} {year}"];

    private static (long, IEnumerable<string?>) OfMachine(DbDataReader row)
    {
        string? Text(int at) => row.IsDBNull(at) ? null : row.GetString(at);
        int? year = row.IsDBNull(7) ? null : row.GetInt32(7);
        return (
            row.GetInt64(0),
            OfMachine(row.GetString(1), Text(2), Text(3), Text(4), Text(5), row.GetString(6), year)
        );
    }

    private static (long, IEnumerable<string?>) OfOwner(DbDataReader row) =>
        (row.GetInt64(0), [row.GetString(1), row.GetString(2)]);
}
