using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>What one device sends at once.</summary>
/// <param name="Device">Who sends.</param>
/// <param name="Epoch">In which epoch it is.</param>
/// <param name="Entries">As they came: what cannot be read is kept too.</param>
public sealed record Batch(string Device, int Epoch, IReadOnlyList<JsonElement> Entries)
{
    /// <summary>Shops that lay here before: what devices still bring of them is set aside.</summary>
    public IReadOnlyList<string> PutAway { get; init; } = [];
}

/// <summary>What the shop holds of the sender after a batch; said only when it is on disk.</summary>
/// <param name="Ledger">Which ledger speaks.</param>
/// <param name="UpTo">Every entry of the sender's chain up to this number is held: taken in, or set aside and listed.</param>
/// <param name="SetAside">All of the sender's chain and of this batch that is set aside.</param>
public sealed record Receipt(string Ledger, int UpTo, IReadOnlyList<Aside> SetAside);

/// <summary>One thing set aside; id and number as far as they can be read.</summary>
/// <param name="Id">Of the entry.</param>
/// <param name="Seq">Its number.</param>
/// <param name="Why">The reason in a sentence.</param>
/// <param name="Conflict">Whether another entry holds its id or its number, or the one that it is bound to.</param>
public sealed record Aside(string? Id, int? Seq, string Why, bool Conflict = false);

/// <summary>A part of the ledger in the shop's order.</summary>
/// <param name="Ledger">Which ledger speaks.</param>
/// <param name="Head">The last order there is.</param>
/// <param name="Entries">In order.</param>
public sealed record LedgerPage(string Ledger, long Head, IReadOnlyList<OrderedEntry> Entries);

/// <summary>An entry with the shop's order.</summary>
public sealed record OrderedEntry(long Order, Entry Entry);
