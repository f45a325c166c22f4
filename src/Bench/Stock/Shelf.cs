using System.Collections.Immutable;

namespace Witnessmark.Bench.Stock;

/// <summary>All that is on the shelf: a pure function of the moves in their order.</summary>
public sealed class Shelf
{
    private readonly ImmutableDictionary<StockKey, ShelfLine> lines;

    private Shelf(ImmutableDictionary<StockKey, ShelfLine> lines) => this.lines = lines;

    /// <summary>Nothing was ever moved.</summary>
    public static Shelf Empty { get; } = new(ImmutableDictionary<StockKey, ShelfLine>.Empty);

    /// <summary>The shelf after all moves; one that came twice counts once.</summary>
    public static Shelf Of(IEnumerable<StockMove> moves) =>
        moves.DistinctBy(m => m.Id).Aggregate(Empty, (shelf, move) => shelf.After(move));

    /// <summary>Every kind of piece that was ever moved, by item, size and batch.</summary>
    public IReadOnlyList<ShelfLine> Lines =>
        [
            .. lines
                .Values.OrderBy(l => l.What.Item, StringComparer.Ordinal)
                .ThenBy(l => l.What.Size, StringComparer.Ordinal)
                .ThenBy(l => l.What.Batch, StringComparer.Ordinal),
        ];

    /// <summary>One kind of piece; with nothing on it when it was never moved.</summary>
    public ShelfLine Line(StockKey what) => lines.GetValueOrDefault(what) ?? new(what);

    /// <summary>All batches of an item in one size; of every size when none is given.</summary>
    public IEnumerable<ShelfLine> Of(string item, string? size = null) =>
        Lines.Where(l => l.What.Item == item && (size is null || l.What.Size == size));

    /// <summary>The shelf after one more move.</summary>
    public Shelf After(StockMove move) => new(lines.SetItem(move.What, Line(move.What).After(move)));
}
