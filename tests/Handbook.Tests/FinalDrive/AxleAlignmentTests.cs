using FsCheck.Xunit;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class AxleAlignmentTests
{
    private static AxlePosition Of(double left, double right, bool grows, double ys, double slack, double target) =>
        AxleAlignment.Of(
            new(new(left), new(right), grows, new(240), new(ys)),
            new(new(slack), new(target), new(2300)),
            new(1.25),
            new(new Length(585), new Length(630), new Length(1420))
        );

    // Oracle: both axle ends as points in the plane, moved by the turns; then straight, and the chain's plane where it shall be.
    [Property(MaxTest = 500)]
    public void After_the_turns_the_axle_is_straight_and_the_chain_has_moved_as_wanted(uint a, uint b, uint c, uint d)
    {
        var (left, right) = (Chance.Between(26, 33, a), Chance.Between(26, 33, b));
        var (ys, slack) = (Chance.Between(-100, 100, c), Chance.Between(10, 60, d));
        var position = Of(left, right, true, ys, slack, 24.4);
        var (newLeft, newRight) = (left + position.TurnsLeft.Count * 1.25, right + position.TurnsRight.Count * 1.25);
        Assert.Equal(newLeft, newRight, 1e-9);
        double AtChain(double l, double r) => r + (l - r) * (120 + ys) / 240;
        var moved = AtChain(newLeft, newRight) - AtChain(left, right);
        Assert.Equal(slack * slack - 24.4 * 24.4, 2300 * moved, 1e-6);
    }

    // Oracle: the wheel's centre line turned in the plane by coordinates
    [Theory]
    [InlineData(28.89, 29.80)]
    [InlineData(29.2, 28.9)]
    [InlineData(31.45, 31.10)]
    public void Offsets_agree_with_coordinates(double left, double right)
    {
        var position = Of(left, right, true, 78, 26, 26);
        // x forward: an end further back has the smaller x
        var (dx, dy) = (right - left, 240.0);
        var length = Math.Sqrt(dx * dx + dy * dy);
        var (forward, sideways) = (dy / length, -dx / length);
        Assert.Equal(585 * sideways / forward, position.LateralAtSprocket!.Value.Millimetres, 0.001);
        Assert.Equal(630 * sideways, position.ToeOverTyre!.Value.Millimetres, 0.001);
        Assert.Equal(1420 * sideways / forward, position.MissAtFrontAxle!.Value.Millimetres, 0.001);
        Assert.Equal(Math.Atan2(sideways, forward), position.Skew.Radians, 1e-12);
    }

    [Fact]
    public void Readings_from_the_end_of_the_swingarm_turn_the_sign()
    {
        var marks = Of(28.89, 29.80, true, 78, 26, 26);
        var ends = Of(28.89, 29.80, false, 78, 26, 26);
        Assert.Equal(-marks.Difference.Millimetres, ends.Difference.Millimetres, 1e-12);
        Assert.Equal(-marks.TurnsRight.Count, ends.TurnsRight.Count, 1e-12);
    }

    [Fact]
    public void What_nobody_measured_is_left_out()
    {
        var position = AxleAlignment.Of(
            new(new(30), new(29), true, new(240), new(78)),
            new(new(26), new(26), new(2300)),
            new(1.25)
        );
        Assert.Null(position.LateralAtSprocket);
        Assert.Null(position.ToeOverTyre);
        Assert.Null(position.MissAtFrontAxle);
    }
}
