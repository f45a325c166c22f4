using System.Data.Common;
using System.Globalization;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>Each row by itself, as a file in the same process takes it fastest.</summary>
internal sealed class RegisterStatements(DbConnection connection) : RegisterRows
{
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

    public override string? IdOf(string vin)
    {
        using var found = idOfVin.Rows(vin);
        return found.Read() ? found.GetString(0) : null;
    }

    public override (long Key, MachineSays Says)? Find(string id)
    {
        using var found = find.Rows(id);
        if (!found.Read())
            return null;
        string? Text(int column) => found.IsDBNull(column) ? null : found.GetString(column);
        int? year = found.IsDBNull(6) ? null : found.GetInt32(6);
        return (found.GetInt64(0), new(Text(1), Text(2), Text(3), Text(4), Text(5)!, year, Text(7)));
    }

    public override long Add(string id, MachineSays says)
    {
        var key = add.Number([id, .. Columns(says)])!.Value;
        machines.Put(key, false, says.FoundBy(id));
        return key;
    }

    public override void Change(long key, string id, MachineSays says)
    {
        change.Change([key, .. Columns(says)]);
        machines.Put(key, true, says.FoundBy(id));
    }

    public override bool Add(long key, DistanceOnDay distance) =>
        addDistance.Change(key, distance.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), distance.Kilometres)
        > 0;

    public override MachineOwner? OwnerOf(long key)
    {
        using var found = ownerOf.Rows(key);
        return found.Read() ? new(found.GetString(0), found.GetString(1)) : null;
    }

    public override void Change(long key, MachineOwner? before, MachineOwner owner)
    {
        setOwner.Change(key, owner.Name, owner.Contact);
        owners.Put(key, before is not null, [owner.Name, owner.Contact]);
    }

    public override void Finish()
    {
        machines.Write();
        owners.Write();
    }

    public override void Dispose()
    {
        foreach (
            var part in (IDisposable[])[find, idOfVin, add, change, addDistance, ownerOf, setOwner, machines, owners]
        )
            part.Dispose();
    }

    private static object?[] Columns(MachineSays s) => [s.Vin, s.Frame, s.Plate, s.Make, s.Name, s.Year, s.Sheet];
}
