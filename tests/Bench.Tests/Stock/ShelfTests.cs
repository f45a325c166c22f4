using Witnessmark.Bench.Stock;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Stock;

public class ShelfTests
{
    private static readonly StockKey Bottle = new("oil", "1 L");
    private static int made;

    private static StockItem Oil { get; } =
        new(
            "oil",
            "Engine oil",
            ["Engine oil"],
            [],
            null,
            [new(4, Litre), new(1, Litre)],
            null,
            2,
            new(8, Litre),
            null
        );

    private static Unit Litre => UnitTable.Named("L");

    internal static StockMove Move(
        StockMoveKind kind,
        decimal amount,
        string? job = null,
        string? why = null,
        StockKey? what = null
    ) => new($"m{made++}", kind, what ?? Bottle, amount, "Ines Tallow", "2026-11-25", job, why);

    [Fact]
    public void What_came_less_what_went_is_there()
    {
        var line = After(
            Move(StockMoveKind.Received, 10),
            Move(StockMoveKind.Used, 3, "412"),
            Move(StockMoveKind.Returned, 1, "412"),
            Move(StockMoveKind.Discarded, 2, why: "leaking")
        );
        Assert.Equal((10m, 2m, 2m, 0m), (line.Received, line.Used, line.Discarded, line.Corrected));
        Assert.Equal((6m, 6m, 6m, false), (line.Balance, line.There, line.Free, line.CountIt));
    }

    [Fact]
    public void Using_more_than_is_there_is_recorded_and_asks_for_a_count_until_it_is_made()
    {
        var line = After(Move(StockMoveKind.Received, 2), Move(StockMoveKind.Used, 5, "412"));
        Assert.Equal((-3m, 0m, 0m, true), (line.Balance, line.There, line.Free, line.CountIt));
        Assert.Contains("Count what is there", StockRules.Warns(line, Oil));
        line = line.After(Move(StockMoveKind.Received, 10));
        Assert.Equal((7m, true), (line.Balance, line.CountIt));
        line = line.After(Move(StockMoveKind.Counted, 9));
        Assert.Equal((9m, 2m, false), (line.Balance, line.Corrected, line.CountIt));
        Assert.Null(StockRules.Warns(line, Oil));
    }

    [Fact]
    public void Using_exactly_what_is_there_asks_for_nothing()
    {
        var line = After(Move(StockMoveKind.Received, 2), Move(StockMoveKind.Used, 2, "412"));
        Assert.Equal((0m, false), (line.Balance, line.CountIt));
        Assert.True(line.After(Move(StockMoveKind.Discarded, 1, why: "torn")).CountIt);
    }

    [Fact]
    public void More_brought_back_than_was_taken_asks_for_a_count()
    {
        var taken = After(Move(StockMoveKind.Received, 5), Move(StockMoveKind.Used, 1, "412"));
        Assert.False(taken.After(Move(StockMoveKind.Returned, 1, "412")).CountIt);
        Assert.True(taken.After(Move(StockMoveKind.Returned, 2, "412")).CountIt);
        Assert.True(taken.After(Move(StockMoveKind.Returned, 1, "413")).CountIt);
    }

    [Fact]
    public void What_is_kept_back_is_set_and_shrinks_as_it_is_used()
    {
        var line = After(
            Move(StockMoveKind.Received, 10),
            Move(StockMoveKind.Reserved, 4, "412"),
            Move(StockMoveKind.Reserved, 3, "412"),
            Move(StockMoveKind.Reserved, 2, "413")
        );
        Assert.Equal((5m, 5m, 8m), (line.Kept, line.Free, line.FreeFor("412")));
        line = line.After(Move(StockMoveKind.Used, 2, "412"));
        Assert.Equal((3m, 1m), (line.Kept, line.Reserved["412"]));
        line = line.After(Move(StockMoveKind.Used, 2, "412"));
        Assert.Equal((2m, 6m, 4m), (line.Kept, line.Balance, line.Free));
        Assert.Empty(line.After(Move(StockMoveKind.Reserved, 0, "413")).Reserved);
    }

    [Theory]
    [InlineData(8, null)]
    [InlineData(9, "9 of oil, 1 L cannot be kept back: 10 there, 2 of it kept back for others. Order it: 2 days.")]
    public void More_than_is_free_is_not_kept_back(int asked, string? says)
    {
        var shelf = Shelf.Of([Move(StockMoveKind.Received, 10), Move(StockMoveKind.Reserved, 2, "413")]);
        Assert.Equal(says, StockRules.Refuses(Move(StockMoveKind.Reserved, asked, "412"), Oil, shelf));
    }

