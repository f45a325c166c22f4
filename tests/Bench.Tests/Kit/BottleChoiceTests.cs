using FsCheck.Xunit;
using Witnessmark.Bench.Kit;

namespace Witnessmark.Bench.Tests.Kit;

public class BottleChoiceTests
{
    [Theory]
    [InlineData(3.41, new[] { 4.0, 1.0 }, new[] { 2, 6 }, new[] { 1, 0 })] // 4 L either way: one bottle beats four
    [InlineData(3.0, new[] { 4.0, 1.0 }, new[] { 2, 6 }, new[] { 0, 3 })] // nothing left over beats fewer bottles
    [InlineData(3.0, new[] { 4.0, 1.0 }, new[] { 2, 2 }, new[] { 1, 0 })]
    [InlineData(5.2, new[] { 4.0, 1.0 }, new[] { 2, 6 }, new[] { 1, 2 })]
    [InlineData(0.0001, new[] { 0.5, 0.25 }, new[] { 1, 1 }, new[] { 0, 1 })]
    [InlineData(1.0, new[] { 0.5 }, new[] { 2 }, new[] { 2 })]
    public void The_least_is_left_over_and_then_the_fewest_are_taken(
        double needed,
        double[] litres,
        int[] there,
        int[] taken
    )
    {
        var bottles = BottleChoice.For(needed, Sizes(litres, there))!;
        Assert.Equal(taken, bottles.Taken);
        Assert.Equal(litres.Zip(taken, (l, n) => l * n).Sum(), bottles.Litres, 9);
    }

    [Fact]
    public void Too_few_and_none_at_all_hold_nothing()
    {
        Assert.Null(BottleChoice.For(3.001, Sizes([1.0], [3])));
        Assert.Null(BottleChoice.For(1, Sizes([1.0], [0])));
        Assert.Null(BottleChoice.For(1, []));
        Assert.NotNull(BottleChoice.For(3, Sizes([1.0], [3])));
    }

    // US quarts are no whole millilitres: 0.946352946 L, NIST SP 811 (2008) B.8
    [Fact]
    public void Sizes_in_quarts_never_fall_short_by_rounding()
    {
        const double quart = 0.946352946;
        Assert.Equal([4], BottleChoice.For(3.41, Sizes([quart], [9]))!.Taken);
        Assert.Equal([2], BottleChoice.For(2 * quart - 0.001, Sizes([quart], [9]))!.Taken);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(200.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_need_that_cannot_be_is_the_callers_fault(double needed) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BottleChoice.For(needed, Sizes([1.0], [1])));

    [Theory]
    [InlineData(0, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(1000.1, 1)]
    [InlineData(1, -1)]
    public void A_bottle_that_cannot_be_is_the_callers_fault(double litres, int there) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BottleChoice.For(1, Sizes([litres], [there])));

    /// <summary>All choices one by one, in whole millilitres.</summary>
    [Property(MaxTest = 300)]
    public void No_other_choice_is_better(uint seed)
    {
        var chance = new Random((int)(seed % int.MaxValue));
        var sizes = Enumerable
            .Range(0, chance.Next(1, 4))
            .Select(_ => new BottleSize(chance.Next(50, 2000) / 1000.0, chance.Next(0, 6)))
            .ToArray();
        var needed = chance.Next(1, 6000) / 1000.0;
        var best = All(sizes)
            .Select(n => (Held: n.Select((c, i) => c * Millilitres(sizes[i])).Sum(), Count: n.Sum()))
            .Where(x => x.Held >= Math.Round(needed * 1000))
            .OrderBy(x => x.Held)
            .ThenBy(x => x.Count)
            .Cast<(int Held, int Count)?>()
            .FirstOrDefault();
        var found = BottleChoice.For(needed, sizes);
        Assert.Equal(best is null, found is null);
        if (found is null)
            return;
        Assert.Equal(best!.Value, ((int)Math.Round(found.Litres * 1000), found.Taken.Sum()));
        Assert.All(found.Taken.Zip(sizes), x => Assert.InRange(x.First, 0, x.Second.There));
    }

    [Fact]
    public void A_large_need_out_of_small_bottles_is_answered_in_time() =>
        Assert.Equal(2000, BottleChoice.For(200, Sizes([0.1, 0.25], [100_000, 0]))!.Taken[0]);

    private static int Millilitres(BottleSize size) => (int)Math.Round(size.Litres * 1000);

    private static IEnumerable<int[]> All(BottleSize[] sizes) =>
        sizes.Aggregate(
            (IEnumerable<int[]>)
                [
                    [],
                ],
            (all, size) => all.SelectMany(a => Enumerable.Range(0, size.There + 1).Select(n => (int[])[.. a, n]))
        );

    private static BottleSize[] Sizes(double[] litres, int[] there) =>
        [.. litres.Zip(there, (l, n) => new BottleSize(l, n))];
}
