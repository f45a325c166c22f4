using Witnessmark.Bench.Stock;

namespace Witnessmark.Stock;

/// <summary>What is on the shelf, on the command line and over HTTP alike.</summary>
/// <param name="Items">The items of the shop's file that were asked for, with what there is of each.</param>
/// <param name="ToOrder">What has to be ordered, longest lead time first.</param>
internal sealed record StockAnswer(IReadOnlyList<StockItemAnswer> Items, IReadOnlyList<ToOrderAnswer> ToOrder)
{
    /// <summary>Items with every word of the text in id, name, place or what they serve; all when none is given; warnings in a language.</summary>
    public static StockAnswer Of(
        IReadOnlyDictionary<string, StockItem> items,
        Shelf shelf,
        Tongue tongue,
        string? find = null
    ) =>
        new(
            [.. items.Values.Where(i => Has(i, find)).Select(i => StockItemAnswer.Of(i, shelf, tongue))],
            [.. Reorder.List(items.Values, shelf).Where(o => Has(o.Item, find)).Select(ToOrderAnswer.Of)]
        );

    private static bool Has(StockItem item, string? find) =>
        (find ?? "")
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .All(word =>
                item.Serves.Append(item.Id)
                    .Append(item.Place ?? "")
                    .Any(t => t.Contains(word, StringComparison.OrdinalIgnoreCase))
            );
}

/// <summary>One item.</summary>
internal sealed record StockItemAnswer(
    string Item,
    string Name,
    string? Place,
    string? Unit,
    IReadOnlyList<string> Sizes,
    string? Measured,
    int? LeadDays,
    IReadOnlyList<StockLineAnswer> Lines
)
{
    public static StockItemAnswer Of(StockItem item, Shelf shelf, Tongue tongue) =>
        new(
            item.Id,
            item.Name,
            item.Place,
            item.Counted?.Symbol,
            [.. item.Sizes.Select(s => s.ToString())],
            item.Measured?.Symbol,
            item.LeadDays,
            [.. shelf.Of(item.Id).Select(l => StockLineAnswer.Of(l, item, tongue))]
        );
}

/// <summary>What there is of one size and batch.</summary>
/// <param name="There">As far as the sums know.</param>
/// <param name="Kept">Kept back for jobs.</param>
/// <param name="Free">What nobody has asked for.</param>
/// <param name="Warning">What has to be looked after, or null.</param>
internal sealed record StockLineAnswer(
    string? Size,
    string? Batch,
    decimal There,
    decimal Kept,
    decimal Free,
    string? Warning
)
{
    public static StockLineAnswer Of(ShelfLine line, StockItem item, Tongue tongue) =>
        new(
            line.What.Size,
            line.What.Batch,
            Plain(line.There),
            Plain(line.Kept),
            Plain(line.Free),
            StockRules.Warns(line, item)?.In(tongue)
        );

    // 3.00 is written as 3
    private static decimal Plain(decimal amount) =>
        decimal.Parse(Amounts.Text(amount), System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>One thing to order.</summary>
internal sealed record ToOrderAnswer(
    string Item,
    string Name,
    string Free,
    string ReorderAt,
    int? LeadDays,
    bool Overpromised
)
{
    public static ToOrderAnswer Of(ToOrder order) =>
        new(order.Item.Id, order.Item.Name, order.Free, order.ReorderAt, order.LeadDays, order.Promised);
}
