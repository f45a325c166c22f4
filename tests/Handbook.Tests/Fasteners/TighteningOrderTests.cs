using FsCheck.Xunit;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Fasteners;

public class TighteningOrderTests
{
    [Property(MaxTest = 300)]
    public void Everybody_has_a_turn_exactly_once(byte fasteners, byte rows, byte columns)
    {
        var n = fasteners + 1;
        Assert.Equal(Enumerable.Range(1, n), TighteningOrder.Circle(n).Order());
        var (r, c) = (rows % 50 + 1, columns % 50 + 1);
        Assert.Equal(Enumerable.Range(1, r * c), TighteningOrder.Plate(r, c).Order());
    }

    [Property(MaxTest = 100)]
    public void On_an_even_circle_every_second_is_opposite_to_the_one_before(byte half)
    {
        var n = 2 * (half + 1);
        Assert.All(TighteningOrder.Circle(n).Chunk(2), pair => Assert.Equal(n / 2, pair[1] - pair[0]));
    }

    // Oracle: angles of the axes in degrees, every axis left compared with the last
    [Property(MaxTest = 100)]
    public void The_next_pair_is_the_farthest_that_is_left_and_the_lowest_of_equals(byte half)
    {
        var n = 2 * (half % 40 + 2);
        var firsts = TighteningOrder.Circle(n).Where((_, i) => i % 2 == 0).ToArray();
        for (var i = 1; i < firsts.Length; i++)
        {
            int Apart(int a)
            {
                var steps = Math.Abs(a - firsts[i - 1]);
                return Math.Min(steps, n / 2 - steps);
            }
            var left = Enumerable.Range(1, n / 2).Except(firsts[..i]).ToArray();
            Assert.Equal(left.Where(a => Apart(a) == left.Max(Apart)).Min(), firsts[i]);
        }
    }

    [Property(MaxTest = 200)]
    public void On_a_plate_no_pair_lies_farther_out_than_a_later_one(byte rows, byte columns)
    {
        var (r, c) = (rows % 9 + 1, columns % 9 + 1);
        double Out(int n) => Math.Pow((n - 1) / c - (r - 1) / 2.0, 2) + Math.Pow((n - 1) % c - (c - 1) / 2.0, 2);
        var order = TighteningOrder.Plate(r, c);
        for (var i = 1; i < order.Length; i++)
            Assert.True(Out(order[i - 1]) <= Out(order[i]) + 1e-9);
        // The middle one of an odd number is its own mirror and goes first
        var pairs = order.Skip(order.Length % 2).Chunk(2);
        Assert.All(pairs, pair => Assert.Equal(r * c + 1, pair.Sum()));
    }

    [Fact]
    public void Every_stage_is_completed_before_the_next()
    {
        var steps = TighteningOrder.Steps([1, 3, 2, 4], new Torque(24), [new(0.5), new(1)]).ToArray();
        Assert.Equal([1, 3, 2, 4, 1, 3, 2, 4], steps.Select(s => s.Fastener));
        Assert.Equal([12, 12, 12, 12, 24, 24, 24, 24], steps.Select(s => s.Torque.NewtonMetres));
    }

    [Fact]
    public void No_fastener_is_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>("fasteners", () => TighteningOrder.Circle(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningOrder.Plate(0, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => TighteningOrder.Plate(3, 0));
    }
}
