using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Fluids;

public class OilTiltTests
{
    private static Angle Degrees(double degrees) => new(degrees * Math.PI / 180);

    // Oracle: a box sump cut into slices, the level searched that holds the same oil as upright
    [Property(MaxTest = 200)]
    public void A_box_of_slices_holds_its_oil_where_the_formula_says(uint a, uint b, uint c)
    {
        var (tilt, width, depth) = (
            Degrees(Chance.Between(-10, 10, a)),
            Chance.Between(100, 250, b),
            Chance.Between(50, 120, c)
        );
        var stick = width * (Chance.Between(0, 1, a ^ b) - 0.5);
        var middle = MiddleThatHolds(depth, width, Math.Tan(tilt.Radians));
        var expected = middle + stick * Math.Tan(tilt.Radians) - depth;
        Assert.Equal(expected, OilTilt.Of(tilt, new(stick), new(20)).Certain.Shift.Millimetres, 1e-6);
    }

    private static double MiddleThatHolds(double depth, double width, double slope)
    {
        const int slices = 400;
        var (low, high) = (0.0, 2 * depth);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            var held = 0.0;
            for (var s = 0; s < slices; s++)
                held += Math.Max(0, middle + slope * width * ((s + 0.5) / slices - 0.5)) * width / slices;
            if (held < depth * width)
                low = middle;
            else
                high = middle;
        }
        return low;
    }

    [Fact]
    public void The_error_is_the_shift_in_parts_of_the_marks()
    {
        var level = OilTilt.Of(Degrees(5), new(50), new(25)).Certain;
        Assert.Equal(level.Shift.Millimetres / 25, level.Error, 1e-12);
        Assert.True(level.Error > 0);
    }

    [Theory]
    [InlineData(10, true)]
    [InlineData(-10, true)]
    [InlineData(10.00000000001, true)] // a rounding
    [InlineData(10.001, false)]
    [InlineData(-10.001, false)]
    [InlineData(90, false)]
    public void Ten_degrees_are_the_end(double degrees, bool holds)
    {
        var answer = OilTilt.Of(Degrees(degrees), new(50), new(25));
        Assert.Equal(holds, answer.Holds);
        Assert.Equal(holds ? null : "tooFarOver", answer.Refusal?.Key);
    }

    [Fact]
    public void Marks_that_are_not_apart_are_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => OilTilt.Of(new(0), new(1), new(0)));
}
