using FsCheck.Xunit;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ChainSlackTests
{
    private static Sprockets Drive(int front, int rear) => new(front, rear, Sprockets.FiveEighthsInch);

    private static Answer<Slackness> At(int front, int rear, int links, double centre) =>
        ChainSlack.From(Drive(front, rear), links, new Length(centre));

    [Theory]
    [InlineData(15, 45, 104, 581.34)]
    [InlineData(14, 50, 104, 563.97)]
    [InlineData(17, 38, 110, 650.79)]
    [InlineData(45, 15, 104, 581.34)] // the larger in front: the geometry does not know which is which
    [InlineData(30, 30, 104, 585)]
    public void Slack_is_that_of_two_polygons_in_coordinates(int front, int rear, int links, double centre)
    {
        var loop = new PolygonLoop(front, rear, 15.875, centre);
        var told = At(front, rear, links, centre).Certain;
        Assert.Equal(links * 15.875 - loop.Taut, told.Excess.Millimetres, 1e-4);
        Assert.Equal(loop.Run, told.Run.Millimetres, 0.05); // to the corner, not to the point of tangency
        Assert.Equal(loop.Slack(links * 15.875), told.Slack!.Value.Millimetres, 0.005);
    }

    [Property(MaxTest = 200)]
    public void Slack_for_each_length_of_axle_is_the_slope_of_the_slack(uint a, uint b, uint c)
    {
        var (front, rear) = ((int)Chance.Between(12, 18, a), (int)Chance.Between(36, 52, b));
        var excess = Chance.Between(0.3, 4.3, c);
        // A centre distance with a known excess on a chain of 110 links
        var centre = PolygonLoop.Bisected(
            x => 110 * 15.875 - At(front, rear, 110, x).Value!.Excess.Millimetres - (110 * 15.875 - excess),
            500,
            700
        );
        double Slack(double x) => At(front, rear, 110, x).Certain.Slack!.Value.Millimetres;
        const double step = 1e-4;
        Assert.Equal(
            (Slack(centre + step) - Slack(centre - step)) / (2 * step),
            At(front, rear, 110, centre).Certain.SlackPerAxle!.Value.MillimetresPerMillimetre,
            2e-4
        );
    }

    [Fact]
    public void A_hair_of_excess_gives_the_root_of_two_run_excess()
    {
        var taut = At(15, 45, 104, 582.4359).Value!;
        Assert.InRange(taut.Excess.Millimetres, 0, 1e-4);
        Assert.Equal(
            Math.Sqrt(2 * taut.Run.Millimetres * taut.Excess.Millimetres),
            taut.Slack!.Value.Millimetres,
            1e-6
        );
    }

    // Equal sprockets: the taut loop is 2·L + 30·P, and √(2Le) is all there is to so small an excess
    [Fact]
    public void An_excess_too_small_for_the_legs_gives_the_root_too()
    {
        var hair = At(30, 30, 104, 587.375 - 2.5e-7).Certain;
        Assert.Equal(5e-7, hair.Excess.Millimetres, 1e-11);
        Assert.Equal(Math.Sqrt(2 * 587.375 * 5e-7), hair.Slack!.Value.Millimetres, 1e-6);
    }

    // Oracle: the middle pushed to where it meets the other run (twice the radius, equal sprockets far apart) or the larger
    // sprocket (r − √(r² − (L/2)²), sprockets close together); the side that takes less chain decides
    [Theory]
    [InlineData(30, 30, 400)]
    [InlineData(15, 60, 200)]
    [InlineData(60, 15, 200)]
    public void The_longest_chain_is_the_one_whose_middle_reaches_the_other_run_or_a_sprocket(
        int front,
        int rear,
        double least
    )
    {
        var (r1, r2) = (front * 15.875 / Math.Tau, rear * 15.875 / Math.Tau);
        double Run(double centre) => Math.Sqrt(centre * centre - (r2 - r1) * (r2 - r1));
        double Depth(double half) => new[] { r1 + r2, Touched(r1, half), Touched(r2, half) }.Min();
        double Longest(double centre)
        {
            var (run, depth) = (Run(centre), Depth(Run(centre) / 2));
            return Math.Min(Around(r1, r2, run, depth), Around(r1, r2, run, -depth));
        }
        // The links whose longest excess is met at a distance somewhat above the least
        var shape = At(front, rear, 2000, least).Value!;
        var links = (int)Math.Ceiling((2000 * 15.875 - shape.Excess.Millimetres + Longest(least)) / 15.875) + 1;
        double Excess(double centre) => At(front, rear, links, centre).Value!.Excess.Millimetres;
        var met = PolygonLoop.Bisected(c => Longest(c) - Excess(c), least, least + 50);
        Assert.True(At(front, rear, links, met + 1e-4).Holds);
        Assert.Equal("tooSlack", At(front, rear, links, met - 1e-4).Refusal?.Key);
    }

    private static double Touched(double r, double half) =>
        half >= r ? double.PositiveInfinity : r - Math.Sqrt(r * r - half * half);

    // The tangents from the middle to both sprockets and the arcs between old and new contact, beyond the straight run
    private static double Around(double r1, double r2, double run, double h)
    {
        double Leg(double r)
        {
            var d = double.Hypot(run / 2, r + h);
            // on the sprocket itself, rounding may put the middle a hair inside it
            return Math.Sqrt(Math.Max(0, d * d - r * r))
                + r * (Math.Atan2(run / 2, r + h) - Math.Acos(Math.Min(1, r / d)));
        }
        return Leg(r1) + Leg(r2) - run;
    }

    [Fact]
    public void A_chain_shorter_than_the_loop_is_taut_and_the_geometry_still_holds()
    {
        var answer = At(15, 45, 104, 583);
        Assert.Equal("taut", answer.Refusal?.Key);
        Assert.Equal(-1.119, answer.Value!.Excess.Millimetres, 0.001); // 2 cos β for each mm beyond 582.4359
        Assert.Null(answer.Value.Slack);
        Assert.Null(answer.Value.SlackPerAxle);
    }

    [Fact]
    public void Sprockets_that_overlap_are_refused()
    {
        // r₁ + r₂ = 60·15.875/2π = 151.595
        Assert.Equal("sprocketsTouch", At(15, 45, 104, 151.59).Refusal?.Key);
        Assert.NotEqual("sprocketsTouch", At(15, 45, 104, 151.60).Refusal?.Key);
    }

    [Fact]
    public void A_chain_that_would_reach_the_other_run_is_too_slack()
    {
        Assert.Equal("tooSlack", At(15, 45, 200, 581).Refusal?.Key);
        Assert.Null(At(15, 45, 200, 581).Value!.Slack);
    }

    [Property(MaxTest = 500)]
    public void Every_drive_is_answered_or_refused_and_never_fails(uint a, uint b, uint c, uint d)
    {
        var answer = At(
            (int)Chance.Between(5, 300, a),
            (int)Chance.Between(5, 300, b),
            (int)Chance.Between(10, 2000, c),
            Chance.Between(0.1, 10_000, d)
        );
        Assert.True(answer.Refusal is not null || double.IsFinite(answer.Certain.Slack!.Value.Millimetres));
    }
}
