using FsCheck.Xunit;
using Witnessmark.Handbook.Chassis;

namespace Witnessmark.Handbook.Tests.Chassis;

public class TrailTests
{
    // As published with the formula: R 0.6 m, ε 5°, d 22 mm gives 30.4091616895909 mm; its last digits are noise of its own arithmetic
    [Fact]
    public void A_published_solution() =>
        Assert.Equal(30.4091616895909, Trail.Of(new(600), new(5 * Math.PI / 180), new(22)).OnGround.Millimetres, 5e-11);

    // Coordinates: the axle stands at (0, R), the steering axis passes d behind it, square to itself, and leans back by ε
    [Property]
    public void Trail_is_where_the_steering_axis_meets_the_ground(uint a, uint b, uint c)
    {
        var (radius, rake, offset) = (
            Chance.Between(200, 400, a),
            Chance.Between(0, 1.2, b),
            Chance.Between(-60, 90, c)
        );
        var (sin, cos) = (Math.Sin(rake), Math.Cos(rake));
        var (x, y) = (-offset * cos, radius - offset * sin); // a point of the axis
        var ground = x + y * sin / cos; // down the axis, which leans back: forward on the way down
        var trail = Trail.Of(new(radius), new(rake), new(offset));
        Assert.Equal(ground, trail.OnGround.Millimetres, 1e-9);
        Assert.Equal(ground * cos, trail.Normal.Millimetres, 1e-9);
    }

    [Property]
    public void More_rake_or_less_offset_trails_more(uint a, uint b)
    {
        var (rake, offset) = (Chance.Between(0.05, 1, a), Chance.Between(-60, 90, b));
        var trail = Trail.Of(new(300), new(rake), new(offset)).OnGround;
        Assert.True(Trail.Of(new(300), new(rake), new(offset - 1)).OnGround > trail);
        Assert.True(
            Trail.Of(new(300), new(rake), new(40)).Normal > Trail.Of(new(300), new(rake - 0.01), new(40)).Normal
        );
    }
}
