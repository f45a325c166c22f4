using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Stock;

/// <summary>One thing to order.</summary>
/// <param name="Item">The item.</param>
/// <param name="Free">What is there and nobody has asked for, in words.</param>
/// <param name="ReorderAt">Where it is ordered, in words.</param>
/// <param name="LeadDays">Days from order to shelf, or null when nobody said.</param>
/// <param name="Promised">Whether more is promised to jobs than is there.</param>
public sealed record ToOrder(StockItem Item, Sentence Free, Sentence ReorderAt, int? LeadDays, bool Promised);

/// <summary>What has to be ordered: no more is free than its reorder point, or jobs were promised more than is there.</summary>
/// <remarks>
/// <b>Formula.</b> order when Σ(balance − kept back) ≤ reorder point, over all sizes and batches; in pieces, or, where the reorder point is
/// a quantity, Σ pieces·size. <b>Units.</b> Those of the reorder point. <b>Source.</b> The (s, Q) rule of stock-keeping, common practice,
/// no source. <b>Valid when</b> the reorder point covers what is used in the lead time: the shop's own figure.
/// </remarks>
public static class Reorder
{
    /// <summary>What is said of something that was never received and never counted: that is not the same as none.</summary>
    public static Sentence Nobody => $"none on record";

    /// <summary>Longest lead time first; an unknown one before all, because nobody can plan with it.</summary>
    public static IReadOnlyList<ToOrder> List(IEnumerable<StockItem> items, Shelf shelf) =>
        [
            .. items
                .Select(item => Of(item, shelf))
                .OfType<ToOrder>()
                .OrderByDescending(o => o.LeadDays ?? int.MaxValue)
                .ThenBy(o => o.Item.Id, StringComparer.Ordinal),
        ];

    private static ToOrder? Of(StockItem item, Shelf shelf)
    {
        var lines = shelf.Of(item.Id).ToArray();
        var promised = lines.Any(l => l.Overpromised);
        var unit = item.ReorderAt?.Unit ?? item.Counted ?? UnitTable.Named("1");
        var free = lines.Sum(l => (double)(l.Balance - l.Kept) * Each(l, item, unit));
        return promised || free <= item.ReorderAt?.Value
            ? new(
                item,
                lines.Length == 0 ? Nobody : InWords(Math.Max(0, free), unit),
                item.ReorderAt is { } at ? InWords(at.Value, at.Unit) : (Sentence)$"not said",
                item.LeadDays,
                promised
            )
            : null;
    }

    /// <summary>What one counted piece is in the unit of the reorder point.</summary>
    private static double Each(ShelfLine line, StockItem item, Unit unit) =>
        unit.Dimension == Dimension.Number ? 1
        : item.Counted is { } counted ? new Written(1, counted).In(unit).Value
        : line.What.Size is { } size && Written.Read(size, out var written) is null ? written.In(unit).Value
        : 1;

    private static Sentence InWords(double value, Unit unit) =>
        unit.Symbol == "1"
            ? (Sentence)$"{Math.Round(value, 6):0.######}"
            : (Sentence)$"{Math.Round(value, 6):0.######} {unit}";
}
