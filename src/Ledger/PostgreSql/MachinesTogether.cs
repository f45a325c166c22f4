using System.Data.Common;
using System.Globalization;
using Npgsql;
using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>Many machines of the store in one statement.</summary>
internal sealed class MachinesTogether(NpgsqlConnection store)
{
    private const string Day = "yyyy-MM-dd";

    /// <summary>Those of these names that are there.</summary>
    public IReadOnlyList<MetMachine> Machines(string[] ids) =>
        store.Rows(
            """
            SELECT m.id, m.row, m.vin, m.frame, m.plate, m.make, m.name, m.year, m.sheet, o.name, o.contact
            FROM machine m LEFT JOIN owner o ON o.machine = m.row WHERE m.id = ANY($1)
            """,
            MachineOf,
            (object)ids
        );

    /// <summary>Who has these numbers.</summary>
    public IReadOnlyList<(string Vin, string Id)> Numbers(string[] vins) =>
        store.Rows(
            "SELECT vin, id FROM machine WHERE vin = ANY($1)",
            row => (row.GetString(0), row.GetString(1)),
            (object)vins
        );

    /// <summary>Which distances of these rows are there.</summary>
    public IReadOnlyList<(string Id, DistanceOnDay Distance)> Distances(RegisterRow[] rows) =>
        store.Rows(
            """
            SELECT m.id, d.day, d.km FROM unnest($1::text[], $2::text[], $3::double precision[]) AS asked (id, day, km)
            JOIN machine m ON m.id = asked.id JOIN distance d ON (d.machine, d.day, d.km) = (m.row, asked.day, asked.km)
            """,
            row =>
                (
                    row.GetString(0),
                    new DistanceOnDay(
                        DateOnly.ParseExact(row.GetString(1), Day, CultureInfo.InvariantCulture),
                        row.GetDouble(2)
                    )
                ),
            rows.Select(r => r.Id).ToArray(),
            rows.Select(r => Text(r.Distance!.Value)).ToArray(),
            rows.Select(r => r.Distance!.Value.Kilometres).ToArray()
        );

    /// <summary>Writes what became of them.</summary>
    public void Write(IReadOnlyList<MetMachine> machines)
    {
        MetMachine[] changed = [.. machines.Where(m => m.IsChanged)];
        MetMachine[] added = [.. machines.Where(m => m.IsNew)];
        MetMachine[] owned = [.. machines.Where(m => m.HasNewOwner)];
        MetMachine[] ridden = [.. machines.Where(m => m.Distance is not null)];
        Change(changed);
        Add(added);
        if (ridden.Length > 0)
            AddDistances(ridden);
        if (owned.Length > 0)
            ChangeOwners(owned);
        Index("machine_find", [.. changed], [.. changed, .. added], m => m.Says.FoundBy(m.Id));
        Index("owner_find", [.. owned.Where(m => m.HadOwner)], owned, m => [m.Owner!.Name, m.Owner.Contact]);
    }

    // first without their numbers: two of them may have changed theirs for one another's
    private void Change(MetMachine[] machines)
    {
        if (machines.Length == 0)
            return;
        store.Change("UPDATE machine SET vin = NULL WHERE row = ANY($1)", Rows(machines));
        store.Change(
            """
            UPDATE machine SET vin = s.vin, frame = s.frame, plate = s.plate, make = s.make, name = s.name, year = s.year, sheet = s.sheet
            FROM unnest($1::bigint[], $2::text[], $3::text[], $4::text[], $5::text[], $6::text[], $7::bigint[], $8::text[])
                AS s (row, vin, frame, plate, make, name, year, sheet)
            WHERE machine.row = s.row
            """,
            [Rows(machines), .. Columns(machines)]
        );
    }

    // numbered in the order in which they stand in the list
    private void Add(MetMachine[] machines)
    {
        if (machines.Length == 0)
            return;
        var numbered = store
            .Rows(
                """
                INSERT INTO machine (id, vin, frame, plate, make, name, year, sheet)
                SELECT s.id, s.vin, s.frame, s.plate, s.make, s.name, s.year, s.sheet
                FROM unnest($1::text[], $2::text[], $3::text[], $4::text[], $5::text[], $6::text[], $7::bigint[], $8::text[])
                    WITH ORDINALITY AS s (id, vin, frame, plate, make, name, year, sheet, place)
                ORDER BY s.place RETURNING id, row
                """,
                row => (Id: row.GetString(0), Row: row.GetInt64(1)),
                [machines.Select(m => m.Id).ToArray(), .. Columns(machines)]
            )
            .ToDictionary(n => n.Id, n => n.Row, StringComparer.Ordinal);
        foreach (var machine in machines)
            machine.Row = numbered[machine.Id];
    }

    private void AddDistances(MetMachine[] machines) =>
        store.Change(
            """
            INSERT INTO distance (machine, day, km) SELECT * FROM unnest($1::bigint[], $2::text[], $3::double precision[])
            ON CONFLICT (machine, day, km) DO NOTHING
            """,
            Rows(machines),
            machines.Select(m => Text(m.Distance!.Value)).ToArray(),
            machines.Select(m => m.Distance!.Value.Kilometres).ToArray()
        );

    private void ChangeOwners(MetMachine[] machines) =>
        store.Change(
            """
            INSERT INTO owner (machine, name, contact) SELECT * FROM unnest($1::bigint[], $2::text[], $3::text[])
            ON CONFLICT (machine) DO UPDATE SET name = excluded.name, contact = excluded.contact
            """,
            Rows(machines),
            machines.Select(m => m.Owner!.Name).ToArray(),
            machines.Select(m => m.Owner!.Contact).ToArray()
        );

    private void Index(
        string table,
        MetMachine[] before,
        MetMachine[] after,
        Func<MetMachine, IEnumerable<string?>> foundBy
    )
    {
        if (before.Length > 0)
            store.Change($"DELETE FROM {table} WHERE rowid = ANY($1)", Rows(before));
        if (after.Length > 0)
            store.Change(
                $"INSERT INTO {table} (rowid, keys) SELECT * FROM unnest($1::bigint[], $2::text[])",
                Rows(after),
                after.Select(m => FindKey.Of(foundBy(m))).ToArray()
            );
    }

    private static MetMachine MachineOf(DbDataReader row)
    {
        string? Text(int column) => row.IsDBNull(column) ? null : row.GetString(column);
        int? year = row.IsDBNull(7) ? null : row.GetInt32(7);
        return new(
            row.GetString(0),
            row.GetInt64(1),
            new(Text(2), Text(3), Text(4), Text(5), Text(6)!, year, Text(8)),
            row.IsDBNull(9) ? null : new(row.GetString(9), row.GetString(10))
        );
    }

    private static long[] Rows(MetMachine[] machines) => [.. machines.Select(m => m.Row!.Value)];

    private static object[] Columns(MetMachine[] machines) =>
        [
            machines.Select(m => m.Says.Vin).ToArray(),
            machines.Select(m => m.Says.Frame).ToArray(),
            machines.Select(m => m.Says.Plate).ToArray(),
            machines.Select(m => m.Says.Make).ToArray(),
            machines.Select(m => m.Says.Name).ToArray(),
            machines.Select(m => (long?)m.Says.Year).ToArray(),
            machines.Select(m => m.Says.Sheet).ToArray(),
        ];

    private static string Text(DistanceOnDay distance) => distance.Day.ToString(Day, CultureInfo.InvariantCulture);
}
