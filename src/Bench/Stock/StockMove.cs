namespace Witnessmark.Bench.Stock;

/// <summary>What happens on a shelf.</summary>
public enum StockMoveKind
{
    /// <summary>It came: bought, or taken off a machine and kept.</summary>
    Received,

    /// <summary>So much is kept back for a job; it replaces what was kept back for it before, and zero frees it.</summary>
    Reserved,

    /// <summary>It was used up on a job.</summary>
    Used,

    /// <summary>What had been taken for a job came back unused.</summary>
    Returned,

    /// <summary>Somebody counted: so much is there, whatever the sums say.</summary>
    Counted,

    /// <summary>It was thrown away, with a reason.</summary>
    Discarded,
}

/// <summary>One kind of piece on the shelf.</summary>
/// <param name="Item">Id of the stock item.</param>
/// <param name="Size"><c>1 L</c> of a bottle, <c>2.35 mm</c> of a shim; null where there are no sizes.</param>
/// <param name="Batch">What its maker printed on it, or null.</param>
public sealed record StockKey(string Item, string? Size = null, string? Batch = null)
{
    /// <summary>As it is told: <c>oil-10w-40, 1 L, lot 7</c>.</summary>
    public override string ToString() => string.Join(", ", new[] { Item, Size, Batch }.OfType<string>());
}

/// <summary>One fact about the shelf. Never changed and never deleted: a wrong one is put right by a count.</summary>
/// <param name="Id">Unique, made by whoever sends it: the same sent twice counts once.</param>
/// <param name="Kind">What happened.</param>
/// <param name="What">To which kind of piece.</param>
/// <param name="Amount">How much; of a count and of what is kept back, how much it is from now on.</param>
/// <param name="By">The person.</param>
/// <param name="At">When, ISO 8601; recorded, not trusted.</param>
/// <param name="Job">For which job, or null.</param>
/// <param name="Why">In somebody's words, or null.</param>
public sealed record StockMove(
    string Id,
    StockMoveKind Kind,
    StockKey What,
    decimal Amount,
    string By,
    string At,
    string? Job = null,
    string? Why = null
);
