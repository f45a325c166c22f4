using FsCheck.Xunit;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ChainLengthTests
{
    private static LinkCount For(int front, int rear, double pitch, double centre) =>
        ChainLength.From(new(front, rear, new(pitch)), new(centre)).Certain;

    // Oracle: the loop of the other test class, and bisection for the distance
    [Property(MaxTest = 200)]
    public void Links_and_distance_are_those_of_bisection(uint a, uint b, uint c)
    {
        var (front, rear) = ((int)Chance.Between(11, 20, a), (int)Chance.Between(30, 60, b));
        var centre = Chance.Between(450, 700, c);
        var told = For(front, rear, 15.875, centre);
        var loop = new ChainLoop(front, rear, 15.875);
        Assert.Equal(loop.Taut(centre) / 15.875, told.Exact, 1e-9);
        Assert.True(told.Links % 2 == 0 && told.Links >= told.Exact && told.Links < told.Exact + 2);
        var apart = PolygonLoop.Bisected(x => loop.Taut(x) - told.Links * 15.875, centre, centre + 40);
        Assert.Equal(apart, told.CentreDistance.Millimetres, 1e-9);
        Assert.Equal(apart - centre, told.Shift.Millimetres, 1e-9);
    }

    // V. B. Bhandari, Design of Machine Elements, example 14.3, published solution code (read): the usual approximation,
    // which is low by a few thousandths of a link. Second row: the pitch-circle approximation printed as 114.8 for 20 and
    // 63 teeth at 36 pitches (read in a quotation of a textbook; the distance inferred there).
    [Theory]
    [InlineData(21, 63, 12.7, 500, 121.875097, 0.01, 122)]
    [InlineData(20, 63, 12.7, 36 * 12.7, 114.8, 0.05, 116)]
    public void Published_examples(
        int front,
        int rear,
        double pitch,
        double centre,
        double exact,
        double within,
        int links
    )
    {
        var told = For(front, rear, pitch, centre);
        Assert.Equal(exact, told.Exact, within);
        Assert.Equal(links, told.Links);
    }

    [Fact]
    public void An_even_count_met_exactly_stays()
    {
        var taut = For(15, 45, 15.875, 580).CentreDistance;
        var again = For(15, 45, 15.875, taut.Millimetres);
        Assert.Equal(104, again.Links);
        Assert.Equal(0, again.Shift.Millimetres, 1e-8);
    }

    [Fact]
    public void Sprockets_that_touch_are_refused() =>
        Assert.Equal(
            "sprocketsTouch",
            ChainLength.From(new(15, 45, Sprockets.FiveEighthsInch), new Length(151)).Refusal?.Key
        );

    [Property(MaxTest = 300)]
    public void Every_distance_is_answered(uint a, uint b, uint c, uint d)
    {
        var sprockets = new Sprockets(
            (int)Chance.Between(5, 300, a),
            (int)Chance.Between(5, 300, b),
            new Length(Chance.Between(4, 100, c))
        );
        var answer = ChainLength.From(sprockets, new Length(Chance.Between(0.1, 10_000, d)));
        Assert.True(answer.Refusal is not null || answer.Certain.Shift.Millimetres >= -1e-6);
    }
}
