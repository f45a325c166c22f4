using System.Collections.Immutable;

namespace Witnessmark.Bench.Stock;

/// <summary>How much of one kind of piece there is, and how it came to be so.</summary>
/// <remarks>
/// <b>Formula.</b> balance = received − used − discarded + corrected, where used is less what came back and corrected is the sum of
/// (counted − balance before it). <b>Units.</b> Those of the item. <b>Source.</b> Bookkeeping of quantities, common practice, no source.
/// <b>Valid when</b> the moves stand in the order in which the shop took them in. The balance may fall below zero: more was used than
/// the sums knew of. Then there is nothing there that anybody can promise, and a count has to be made.
/// </remarks>
public sealed record ShelfLine(StockKey What)
{
    /// <summary>All that came.</summary>
    public decimal Received { get; init; }

    /// <summary>What was used, less what came back.</summary>
    public decimal Used { get; init; }

    /// <summary>What was thrown away.</summary>
    public decimal Discarded { get; init; }

    /// <summary>What counts found more than the sums; negative when less.</summary>
    public decimal Corrected { get; init; }

    /// <summary>What is kept back, by job.</summary>
    public ImmutableDictionary<string, decimal> Reserved { get; init; } = ImmutableDictionary<string, decimal>.Empty;

    /// <summary>What each job used, less what came back from it.</summary>
    public ImmutableDictionary<string, decimal> UsedFor { get; init; } = ImmutableDictionary<string, decimal>.Empty;

    /// <summary>Whether more went, or came back, than the sums knew of, and nobody has counted since.</summary>
    public bool CountIt { get; init; }

    /// <summary>What the sums say; below zero when more was used than came.</summary>
    public decimal Balance => Received - Used - Discarded + Corrected;

    /// <summary>What is there, as far as the sums know.</summary>
    public decimal There => Math.Max(0, Balance);

    /// <summary>What is kept back for jobs in all.</summary>
    public decimal Kept => Reserved.Values.Sum();

    /// <summary>What nobody has asked for.</summary>
    public decimal Free => Math.Max(0, Balance - Kept);

    /// <summary>Whether more is promised to jobs than is there.</summary>
    public bool Overpromised => Kept > There;

    /// <summary>What a job can have: what is free, and what is kept back for it.</summary>
    public decimal FreeFor(string? job) => Math.Max(0, Balance - Reserved.Where(r => r.Key != job).Sum(r => r.Value));

    /// <summary>The line after one more move.</summary>
    public ShelfLine After(StockMove move) =>
        move.Kind switch
        {
            StockMoveKind.Received => this with { Received = Received + move.Amount },
            StockMoveKind.Reserved => this with { Reserved = With(Reserved, move.Job, move.Amount) },
            StockMoveKind.Used => Took(move.Job, move.Amount),
            StockMoveKind.Returned => CameBack(move.Job, move.Amount),
            StockMoveKind.Counted => this with { Corrected = Corrected + move.Amount - Balance, CountIt = false },
            _ => this with { Discarded = Discarded + move.Amount, CountIt = CountIt || move.Amount > Balance },
        };

    private ShelfLine Took(string? job, decimal amount) =>
        this with
        {
            Used = Used + amount,
            UsedFor = With(UsedFor, job, Of(UsedFor, job) + amount),
            Reserved = With(Reserved, job, Math.Max(0, Of(Reserved, job) - amount)),
            CountIt = CountIt || amount > Balance,
        };

    private ShelfLine CameBack(string? job, decimal amount) =>
        this with
        {
            Used = Used - amount,
            UsedFor = With(UsedFor, job, Math.Max(0, Of(UsedFor, job) - amount)),
            CountIt = CountIt || amount > Of(UsedFor, job),
        };

    private static decimal Of(ImmutableDictionary<string, decimal> amounts, string? job) =>
        amounts.GetValueOrDefault(job ?? "");

    private static ImmutableDictionary<string, decimal> With(
        ImmutableDictionary<string, decimal> amounts,
        string? job,
        decimal amount
    ) => amount == 0 ? amounts.Remove(job ?? "") : amounts.SetItem(job ?? "", amount);
}
