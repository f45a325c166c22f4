using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class AxleDifferenceTests
{
    private static SideComparison Of(double[] left, double[] right, double u, double tolerance) =>
        AxleDifference.Of(
            [.. left.Select(l => new Length(l))],
            [.. right.Select(r => new Length(r))],
            new(u),
            new(tolerance)
        );

    [Fact]
    public void One_reading_a_side_has_the_width_of_two_readings()
    {
        var sides = Of([29.2], [28.9], 0.1, 0.5);
        Assert.Equal(1.96 * Math.Sqrt(2) * 0.1, sides.Uncertainty.Millimetres, 1e-12);
        Assert.Equal(Call.Unproven, sides.Call);
    }

    // Student's t, one degree of freedom, 0.975: 12.706 (any table)
    [Fact]
    public void Two_readings_against_one_have_one_degree_of_freedom()
    {
        var sides = Of([29.0, 29.2], [29.1], 0, 0.5);
        Assert.Equal(12.706 * Math.Sqrt(0.02 * 1.5), sides.Uncertainty.Millimetres, 0.0002);
    }

    // Halves and quarters, so that the sums are exact in binary
    [Theory]
    [InlineData(0.5, Call.Inside)]
    [InlineData(0.4999, Call.Outside)]
    public void The_tolerance_itself_is_inside(double tolerance, Call call) =>
        Assert.Equal(call, Of([29.5], [29.0], 0, tolerance).Call);

    [Fact]
    public void A_side_without_a_reading_is_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentException>("left", () => Of([], [29], 0.1, 0.5));
        Assert.Throws<ArgumentException>("right", () => Of([29], [], 0.1, 0.5));
    }
}
