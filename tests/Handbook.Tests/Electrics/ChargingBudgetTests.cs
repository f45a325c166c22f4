using FsCheck.Xunit;
using Witnessmark.Handbook.Electrics;

namespace Witnessmark.Handbook.Tests.Electrics;

// Arithmetic throughout: engine speeds in Hz
public class ChargingBudgetTests
{
    private static readonly OutputPoint[] Output =
    [
        new(new(20), new(14)),
        new(new(50), new(26)),
        new(new(100), new(31)),
        new(new(150), new(28)),
    ];

    [Theory]
    [InlineData(0, 20)]
    [InlineData(14, 20)]
    [InlineData(20, 35)]
    [InlineData(26, 50)]
    [InlineData(28.5, 75)]
    [InlineData(31, 100)]
    public void Break_even_is_the_lowest_speed_that_carries_the_demand(double demand, double speed) =>
        Assert.Equal(speed, Of(demand).BreakEven!.Value.Hertz, 1e-9);

    [Fact]
    public void No_speed_carries_more_than_the_highest_output() => Assert.Null(Of(31.001).BreakEven);

    [Theory]
    [InlineData(20, -6)]
    [InlineData(35, 0)]
    [InlineData(50, 6)]
    [InlineData(125, 9.5)]
    [InlineData(150, 8)]
    public void Balance_at_idle_is_output_less_demand(double idle, double balance) =>
        Assert.Equal(balance, Of(20, idle).AtIdle!.Value.Amperes, 1e-9);

    [Theory]
    [InlineData(19.999)]
    [InlineData(150.001)]
    [InlineData(0)]
    public void Outside_the_points_nothing_is_guessed_and_the_rest_still_holds(double idle)
    {
        var answer = ChargingBudget.Of(Output, [new(new(280), 1)], new(14), new(idle));
        Assert.Equal("outsideTable", answer.Refusal!.Key);
        Assert.Null(answer.Value!.AtIdle);
        Assert.Equal(20, answer.Value.Demand.Amperes, 1e-12);
        Assert.Equal(35, answer.Value.BreakEven!.Value.Hertz, 1e-9);
        Assert.Equal(4, answer.Value.Curve.Count);
    }

    // 55 W, 21 W half the time, 10 W never, at 13.1 V: 65.5 W
    [Fact]
    public void A_load_counts_for_the_share_of_the_time_it_is_on() =>
        Assert.Equal(
            5,
            ChargingBudget
                .Of(Output, [new(new(55), 1), new(new(21), 0.5), new(new(10), 0)], new(13.1), new(20))
                .Certain.Demand.Amperes,
            1e-12
        );

    [Property]
    public void At_break_even_the_balance_is_nothing_and_below_it_is_negative(uint chance)
    {
        var demand = Chance.Between(14.01, 31, chance);
        var speed = Of(demand).BreakEven!.Value.Hertz;
        Assert.Equal(0, Of(demand, speed).AtIdle!.Value.Amperes, 1e-9);
        Assert.True(Of(demand, Math.Max(20, speed - 0.01)).AtIdle!.Value.Amperes < 0);
    }

    [Property]
    public void The_order_of_the_points_and_of_the_loads_does_not_matter(int seed)
    {
        var random = new Random(seed);
        var shuffled = Output.OrderBy(_ => random.Next()).ToArray();
        var (one, other) = (
            Of(20),
            ChargingBudget.Of(shuffled, [new(new(140), 1), new(new(140), 1)], new(14), new(35)).Certain
        );
        Assert.Equal(one.BreakEven, other.BreakEven);
        Assert.Equal(one.Curve, other.Curve);
    }

    [Fact]
    public void The_curve_is_the_balance_at_each_point_in_rising_order() =>
        Assert.Equal(
            [(20, 14, -6), (50, 26, 6), (100, 31, 11), (150, 28, 8)],
            Of(20).Curve.Select(p => (p.EngineSpeed.Hertz, p.Current.Amperes, p.Balance.Amperes))
        );

    [Fact]
    public void One_point_is_known_at_its_own_speed_only()
    {
        OutputPoint[] one = [new(new(20), new(14))];
        Assert.Equal(
            4,
            ChargingBudget.Of(one, [new(new(140), 1)], new(14), new(20)).Certain.AtIdle!.Value.Amperes,
            1e-12
        );
        Assert.False(ChargingBudget.Of(one, [new(new(140), 1)], new(14), new(21)).Holds);
    }

    [Fact]
    public void No_point_and_two_at_one_speed_are_bugs_of_the_caller()
    {
        Assert.Throws<ArgumentException>(() => ChargingBudget.Of([], [], new(14), new(20)));
        Assert.Throws<ArgumentException>(() => ChargingBudget.Of([Output[0], Output[0]], [], new(14), new(20)));
    }

    private static Budget Of(double demand, double idle = 35) =>
        ChargingBudget.Of(Output, [new(new(demand * 14), 1)], new(14), new(idle)).Certain;
}
