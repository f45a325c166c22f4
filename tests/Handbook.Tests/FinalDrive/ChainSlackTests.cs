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
