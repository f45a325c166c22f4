using FsCheck.Xunit;
using Witnessmark.Handbook.Fluids;

namespace Witnessmark.Handbook.Tests.Fluids;

public class OilWarmthTests
{
    private static Answer<WarmedOil> Of(double oil, double metal, double from, double to) =>
        OilWarmth.Of(new(3), new(0.5), new(oil), new(metal), new(from), new(to));

    // Oracle: a cube of metal whose edge grows linearly, filled by oil in a hundred small steps of temperature
    [Property(MaxTest = 200)]
    public void Small_steps_come_to_the_same_within_the_second_order(uint a, uint b, uint c)
    {
        var (oil, metal) = (Chance.Between(0.0005, 0.0009, a), Chance.Between(0, 0.00003, b));
        var warmer = Chance.Between(-80, 80, c);
        const int steps = 100;
        var filled = 1.0;
        for (var i = 0; i < steps; i++)
        {
            var at = warmer * i / steps;
            var edge = (1 + metal * (at + warmer / steps)) / (1 + metal * at);
            filled *= (1 + oil * (at + warmer / steps)) / (1 + oil * at) / (edge * edge * edge);
        }
        var change = Of(oil, metal, 20, 20 + warmer).Certain.VolumeChange.Litres;
        Assert.Equal(3 * (filled - 1), change, 1e-4);
        Assert.Equal(Math.Sign(oil - 3 * metal) * Math.Sign(warmer), Math.Sign(change));
    }

    [Fact]
    public void The_level_changes_by_the_volume_in_parts_of_the_marks()
    {
        var warmed = Of(0.0007, 0.000023, 20, 90).Certain;
        Assert.Equal(warmed.VolumeChange.Litres / 0.5, warmed.LevelChange, 1e-12);
    }

    [Theory]
    [InlineData(0.002, 0, 0, 100, true)]
    [InlineData(0.00201, 0, 0, 100, false)]
    [InlineData(0.00201, 0, 100, 0, false)]
    [InlineData(0.0007, 0.00066, 0, 100, true)]
    [InlineData(0.0007, 0.00067, 0, 100, false)]
    [InlineData(0.0007, 0.00067, 100, 0, false)]
    public void A_fifth_is_the_most_that_oil_or_case_may_grow(
        double oil,
        double metal,
        double from,
        double to,
        bool holds
    ) => Assert.Equal(holds ? null : "expansionTooLarge", Of(oil, metal, from, to).Refusal?.Key);

    [Fact]
    public void No_volume_between_the_marks_is_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            OilWarmth.Of(new(3), new(0), new(0.0007), new(0), new(20), new(90))
        );
}
