using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Machines;

/// <summary>What was found, on the command line and over HTTP alike.</summary>
/// <param name="Find">The text that was looked for.</param>
/// <param name="More">Whether there are more than these.</param>
/// <param name="Machines">The machines.</param>
internal sealed record FoundAnswer(string Find, bool More, IReadOnlyList<MachineLine> Machines)
{
    /// <summary>What is wrong with a text that is too short.</summary>
    public static string TooShort(string? find) => $"find: \"{find}\"; at least 3 letters or digits are needed.";

    /// <summary>Looks in the register of a shop, null when it has none; null when the text is too short.</summary>
    public static FoundAnswer? Of(string find, MachineRegister? register)
    {
        if (register is null)
            return new(find, false, []);
        return register.Find(find) is { } found
            ? new(find, found.More, [.. found.Machines.Select(MachineLine.Of)])
            : null;
    }
}

/// <summary>One machine in a list.</summary>
internal sealed record MachineLine(
    string Id,
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Owner,
    DistanceOnDay? LastDistance
)
{
    public static MachineLine Of(FoundMachine found)
    {
        var m = found.Machine;
        DistanceOnDay? last = m.Distances.Count > 0 ? m.Distances[^1] : null;
        return new(m.Id, m.Vin, m.Frame, m.Plate, m.Make, m.Name, m.Year, found.Owner?.Name, last);
    }
}

/// <summary>One machine with all that is on record.</summary>
internal sealed record MachineAnswer(
    string Id,
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Sheet,
    MachineOwner? Owner,
    IReadOnlyList<DistanceLine> Distances,
    IReadOnlyList<string> Jobs
)
{
    public static MachineAnswer Of(FoundMachine found, IReadOnlyList<string> jobs)
    {
        var m = found.Machine;
        var distances = DistanceHistory.Of(m.Distances).Select(DistanceLine.Of);
        return new(m.Id, m.Vin, m.Frame, m.Plate, m.Make, m.Name, m.Year, m.Sheet, found.Owner, [.. distances], jobs);
    }
}

/// <summary>One distance of the history.</summary>
internal sealed record DistanceLine(DateOnly Day, double Kilometres, int? DaysSince, string? Mark, string? Why)
{
    public static DistanceLine Of(DistanceSeen seen) =>
        new(
            seen.Distance.Day,
            seen.Distance.Kilometres,
            seen.DaysSince,
            seen.Mark switch
            {
                DistanceMark.Gap => "gap",
                DistanceMark.WentBack => "went-back",
                _ => null,
            },
            seen.Why
        );
}
