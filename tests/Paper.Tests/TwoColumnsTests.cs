using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Tests;

public sealed class TwoColumnsTests
{
    [Theory]
    [InlineData(new double[] { }, 100, 0, 0)]
    [InlineData(new double[] { 30 }, 100, 1, 0)]
    [InlineData(new double[] { 30, 30, 30 }, 100, 2, 1)] // a left one that is longer, where they cannot be alike
    [InlineData(new double[] { 50, 10, 10, 10 }, 100, 1, 3)]
    [InlineData(new double[] { 60, 60, 60, 60 }, 100, 1, 1)] // the other two wait for a page
    [InlineData(new double[] { 60, 30, 20, 90 }, 100, 2, 1)]
    [InlineData(new double[] { 120, 10 }, 100, 0, 0)] // taller than the page: the caller has to take it apart
    public void What_goes_left_and_right(double[] heights, double room, int left, int right) =>
        Assert.Equal(new TwoColumns(left, right), TwoColumns.Of(heights, room));

    [Fact]
    public void Nothing_is_left_out_and_nothing_is_taller_than_the_room()
    {
        var chance = new Random(412);
        for (var round = 0; round < 500; round++)
        {
            double[] heights = [.. Enumerable.Range(0, chance.Next(1, 30)).Select(_ => (double)chance.Next(10, 60))];
            var pages = 0;
            for (var rest = heights; rest.Length > 0; pages++)
            {
                var (left, right) = TwoColumns.Of(rest, 100);
                Assert.InRange(left, 1, rest.Length);
                Assert.True(rest.Take(left).Sum() <= 100 && rest.Skip(left).Take(right).Sum() <= 100);
                Assert.True(
                    left + right == rest.Length
                        || rest.Skip(left + right).First() > 100 - rest.Skip(left).Take(right).Sum()
                );
                rest = rest[(left + right)..];
            }
            Assert.InRange(pages, Math.Ceiling(heights.Sum() / 200), heights.Length);
        }
    }
}
