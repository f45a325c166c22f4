using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>What the register says of a machine, but for its name in it.</summary>
internal sealed record MachineSays(
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Sheet
)
{
    /// <summary>What a row says; what it does not say stays as it was before.</summary>
    public static MachineSays Of(RegisterRow row, MachineSays? before) =>
        new(
            row.Vin ?? before?.Vin,
            row.Frame ?? before?.Frame,
            row.Plate ?? before?.Plate,
            row.Make ?? before?.Make,
            row.Name,
            row.Year ?? before?.Year,
            row.Sheet ?? before?.Sheet
        );

    /// <summary>What a find looks in.</summary>
    public IEnumerable<string?> FoundBy(string id) =>
        RegisterFinding.OfMachine(id, Vin, Frame, Plate, Make, Name, Year);
}