    [Fact]
    public void What_others_use_of_a_promise_is_told()
    {
        var line = After(
            Move(StockMoveKind.Received, 3),
            Move(StockMoveKind.Reserved, 3, "412"),
            Move(StockMoveKind.Used, 1, "413")
        );
        Assert.True(line.Overpromised);
        Assert.Equal("Engine oil: 3 are kept back for jobs and 2 are there.", StockRules.Warns(line, Oil));
    }

    [Theory]
    [InlineData(StockMoveKind.Used, 1, null, "job: it is missing")]
    [InlineData(StockMoveKind.Reserved, 1, " ", "job: it is missing")]
    [InlineData(StockMoveKind.Returned, 1, null, "job: it is missing")]
    [InlineData(StockMoveKind.Discarded, 1, null, "why: a reason is missing")]
    [InlineData(StockMoveKind.Received, 0, null, "nothing was moved")]
    [InlineData(StockMoveKind.Received, -1, null, "less than nothing")]
    public void What_is_missing_is_said(StockMoveKind kind, int amount, string? job, string says) =>
        Assert.Contains(says, StockRules.Refuses(Move(kind, amount, job), Oil, Shelf.Empty));

    [Fact]
    public void A_count_of_none_and_a_promise_of_none_are_taken()
    {
        Assert.Null(StockRules.Refuses(Move(StockMoveKind.Counted, 0), Oil, Shelf.Empty));
        Assert.Null(StockRules.Refuses(Move(StockMoveKind.Reserved, 0, "412"), Oil, Shelf.Empty));
        Assert.Null(StockRules.Refuses(Move(StockMoveKind.Used, 3, "412"), Oil, Shelf.Empty));
    }

    [Fact]
    public void The_same_move_twice_counts_once()
    {
        var move = Move(StockMoveKind.Received, 3);
        Assert.Equal(3, Shelf.Of([move, move]).Line(Bottle).Balance);
    }

    [Fact]
    public void Sizes_and_batches_lie_apart_and_are_found_together()
    {
        var shelf = Shelf.Of([
            Move(StockMoveKind.Received, 1, what: new("oil", "4 L")),
            Move(StockMoveKind.Received, 2, what: new("oil", "1 L", "lot 8")),
            Move(StockMoveKind.Received, 3, what: new("oil", "1 L", "lot 7")),
            Move(StockMoveKind.Received, 9, what: new("shim", "2.35 mm")),
        ]);
        Assert.Equal(
            ["oil, 1 L, lot 7", "oil, 1 L, lot 8", "oil, 4 L", "shim, 2.35 mm"],
            shelf.Lines.Select(l => l.What.ToString())
        );
        Assert.Equal(5, shelf.Of("oil", "1 L").Sum(l => l.Balance));
        Assert.Equal(6, shelf.Of("oil").Sum(l => l.Balance));
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(9, false)]
    public void At_the_reorder_point_in_litres_over_all_sizes_it_is_ordered(int litres, bool listed)
    {
        var shelf = Shelf.Of([
            Move(StockMoveKind.Received, 1, what: new("oil", "4 L")),
            Move(StockMoveKind.Received, litres - 4),
        ]);
        var list = Reorder.List([Oil], shelf);
        Assert.Equal(listed, list.Count == 1);
        if (listed)
            Assert.Equal(
                ("8 L", "8 L", 2, false),
                (list[0].Free.ToString(), list[0].ReorderAt.ToString(), list[0].LeadDays, list[0].Promised)
            );
    }

    [Fact]
    public void What_is_kept_back_is_not_free_and_the_longest_lead_stands_first()
    {
        var unknown = Oil with { Id = "a", LeadDays = null, ReorderAt = null };
        var slow = Oil with { Id = "b", LeadDays = 9, ReorderAt = new(1, UnitTable.Named("1")) };
        var shelf = Shelf.Of([
            Move(StockMoveKind.Received, 10),
            Move(StockMoveKind.Reserved, 2, "412"),
            Move(StockMoveKind.Reserved, 1, "412", what: new("a", "1 L")),
        ]);
        var list = Reorder.List([Oil, slow, unknown], shelf);
        Assert.Equal(["a", "b", "oil"], list.Select(o => o.Item.Id));
        Assert.Equal(
            ("0", "not said", true),
            (list[0].Free.ToString(), list[0].ReorderAt.ToString(), list[0].Promised)
        );
        Assert.Equal(("none on record", "1"), (list[1].Free, list[1].ReorderAt));
    }

    private static ShelfLine After(params StockMove[] moves) => Shelf.Of(moves).Line(Bottle);
}
