namespace Witnessmark.Bench.Record;

/// <summary>What was given is no entry; the message says which field and what is wrong with it.</summary>
public sealed class MalformedEntry(string message) : FormatException(message);
