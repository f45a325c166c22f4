using System.Data.Common;
using System.Globalization;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>Writes the rows of one import: each machine once. What a row does not say stays as it is.</summary>
internal sealed class RegisterWriter(DbConnection connection) : IDisposable
{
    private readonly Dictionary<string, long> lines = new(StringComparer.Ordinal);

    private readonly Prepared find = Prepared.On(
        connection,
        "SELECT row, vin, frame, plate, make, name, year, sheet FROM machine WHERE id = $1",
        1
    );
    private readonly Prepared idOfVin = Prepared.On(connection, "SELECT id FROM machine WHERE vin = $1", 1);
    private readonly Prepared add = Prepared.On(
        connection,
        "INSERT INTO machine (id, vin, frame, plate, make, name, year, sheet) VALUES ($1, $2, $3, $4, $5, $6, $7, $8) RETURNING row",
        8
    );
    private readonly Prepared change = Prepared.On(
        connection,
        "UPDATE machine SET vin = $2, frame = $3, plate = $4, make = $5, name = $6, year = $7, sheet = $8 WHERE row = $1",
        8
    );
    private readonly Prepared addDistance = Prepared.On(
        connection,
        "INSERT INTO distance (machine, day, km) VALUES ($1, $2, $3) ON CONFLICT (machine, day, km) DO NOTHING",
        3
    );
    private readonly Prepared ownerOf = Prepared.On(
        connection,
        "SELECT name, contact FROM owner WHERE machine = $1",
        1
    );
    private readonly Prepared setOwner = Prepared.On(
        connection,
        "INSERT INTO owner (machine, name, contact) VALUES ($1, $2, $3) ON CONFLICT (machine) DO UPDATE SET name = excluded.name, contact = excluded.contact",
        3
    );
    private readonly FindIndex machines = new(connection, "machine_find");
    private readonly FindIndex owners = new(connection, "owner_find");

    public ImportedRow Write(RowToImport given)
    {
        if (given.Row is not { } row)
            return Aside(given, "", given.Why!);
        if (!lines.TryAdd(row.Id, given.Line))
            return Aside(given, row.Id, $"id: \"{row.Id}\" stands on line {lines[row.Id]} too");
        if (row.Vin is { } vin && IdOf(vin) is { } other && other != row.Id)
            return Aside(given, row.Id, $"vin: \"{vin}\" is the number of \"{other}\" too");
        var (key, before) = Find(row.Id);
        var after = Merged(row, before);
        var outcome = before is null ? RowOutcome.Taken : RowOutcome.Same;
        if (key is null)
            key = add.Number([row.Id, .. Columns(after)]);
        else if (after != before)
        {
            outcome = RowOutcome.Updated;
            change.Change([key, .. Columns(after)]);
        }
        if (after != before)
            machines.Put(key!.Value, before is not null, after.FoundBy(row.Id));
        if (Distance(key!.Value, row.Distance) | Owner(key.Value, row.Owner) && outcome == RowOutcome.Same)
            outcome = RowOutcome.Updated;
        return new(given.Line, row.Id, outcome, null, given.Raw);
    }

    /// <summary>Writes what still waits.</summary>
    public void Finish()
    {
        machines.Write();
        owners.Write();
    }

    public void Dispose()
    {
        foreach (
            var part in (IDisposable[])[find, idOfVin, add, change, addDistance, ownerOf, setOwner, machines, owners]
        )
            part.Dispose();
    }

    private static ImportedRow Aside(RowToImport given, string id, string why) =>
        new(given.Line, id, RowOutcome.SetAside, why, given.Raw);

    private string? IdOf(string vin)
    {
        using var found = idOfVin.Rows(vin);
        return found.Read() ? found.GetString(0) : null;
    }

    private (long? Key, Says? Says) Find(string id)
    {
        using var found = find.Rows(id);
        if (!found.Read())
            return (null, null);
        string? Text(int column) => found.IsDBNull(column) ? null : found.GetString(column);
        int? year = found.IsDBNull(6) ? null : found.GetInt32(6);
        return (found.GetInt64(0), new(Text(1), Text(2), Text(3), Text(4), Text(5)!, year, Text(7)));
    }

    private static Says Merged(RegisterRow row, Says? before) =>
        new(
            row.Vin ?? before?.Vin,
            row.Frame ?? before?.Frame,
            row.Plate ?? before?.Plate,
            row.Make ?? before?.Make,
            row.Name,
            row.Year ?? before?.Year,
            row.Sheet ?? before?.Sheet
        );

    private static object?[] Columns(Says s) => [s.Vin, s.Frame, s.Plate, s.Make, s.Name, s.Year, s.Sheet];

    private bool Distance(long key, DistanceOnDay? distance) =>
        distance is { } seen
        && addDistance.Change(key, seen.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), seen.Kilometres) > 0;

    private bool Owner(long key, MachineOwner? owner)
    {
        var before = owner is null ? null : OwnerOf(key);
        if (owner is null || owner == before)
            return false;
        setOwner.Change(key, owner.Name, owner.Contact);
        owners.Put(key, before is not null, [owner.Name, owner.Contact]);
        return true;
    }

    private MachineOwner? OwnerOf(long key)
    {
        using var found = ownerOf.Rows(key);
        return found.Read() ? new(found.GetString(0), found.GetString(1)) : null;
    }

    private sealed record Says(
        string? Vin,
        string? Frame,
        string? Plate,
        string? Make,
        string Name,
        int? Year,
        string? Sheet
    )
    {
        public IEnumerable<string?> FoundBy(string id) =>
            RegisterFinding.OfMachine(id, Vin, Frame, Plate, Make, Name, Year);
    }
}
