using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Stock;
using Witnessmark.Bench.Toml;
using Witnessmark.Ledger.Stock;

namespace Witnessmark.Stock;

/// <summary>A move as somebody asked for it, in words.</summary>
/// <param name="Id">Made by whoever asks, so that the same sent twice counts once.</param>
/// <param name="Kind">One of <see cref="Kinds"/>.</param>
/// <param name="Item">Id of the stock item.</param>
/// <param name="Amount">As typed.</param>
/// <param name="By">One of the shop's people.</param>
internal sealed record MoveAsked(
    string Id,
    string Kind,
    string Item,
    string Amount,
    string By,
    string? Size = null,
    string? Batch = null,
    string? Job = null,
    string? Why = null
)
{
    /// <summary>The words for what happens on a shelf.</summary>
    public static readonly IReadOnlyDictionary<string, StockMoveKind> Kinds = new Dictionary<string, StockMoveKind>
    {
        ["receive"] = StockMoveKind.Received,
        ["count"] = StockMoveKind.Counted,
        ["reserve"] = StockMoveKind.Reserved,
        ["use"] = StockMoveKind.Used,
        ["return"] = StockMoveKind.Returned,
        ["discard"] = StockMoveKind.Discarded,
    };

    private const int LongestText = 200;

    /// <summary>The move with its item, or what is wrong with it and what is allowed.</summary>
    public (StockMove? Move, StockItem? Item, Sentence? Why) Read(Workshop shop, DateTimeOffset now)
    {
        if (new[] { Id, Item, Amount, By, Size, Batch, Job, Why }.Any(t => t?.Length > LongestText))
            return (null, null, $"One of the texts is longer than {LongestText} characters.");
        if (string.IsNullOrWhiteSpace(Id))
            return (null, null, $"id: it is missing.");
        if (!Kinds.TryGetValue(Kind ?? "", out var kind))
            return (null, null, $"kind \"{Kind}\": one of {string.Join(", ", Kinds.Keys)} is allowed.");
        if (!shop.Stock.TryGetValue(Item ?? "", out var item))
            return (
                null,
                null,
                $"There is no stock item \"{Item}\" in shop.toml; right would be {Nearest.InWords(Item ?? "", [.. shop.Stock.Keys])}."
            );
        if (!shop.People.Contains(By ?? ""))
            return (null, null, $"by \"{By}\": one of {string.Join(", ", shop.People)} is allowed.");
        var (amount, wrongAmount) = Amounts.Read(Amount ?? "", item);
        var (size, wrongSize) = Amounts.Size(Size, item);
        if ((wrongAmount ?? wrongSize) is { } wrong)
            return (null, null, wrong);
        var what = new StockKey(item.Id, size, Blank(Batch));
        return (new(Id ?? "", kind, what, amount!.Value, By!, now.ToString("O"), Blank(Job), Blank(Why)), item, null);
    }

    /// <summary>Takes it in: the line as it is then, with its warning in a language; or what is wrong with it; or why the shelf refuses.</summary>
    public (MoveAnswer? Answer, Sentence? Wrong, Sentence? Refused) Take(
        Workshop shop,
        Func<StockStore> stock,
        DateTimeOffset now,
        Tongue tongue
    )
    {
        var (move, item, wrong) = Read(shop, now);
        if (move is null)
            return (null, wrong, null);
        var taken = stock().Take(move, item!);
        return taken.Refused is { } why
            ? (null, null, why)
            : (
                new(item!.Id, item.Name, StockLineAnswer.Of(taken.Shelf.Line(move.What), item, tongue), taken.Before),
                null,
                null
            );
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}

/// <summary>What there is after a move.</summary>
/// <param name="Item">Id of the item.</param>
/// <param name="Name">Its name.</param>
/// <param name="Line">What there is of it now.</param>
/// <param name="Before">Whether the same move had come before.</param>
internal sealed record MoveAnswer(string Item, string Name, StockLineAnswer Line, bool Before);
