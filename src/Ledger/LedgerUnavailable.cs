namespace Witnessmark.Ledger;

/// <summary>The ledger cannot be read or written: disk full, file locked or broken. Nothing of what was asked has happened.</summary>
public sealed class LedgerUnavailable(string message, Exception? inner = null) : IOException(message, inner);
