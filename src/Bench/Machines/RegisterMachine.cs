namespace Witnessmark.Bench.Machines;

/// <summary>A machine in the shop's register. Its owner is kept apart, so that the record stays whole without.</summary>
/// <param name="Id">Unique in the register.</param>
/// <param name="Vin">17 signs, or null.</param>
/// <param name="Frame">Number on a frame that has no VIN, or null.</param>
/// <param name="Plate">Registration, or null.</param>
/// <param name="Make">Make, or null.</param>
/// <param name="Name">Model, as people call it.</param>
/// <param name="Year">Model year, or null.</param>
/// <param name="Sheet">Id of its figure sheet, or null.</param>
/// <param name="Distances">What its odometer showed, by day.</param>
public sealed record RegisterMachine(
    string Id,
    string? Vin,
    string? Frame,
    string? Plate,
    string? Make,
    string Name,
    int? Year,
    string? Sheet,
    IReadOnlyList<DistanceOnDay> Distances
);

/// <summary>What the odometer showed on a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="Kilometres">Zero or more.</param>
public readonly record struct DistanceOnDay(DateOnly Day, double Kilometres);

/// <summary>Who brings a machine.</summary>
/// <param name="Name">Name.</param>
/// <param name="Contact">Telephone or mail; may be empty.</param>
public sealed record MachineOwner(string Name, string Contact);
