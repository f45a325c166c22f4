using Witnessmark.Bench.Machines;
using Witnessmark.Ledger.Machines;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>A machine that a list meets: as the store has it, and as it is to have it.</summary>
internal sealed class MetMachine
{
    private readonly MachineSays kept;
    private readonly MachineOwner? before;

    /// <param name="id">Its name in the register.</param>
    /// <param name="row">Its row; null: it is not there yet.</param>
    /// <param name="says">What is said of it.</param>
    /// <param name="owner">Who brings it.</param>
    public MetMachine(string id, long? row, MachineSays says, MachineOwner? owner)
    {
        (Id, Row, Says, Owner) = (id, row, says, owner);
        (kept, before) = (says, owner);
    }

    public string Id { get; }
    public long? Row { get; set; }
    public MachineSays Says { get; set; }
    public MachineOwner? Owner { get; set; }

    /// <summary>A distance that the store lacks.</summary>
    public DistanceOnDay? Distance { get; set; }

    public bool IsNew => Row is null;
    public bool IsChanged => Row is not null && Says != kept;
    public bool HasNewOwner => Owner != before;

    /// <summary>Whether the index of owners has it already.</summary>
    public bool HadOwner => before is not null;
}
