using Witnessmark.Handbook.Numerics;

namespace Witnessmark.Handbook.Tests.Numerics;

public class PiecewiseLinearTests
{
    private static readonly PiecewiseLinear Curve = new([(0, 1), (2, 5), (4, 3)]);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.5, 2)]
    [InlineData(2, 5)]
    [InlineData(3, 4)]
    [InlineData(4, 3)]
    [InlineData(4 + 1e-13, 3)]
    [InlineData(-1e-13, 1)]
    public void Height(double x, double y) => Assert.Equal(y, Curve.At(x)!.Value, 1e-12);

    [Theory]
    [InlineData(-1e-9)]
    [InlineData(4.000000001)]
    [InlineData(double.NaN)]
    public void Outside_it_has_no_height(double x) => Assert.Null(Curve.At(x));

    [Theory]
    [InlineData(-7, 0)]
    [InlineData(1, 0)]
    [InlineData(3, 1)]
    [InlineData(5, 2)]
    public void First_place_that_reaches_a_height(double y, double x) =>
        Assert.Equal(x, Curve.FirstReaching(y)!.Value, 1e-12);

    [Fact]
    public void A_height_that_is_missed_by_its_last_digit_is_reached_at_the_point() =>
        Assert.Equal(2, Curve.FirstReaching(5 + 1e-13));

    // The slip is 10⁻¹² of the span and of the height, however large they are
    [Fact]
    public void The_slip_grows_with_the_span_and_the_height()
    {
        var large = new PiecewiseLinear([(0, 0), (1e6, 1e6)]);
        Assert.Equal(1e6, large.At(1e6 + 5e-7));
        Assert.Null(large.At(1e6 + 2e-6));
        Assert.Equal(1e6, large.FirstReaching(1e6 + 5e-7));
        Assert.Null(large.FirstReaching(1e6 + 2e-6));
    }

    [Fact]
    public void A_height_of_zero_is_reached_where_the_curve_crosses_it() =>
        Assert.Equal(1, new PiecewiseLinear([(0, -1), (2, 1)]).FirstReaching(0));

    [Fact]
    public void A_height_above_all_points_is_never_reached() => Assert.Null(Curve.FirstReaching(5.001));

    [Fact]
    public void Points_must_rise_and_there_must_be_one()
    {
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([(0, 1), (0, 2)]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([(1, 1), (0, 2)]));
        Assert.Throws<ArgumentException>(() => new PiecewiseLinear([(0, 1), (2, 2), (1, 3)]));
    }
}
