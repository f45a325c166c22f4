using FsCheck.Xunit;
using Witnessmark.Bench.Stock;

namespace Witnessmark.Bench.Tests.Stock;

/// <summary>Whatever happens on a shelf, in whatever order. Conservation of what is counted: bookkeeping, no source.</summary>
public class ShelfProperties
{
    private static readonly StockKey[] Keys = [new("oil", "1 L"), new("oil", "4 L"), new("washer")];
    private static readonly string[] Jobs = ["412", "413"];

    /// <summary>Sums kept beside the fold, in another way: one running number for each key.</summary>
    [Property(MaxTest = 300)]
    public void What_came_is_there_or_used_or_thrown_away_or_was_corrected_by_a_count(int[] choices)
    {
        var moves = Moves(choices ?? []);
        var shelf = Shelf.Of(moves);
        foreach (var key in Keys)
        {
            var line = shelf.Line(key);
            Assert.Equal(line.Received + line.Corrected, line.Balance + line.Used + line.Discarded);
            Assert.Equal(Running(moves.Where(m => m.What == key)), line.Balance);
            Assert.True(line.There >= 0 && line.Free >= 0 && line.Free <= line.There);
        }
    }

    [Property(MaxTest = 300)]
    public void Nothing_falls_below_none_and_no_promise_exceeds_it_without_a_flag(int[] choices)
    {
        var shelf = Shelf.Of(Moves(choices ?? []));
        Assert.All(
            shelf.Lines,
            line =>
            {
                Assert.True(line.Balance >= 0 || line.CountIt);
                Assert.Equal(line.Reserved.Values.Sum() > Math.Max(0, line.Balance), line.Overpromised);
            }
        );
    }

    /// <summary>With the rules before it, promises alone never exceed what is there.</summary>
    [Property(MaxTest = 300)]
    public void Promises_that_the_rules_take_in_can_be_kept(int[] choices)
    {
        var shelf = Shelf.Empty;
        foreach (
            var move in Moves(choices ?? []).Where(m => m.Kind is StockMoveKind.Received or StockMoveKind.Reserved)
        )
            if (StockRules.Refuses(move, Item, shelf) is null)
                shelf = shelf.After(move);
        Assert.DoesNotContain(shelf.Lines, l => l.Overpromised);
    }

    private static readonly StockItem Item = new("x", "X", ["X"], [], null, [], null, null, null, null);

    private static decimal Running(IEnumerable<StockMove> moves)
    {
        var there = 0m;
        foreach (var move in moves)
            there = move.Kind switch
            {
                StockMoveKind.Received or StockMoveKind.Returned => there + move.Amount,
                StockMoveKind.Used or StockMoveKind.Discarded => there - move.Amount,
                StockMoveKind.Counted => move.Amount,
                _ => there,
            };
        return there;
    }

    private static List<StockMove> Moves(int[] choices) =>
        [
            .. choices
                .Select(c => (uint)c * 2654435761u) // spreads small numbers over all choices
                .Select(
                    (c, i) =>
                        new StockMove(
                            $"m{i}",
                            (StockMoveKind)(c % 6),
                            Keys[c / 6 % 3],
                            c / 18 % 12 + c / 216 % 4 * 0.25m,
                            "somebody",
                            "2026-11-25",
                            Jobs[c / 864 % 2],
                            "because"
                        )
                ),
        ];
}
