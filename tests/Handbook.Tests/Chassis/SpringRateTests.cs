using FsCheck.Xunit;
using Witnessmark.Handbook.Chassis;

namespace Witnessmark.Handbook.Tests.Chassis;

public class SpringRateTests
{
    // Springs beside one another add their rates, one behind the other their compliances (textbook): read as sags at MR 1
    [Fact]
    public void Springs_beside_and_behind_one_another()
    {
        double Sag(double force, params double[] behind) => behind.Sum(k => force / k);
        Assert.Equal(16, From(300, Sag(500, 9 + 7), Sag(800, 9 + 7), 1), 1e-12);
        Assert.Equal(1 / (1 / 9.0 + 1 / 7.0), From(300, Sag(500, 9, 7), Sag(800, 9, 7), 1), 1e-12);
    }

    [Property]
    public void The_spring_that_made_the_sags_is_found_again(uint a, uint b, uint c, uint d)
    {
        var spring = new SpringInstalled(
            new(Chance.Between(10, 250, a)),
            new(Chance.Between(0, 3, b)),
            Chance.Between(1, 4, c),
            new(1)
        );
        var load = new WheelLoad(new(1200), new(Chance.Between(100, 900, d)));
        var setting = SuspensionSag.Of(load, spring, new(new(36), new(10), new(5)));
        Assert.Equal(
            spring.Rate.NewtonsPerMillimetre,
            From(load.Rider.Newtons, setting.StaticSag.Millimetres, setting.RiderSag.Millimetres, spring.MotionRatio),
            1e-6
        );
    }

    [Property]
    public void A_heavier_rider_for_the_same_sags_means_a_stiffer_spring(uint force) =>
        Assert.True(
            From(Chance.Between(100, 900, force) + 1, 10, 36, 2.5) > From(Chance.Between(100, 900, force), 10, 36, 2.5)
        );

    [Fact]
    public void Topped_out_without_the_rider_is_refused_and_a_hair_below_the_stop_is_not()
    {
        Assert.Equal("toppedOut", SpringRate.From(new(450), new(0), new(24), 2.5).Refusal!.Key);
        Assert.True(SpringRate.From(new(450), new(1e-6), new(24), 2.5).Holds);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(9)]
    public void A_rider_sag_not_above_the_static_sag_is_a_bug_of_the_caller(double rider) =>
        Assert.Throws<ArgumentException>(() => SpringRate.From(new(450), new(10), new(rider), 2.5));

    private static double From(double force, double without, double with, double ratio) =>
        SpringRate.From(new(force), new(without), new(with), ratio).Certain.Rate.NewtonsPerMillimetre;
}
