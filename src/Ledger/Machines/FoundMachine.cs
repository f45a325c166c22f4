using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>A machine of the register with the one who brings it.</summary>
/// <param name="Machine">The record.</param>
/// <param name="Owner">Null when nobody is on record.</param>
public sealed record FoundMachine(RegisterMachine Machine, MachineOwner? Owner);

/// <summary>What was found.</summary>
/// <param name="Machines">At most <see cref="MachineRegister.MostFound"/>.</param>
/// <param name="More">Whether there are more.</param>
public sealed record FoundMachines(IReadOnlyList<FoundMachine> Machines, bool More);
