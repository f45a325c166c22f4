using Witnessmark.Bench.Machines;

namespace Witnessmark.Ledger.Machines;

/// <summary>A row of a shop's list on its way in.</summary>
/// <param name="Line">Line of the file on which it begins, from 1.</param>
/// <param name="Row">What it says, or null.</param>
/// <param name="Why">Why it cannot be read, or null.</param>
/// <param name="Raw">As it stands in the file.</param>
public sealed record RowToImport(long Line, RegisterRow? Row, string? Why, string Raw);

/// <summary>What became of a row.</summary>
/// <param name="Line">Line of the file.</param>
/// <param name="Id">The machine; empty when it is not known.</param>
/// <param name="Outcome">What became of it.</param>
/// <param name="Why">Why it was set aside, or null.</param>
/// <param name="Raw">As it stands in the file.</param>
public sealed record ImportedRow(long Line, string Id, RowOutcome Outcome, string? Why, string Raw);

/// <summary>What can become of a row.</summary>
public enum RowOutcome
{
    /// <summary>A machine that was not there.</summary>
    Taken,

    /// <summary>It says something else, or more, than what was there.</summary>
    Updated,

    /// <summary>It says what was there.</summary>
    Same,

    /// <summary>It was not taken.</summary>
    SetAside,
}
