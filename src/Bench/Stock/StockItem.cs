using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Stock;

/// <summary>Something that the shop keeps on its shelf.</summary>
/// <param name="Id"><c>oil-10w-40</c>.</param>
/// <param name="Name">As written on paper.</param>
/// <param name="Serves">Consumables of the bench book that it is taken for; its own name among them.</param>
/// <param name="Sheets">Figure sheets of the machines that it fits; empty: all.</param>
/// <param name="Counted">What it is counted in when it is drawn loose, such as <c>L</c> from a drum; null: in pieces.</param>
/// <param name="Sizes">Sizes that it is bought in, such as bottles of <c>1 L</c>; empty: one size.</param>
/// <param name="Measured">Unit of the size that each piece is measured to have, such as <c>mm</c> of a shim; null: none.</param>
/// <param name="LeadDays">Days from order to shelf, or null when nobody said.</param>
/// <param name="ReorderAt">Order when no more than this is free: pieces (unit 1) or a quantity; null: never told.</param>
/// <param name="Place">Where it lies, or null.</param>
public sealed record StockItem(
    string Id,
    string Name,
    IReadOnlyList<string> Serves,
    IReadOnlyList<string> Sheets,
    Unit? Counted,
    IReadOnlyList<Written> Sizes,
    Unit? Measured,
    int? LeadDays,
    Written? ReorderAt,
    string? Place
)
{
    /// <summary>Whether it is taken for a consumable on machines of a sheet.</summary>
    public bool ServesFor(string consumable, string sheet) =>
        Serves.Contains(consumable) && (Sheets.Count == 0 || Sheets.Contains(sheet));

    /// <summary>An amount of it in words: <c>3</c>, <c>2.5 L</c>.</summary>
    public Sentence InWords(decimal amount) =>
        Counted is null ? (Sentence)$"{amount:0.######}" : (Sentence)$"{amount:0.######} {Counted}";
}
