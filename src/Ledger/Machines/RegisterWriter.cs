using System.Data.Common;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>Writes the rows of one import: each machine once. What a row does not say stays as it is.</summary>
internal sealed class RegisterWriter(DbConnection connection) : IDisposable
{
    /// <summary>So many rows are looked ahead.</summary>
    public const int Ahead = 4096;

    private readonly Dictionary<string, long> lines = new(StringComparer.Ordinal);
    private readonly RegisterRows register = RegisterRows.On(connection);

    /// <summary>These come next, one after the other.</summary>
    public void Expect(IEnumerable<RowToImport> given) =>
        register.Expect([.. given.Select(g => g.Row).OfType<RegisterRow>()]);

    public ImportedRow Write(RowToImport given)
    {
        if (given.Row is not { } row)
            return Aside(given, "", given.Why!);
        if (!lines.TryAdd(row.Id, given.Line))
            return Aside(given, row.Id, $"id: \"{row.Id}\" stands on line {lines[row.Id]} too");
        if (row.Vin is { } vin && register.IdOf(vin) is { } other && other != row.Id)
            return Aside(given, row.Id, $"vin: \"{vin}\" is the number of \"{other}\" too");
        var (key, outcome) = Machine(row);
        var more = row.Distance is { } seen && register.Add(key, seen);
        more |= Owner(key, row.Owner);
        return new(
            given.Line,
            row.Id,
            more && outcome == RowOutcome.Same ? RowOutcome.Updated : outcome,
            null,
            given.Raw
        );
    }

    /// <summary>Writes what still waits.</summary>
    public void Finish() => register.Finish();

    public void Dispose() => register.Dispose();

    private static ImportedRow Aside(RowToImport given, string id, string why) =>
        new(given.Line, id, RowOutcome.SetAside, why, given.Raw);

    private (long Key, RowOutcome Outcome) Machine(RegisterRow row)
    {
        if (register.Find(row.Id) is not var (key, before))
            return (register.Add(row.Id, MachineSays.Of(row, null)), RowOutcome.Taken);
        var after = MachineSays.Of(row, before);
        if (after == before)
            return (key, RowOutcome.Same);
        register.Change(key, row.Id, after);
        return (key, RowOutcome.Updated);
    }

    private bool Owner(long key, MachineOwner? owner)
    {
        var before = owner is null ? null : register.OwnerOf(key);
        if (owner is null || owner == before)
            return false;
        register.Change(key, before, owner);
        return true;
    }
}
