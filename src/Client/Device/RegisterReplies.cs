using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Visits;

namespace Witnessmark.Client.Device;

/// <summary>What the shop's register found.</summary>
/// <param name="More">Whether there are more than these.</param>
internal sealed record FoundReply(bool More, IReadOnlyList<FoundMachine> Machines);

/// <summary>A machine of the register in a list.</summary>
internal sealed record FoundMachine(
    string Id,
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Owner
);

/// <summary>A machine of the register with all that is on record.</summary>
internal sealed record MachineReply(
    string Id,
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Sheet,
    MachineOwner? Owner,
    IReadOnlyList<DistanceReply> Distances
)
{
    public IEnumerable<DistanceOnDay> OnRecord => Distances.Select(d => new DistanceOnDay(d.Day, d.Kilometres));

    /// <summary>The machine as a job takes it over. What only the shop's file says of it (figure sheet, how it is built) comes from there.</summary>
    /// <param name="own">The machine of the shop's file with the same id or VIN, or null.</param>
    public Machine Machine(Machine? own)
    {
        DistanceReply? last = Distances.Count > 0 ? Distances[^1] : null;
        return new(
            Id,
            Name,
            Vin ?? own?.Vin ?? "",
            Year ?? own?.Year,
            Sheet ?? own?.Sheet ?? "",
            last?.Kilometres ?? own?.LastDistanceKilometres,
            last?.Day ?? own?.LastDistanceOn,
            own?.Traits,
            Make ?? own?.Make,
            Frame,
            Plate
        );
    }
}

/// <summary>What the odometer showed on a day.</summary>
internal sealed record DistanceReply(DateOnly Day, double Kilometres);

/// <summary>How fast a point wears on other machines of the same figure sheet.</summary>
/// <param name="Machines">How many show it; with fewer than three there is neither rate nor deviation.</param>
internal sealed record FleetReply(int Machines, double? Rate, double? Deviation)
{
    public FleetRate? Known => Rate is { } rate && Deviation is { } deviation ? new(Machines, rate, deviation) : null;
}
