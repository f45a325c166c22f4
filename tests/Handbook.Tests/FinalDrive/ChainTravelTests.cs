using FsCheck.Xunit;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ChainTravelTests
{
    private static Angle Degrees(double degrees) => new(degrees * Math.PI / 180);

    private static Swingarm Arm(double length, double offset, double inline, double bench, double droop, double bump) =>
        new(new(length), new(offset), Degrees(inline), Degrees(bench), Degrees(droop), Degrees(bump));

    private static Answer<TightestPlace> Travel(Swingarm arm, int front, int rear, double slack, double margin = 5) =>
        ChainTravel.From(arm, new(front, rear, Sprockets.FiveEighthsInch), new(slack), new(margin));

    // Distances in coordinates at 4001 angles: pivot at the origin, axle and front sprocket where they are
    private static (double Bench, double Tightest, double Angle) Swept(Swingarm arm)
    {
        double Apart(double angle)
        {
            var (x, y) = (-arm.Length.Millimetres * Math.Cos(angle), -arm.Length.Millimetres * Math.Sin(angle));
            var sprocket = arm.PivotToFrontSprocket.Millimetres;
            var (fx, fy) = (sprocket * Math.Cos(arm.Inline.Radians), sprocket * Math.Sin(arm.Inline.Radians));
            return Math.Sqrt((x - fx) * (x - fx) + (y - fy) * (y - fy));
        }
        var angles = Enumerable
            .Range(0, 4001)
            .Select(i => arm.Bump.Radians + (arm.Droop.Radians - arm.Bump.Radians) * i / 4000);
        var tightest = angles.MaxBy(Apart);
        return (Apart(arm.Bench.Radians), Apart(tightest), tightest);
    }

    [Theory]
    [InlineData(585, 70, 3, 8, 10.5, -3, 15, 45, 30)]
    [InlineData(600, 78, 2, 13, 16, -6, 14, 50, 55)]
    [InlineData(540, 62, 4, 7, 9, -2, 16, 42, 28)]
    [InlineData(560, 66, 1, 9, 11, 3.5, 17, 40, 26)] // in line outside the travel
    public void The_tightest_place_is_that_of_a_sweep_in_coordinates(
        double length,
        double offset,
        double inline,
        double bench,
        double droop,
        double bump,
        int front,
        int rear,
        double slack
    )
    {
        var arm = Arm(length, offset, inline, bench, droop, bump);
        var (atBench, atTightest, angle) = Swept(arm);
        var (there, here) = (
            new PolygonLoop(front, rear, 15.875, atTightest),
            new PolygonLoop(front, rear, 15.875, atBench)
        );
        var chain = here.LengthFor(slack);
        var told = Travel(arm, front, rear, slack).Certain;
        Assert.Equal(angle, told.Angle.Radians, (droop - bump) * Math.PI / 180 / 4000);
        Assert.Equal(chain < there.Taut, told.Taut);
        Assert.Equal(Math.Max(0, there.Taut - chain), told.Overstretch.Millimetres, 1e-3);
        Assert.Equal(told.Taut ? 0 : there.Slack(chain), told.Slack.Millimetres, 0.02);
        Assert.Equal(here.Slack(there.LengthFor(5)), told.BenchSlackNeeded.Millimetres, 0.02);
    }

    [Property(MaxTest = 200)]
    public void The_bench_slack_needed_leaves_the_margin(uint a, uint b)
    {
        var (margin, bench) = (Chance.Between(0.5, 20, a), Chance.Between(4, 11, b));
        var arm = Arm(585, 70, 3, bench, 12, -3);
        var needed = Travel(arm, 15, 45, 30, margin).Certain.BenchSlackNeeded.Millimetres;
        Assert.Equal(margin, Travel(arm, 15, 45, needed, margin).Certain.Slack.Millimetres, 1e-6);
    }

    [Fact]
    public void A_bench_position_tighter_than_the_whole_travel_needs_no_slack()
    {
        // Read in line, but the travel never comes there
        var told = Travel(Arm(585, 78, 3, 3, 14, 10), 15, 45, 0, 5).Certain;
        Assert.Equal(0, told.BenchSlackNeeded.Millimetres);
        Assert.True(told.Slack.Millimetres > 5);
    }

    [Fact]
    public void A_chain_without_slack_at_the_tightest_place_is_taut_and_lacks_nothing()
    {
        var told = Travel(Arm(585, 70, 3, 3, 10, -3), 15, 45, 0).Certain;
        Assert.True(told.Taut);
        Assert.Equal((0, 0), (told.Slack.Millimetres, told.Overstretch.Millimetres));
    }

    [Fact]
    public void Slack_that_no_loop_can_have_is_refused() =>
        Assert.Equal("tooSlack", Travel(Arm(585, 70, 3, 8, 10, -3), 15, 45, 600).Refusal?.Key);

    [Fact]
    public void A_swingarm_shorter_than_the_sprockets_is_refused() =>
        Assert.Equal("sprocketsTouch", Travel(Arm(60, 70, 3, 8, 10, -3), 15, 45, 30).Refusal?.Key);
}
