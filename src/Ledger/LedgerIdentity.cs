namespace Witnessmark.Ledger;

/// <summary>The one row that says which ledger this is. A device that meets another one sends everything again.</summary>
public sealed class LedgerIdentity
{
    public int Row { get; set; }
    public required string Id { get; set; }
    public required string Created { get; set; }
}
