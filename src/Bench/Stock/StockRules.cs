namespace Witnessmark.Bench.Stock;

/// <summary>
/// Which moves are taken in. What has happened is always recorded: a technician is never kept from telling the truth because the
/// sums do not know it yet. A promise is another matter: more than is free is not kept back for a job.
/// </summary>
public static class StockRules
{
    /// <summary>Why a move is not taken in, with what is there and what to do; null when it is.</summary>
    public static Sentence? Refuses(StockMove move, StockItem item, Shelf shelf) =>
        Missing(move)
        ?? (
            move.Kind == StockMoveKind.Reserved && move.Amount > shelf.Line(move.What).FreeFor(move.Job)
                ? TooMuch(move, item, shelf.Line(move.What))
                : null
        );

    /// <summary>What has to be looked after now that a move was taken in; null when all is well.</summary>
    public static Sentence? Warns(ShelfLine line, StockItem item) =>
        line.CountIt
            ? (Sentence)
                $"{item.Name}: more went or came back than the sums know of ({item.InWords(line.Balance)}). Count what is there."
        : line.Overpromised
            ? (Sentence)
                $"{item.Name}: {item.InWords(line.Kept)} are kept back for jobs and {item.InWords(line.There)} are there."
        : null;

    private static Sentence? Missing(StockMove move) =>
        string.IsNullOrWhiteSpace(move.By) ? (Sentence)$"by: a name is missing."
        : string.IsNullOrWhiteSpace(move.Id) ? (Sentence)$"id: it is missing."
        : move.Amount < 0 ? (Sentence)$"amount: less than nothing."
        : move.Amount == 0 && move.Kind is not (StockMoveKind.Counted or StockMoveKind.Reserved)
            ? (Sentence)$"amount: nothing was moved."
        : string.IsNullOrWhiteSpace(move.Job)
        && move.Kind is StockMoveKind.Reserved or StockMoveKind.Used or StockMoveKind.Returned
            ? (Sentence)$"job: it is missing; what is kept back, used or brought back belongs to a job."
        : string.IsNullOrWhiteSpace(move.Why) && move.Kind == StockMoveKind.Discarded
            ? (Sentence)$"why: a reason is missing."
        : null;

    private static Sentence TooMuch(StockMove move, StockItem item, ShelfLine line)
    {
        Sentence cannot =
            $"{item.InWords(move.Amount)} of {move.What} cannot be kept back: {item.InWords(line.There)} there, {item.InWords(line.There - Math.Min(line.There, line.FreeFor(move.Job)))} of it kept back for others.";
        return Sentence.Line(cannot, Order(item));
    }

    private static Sentence Order(StockItem item) =>
        item.LeadDays is { } days
            ? Sentence.Count(days, $"Order it: {days} day.", $"Order it: {days} days.")
            : (Sentence)$"Order it, or count what is there.";
}
