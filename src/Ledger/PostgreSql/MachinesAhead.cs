using Npgsql;
using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>
/// The register over a line: what the next rows of a list can meet is asked for at once, they are decided on here, and what came of them is written a statement for a
/// table. Row by row each machine goes over the line up to ten times.
/// </summary>
internal sealed class MachinesAhead(NpgsqlConnection store) : RegisterRows
{
    private readonly MachinesTogether together = new(store);
    private readonly List<MetMachine> met = [];
    private readonly Dictionary<string, int> byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> idOfVin = new(StringComparer.Ordinal);
    private readonly HashSet<(string Id, DistanceOnDay Distance)> distances = [];

    public override void Expect(IReadOnlyList<RegisterRow> rows)
    {
        Finish();
        foreach (var machine in together.Machines([.. rows.Select(r => r.Id)]))
            Meet(machine);
        foreach (var (vin, id) in together.Numbers([.. rows.Select(r => r.Vin).OfType<string>()]))
            idOfVin[vin] = id;
        distances.UnionWith(together.Distances([.. rows.Where(r => r.Distance is not null)]));
    }

    public override string? IdOf(string vin) => idOfVin.GetValueOrDefault(vin);

    public override (long Key, MachineSays Says)? Find(string id) =>
        byId.TryGetValue(id, out var key) ? (key, met[key].Says) : null;

    public override long Add(string id, MachineSays says)
    {
        Number(says.Vin, id);
        return Meet(new(id, null, says, null));
    }

    public override void Change(long key, string id, MachineSays says)
    {
        var machine = met[(int)key];
        if (machine.Says.Vin is { } vin && vin != says.Vin)
            idOfVin.Remove(vin); // free for another one further down the list
        Number(says.Vin, id);
        machine.Says = says;
    }

    public override bool Add(long key, DistanceOnDay distance)
    {
        var machine = met[(int)key];
        if (!distances.Add((machine.Id, distance)))
            return false;
        machine.Distance = distance;
        return true;
    }

    public override MachineOwner? OwnerOf(long key) => met[(int)key].Owner;

    public override void Change(long key, MachineOwner? before, MachineOwner owner) => met[(int)key].Owner = owner;

    public override void Finish()
    {
        together.Write(met);
        met.Clear();
        byId.Clear();
        idOfVin.Clear();
        distances.Clear();
    }

    public override void Dispose() { }

    private int Meet(MetMachine machine)
    {
        byId[machine.Id] = met.Count;
        met.Add(machine);
        return met.Count - 1;
    }

    private void Number(string? vin, string id)
    {
        if (vin is not null)
            idOfVin[vin] = id;
    }
}
