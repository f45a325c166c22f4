using Witnessmark.Bench.Stock;
using Witnessmark.Handbook.Languages;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Stock;

/// <summary>What became of a move.</summary>
/// <param name="Shelf">What is there now.</param>
/// <param name="Refused">Why it was not taken in, or null.</param>
/// <param name="Before">Whether the same move had come before; it counts once.</param>
public sealed record MoveTaken(Shelf Shelf, Sentence? Refused, bool Before);

/// <summary>
/// The moves of a shop's stock. A move is looked at and taken in within one transaction: two people
/// cannot be promised the same piece.
/// </summary>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
public sealed class StockStore
{
    /// <summary>Name of the file in the data folder.</summary>
    public const string FileName = "stock.db";

    private readonly KeptRows kept;

    internal StockStore(KeptRows kept) => this.kept = kept;

    /// <summary>Opens the stock in a data folder, makes it when it is not there, and brings its tables up to date.</summary>
    public static StockStore Open(string folder)
    {
        var file = new KeptFile(
            Path.Combine(folder, FileName),
            foreignKeys: false,
            connection => connection.Run("PRAGMA synchronous = FULL")
        );
        file.Prepare(StockSchema.Steps);
        return new(file);
    }

    /// <summary>The stock in a data folder, or null when nothing was ever moved there.</summary>
    public static StockStore? OpenIfThere(string folder) =>
        File.Exists(Path.Combine(folder, FileName)) ? Open(folder) : null;

    /// <summary>What is there.</summary>
    public Shelf Shelf() => kept.Look(connection => Bench.Stock.Shelf.Of(MoveRows.All(connection)));

    /// <summary>All moves in their order, or those of one item.</summary>
    public IReadOnlyList<StockMove> Moves(string? item = null) =>
        kept.Look(connection =>
            (IReadOnlyList<StockMove>)[.. MoveRows.All(connection).Where(m => item is null || m.What.Item == item)]
        );

    /// <summary>Takes a move in, or says why not. When this returns, a move that was taken in is on disk.</summary>
    public MoveTaken Take(StockMove move, StockItem item) =>
        kept.Change(connection =>
        {
            var moves = MoveRows.All(connection).ToList();
            var shelf = Bench.Stock.Shelf.Of(moves);
            if (moves.Any(m => m.Id == move.Id))
                return new MoveTaken(shelf, null, true);
            if (StockRules.Refuses(move, item, shelf) is { } why)
                return new MoveTaken(shelf, why, false);
            MoveRows.Add(connection, move);
            return new MoveTaken(shelf.After(move), null, false);
        });
}
