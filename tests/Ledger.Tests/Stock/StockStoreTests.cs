using Microsoft.Data.Sqlite;
using Witnessmark.Bench.Stock;
using Witnessmark.Ledger.Stock;

namespace Witnessmark.Ledger.Tests.Stock;

public sealed class StockStoreTests : IDisposable
{
    private static readonly StockItem Washer = new("washer", "Washer", ["Washer"], [], null, [], null, 3, null, null);
    private readonly string folder = Directory.CreateTempSubdirectory("witnessmark-stock-").FullName;
    private int made;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_kind_of_move_comes_back_as_it_was_and_in_its_order()
    {
        StockMove[] moves =
        [
            .. Enum.GetValues<StockMoveKind>()
                .Select(k =>
                    Move(k, 2.123456m) with
                    {
                        Job = "412",
                        Why = "because",
                        What = new("washer", "2 mm", "lot 7"),
                    }
                ),
            Move(StockMoveKind.Received, 1),
        ];
        foreach (var move in moves)
            Assert.Null(Store.Take(move, Washer).Refused);
        Assert.Equal(moves, Store.Moves());
        Assert.Equal(moves, Store.Moves("washer"));
        Assert.Empty(Store.Moves("nut"));
        Assert.Equal(
            Shelf.Of(moves).Lines.Select(l => (l.What, l.Balance, l.Kept, l.CountIt)),
            Store.Shelf().Lines.Select(l => (l.What, l.Balance, l.Kept, l.CountIt))
        );
    }

    [Fact]
    public void The_same_move_twice_counts_once()
    {
        var move = Move(StockMoveKind.Received, 3);
        Assert.False(Store.Take(move, Washer).Before);
        var again = Store.Take(move, Washer);
        Assert.Equal((true, 3m), (again.Before, again.Shelf.Line(move.What).There));
        Assert.Single(Store.Moves());
    }

    [Fact]
    public void What_is_refused_leaves_no_trace()
    {
        Store.Take(Move(StockMoveKind.Received, 3), Washer);
        var refused = Store.Take(Move(StockMoveKind.Reserved, 4) with { Job = "412" }, Washer);
        Assert.Contains("3 there", refused.Refused);
        Assert.Single(Store.Moves());
    }

    // each asks for one of ten pieces; a promise is looked at and written in one transaction
    [Fact]
    public void No_piece_is_promised_twice_however_many_ask_at_once()
    {
        Store.Take(Move(StockMoveKind.Received, 10), Washer);
        var asked = Enumerable
            .Range(0, 16)
            .Select(i => Move(StockMoveKind.Reserved, 1) with { Job = $"{i}" })
            .ToArray();
        var refused = asked
            .AsParallel()
            .WithDegreeOfParallelism(8)
            .Count(m => Store.Take(m, Washer).Refused is not null);
        Assert.Equal(6, refused);
        Assert.Equal(
            (10m, false),
            (Store.Shelf().Line(new("washer")).Kept, Store.Shelf().Line(new("washer")).Overpromised)
        );
    }

    [Fact]
    public void A_newer_form_is_refused_and_left_alone()
    {
        Store.Take(Move(StockMoveKind.Received, 1), Washer);
        Run("PRAGMA user_version = 2");
        Assert.Contains("newer Witnessmark (form 2", Assert.Throws<LedgerUnavailable>(() => Store).Message);
    }

    [Fact]
    public void A_kind_that_is_not_known_is_never_passed_over()
    {
        Store.Take(Move(StockMoveKind.Received, 1), Washer);
        Run("UPDATE move SET kind = 'lent'");
        Assert.Contains("\"lent\"", Assert.Throws<LedgerUnavailable>(() => Store.Shelf()).Message);
    }

    [Fact]
    public void Without_a_move_there_is_no_stock()
    {
        Assert.Null(StockStore.OpenIfThere(folder));
        Assert.Empty(Store.Shelf().Lines);
        Assert.NotNull(StockStore.OpenIfThere(folder));
    }

    [Fact]
    public void A_file_that_is_none_is_told()
    {
        File.WriteAllText(Path.Combine(folder, StockStore.FileName), new string('x', 5000));
        Assert.Contains(StockStore.FileName, Assert.Throws<LedgerUnavailable>(() => Store).Message);
    }

    private StockStore Store => StockStore.Open(folder);

    private StockMove Move(StockMoveKind kind, decimal amount) =>
        new($"m{made++}", kind, new("washer"), amount, "Ines Tallow", "2026-11-25T09:00:00Z");

    private void Run(string sql)
    {
        using var connection = new SqliteConnection(
            $"Data Source={Path.Combine(folder, StockStore.FileName)};Pooling=False"
        );
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
