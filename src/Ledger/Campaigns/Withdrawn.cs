namespace Witnessmark.Ledger.Campaigns;

/// <summary>A campaign of the shop's own list that somebody took back. Its records stay; a later import that names it brings it back.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Because">Why.</param>
/// <param name="By">Who.</param>
/// <param name="At">When, ISO 8601, universal time.</param>
/// <param name="Records">How many records it has.</param>
public sealed record Withdrawn(string Number, string Because, string By, string At, int Records);

/// <summary>What came of taking a campaign back.</summary>
/// <param name="Done">The record of it; null when no own list has a campaign of that number that stands.</param>
/// <param name="StillIn">Lists whose newest import still names it: the next one brings it back.</param>
/// <param name="Standing">Numbers of the own lists that stand, when nothing was done.</param>
/// <param name="IsPublic">Whether the public list has that number, when nothing was done.</param>
public sealed record WithdrawOutcome(
    Withdrawn? Done,
    IReadOnlyList<ImportedList> StillIn,
    IReadOnlyList<string> Standing,
    bool IsPublic
);
