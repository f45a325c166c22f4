using FsCheck.Xunit;
using Witnessmark.Handbook.Chassis;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Chassis;

/// <summary>Checked against the equilibrium of forces at the wheel, solved by bisection over the travel.</summary>
public class SuspensionSagTests
{
    private static readonly WheelLoad Load = new(new(900), new(450));
    private static readonly SpringInstalled Spring = new(new(95), new(8), 2.6, new(1.5));
    private static readonly SagTargets Targets = new(new(36), new(10), new(5));

    [Property]
    public void Sags_are_where_the_spring_carries_the_wheel(uint a, uint b, uint c, uint d, uint e)
    {
        var (load, spring) = Some(a, b, c, d, e);
        var setting = SuspensionSag.Of(load, spring, Targets);
        Assert.Equal(Equilibrium(load.Sprung.Newtons, spring), setting.StaticSag.Millimetres, 1e-6);
        Assert.Equal(Equilibrium(load.WithRider.Newtons, spring), setting.RiderSag.Millimetres, 1e-6);
    }

    [Property]
    public void With_the_preload_changed_the_rider_sag_is_on_target(uint a, uint b, uint c, uint d, uint e)
    {
        var (load, spring) = Some(a, b, c, d, e);
        var setting = SuspensionSag.Of(load, spring, Targets);
        var changed = spring with { Preload = spring.Preload + setting.PreloadChange };
        Assert.Equal(36, Equilibrium(load.WithRider.Newtons, changed), 1e-6);
        Assert.Equal(setting.StaticAfter.Millimetres, Equilibrium(load.Sprung.Newtons, changed), 1e-6);
        Assert.Equal(setting.PreloadAfter.Millimetres, changed.Preload.Millimetres, 1e-12);
        Assert.Equal(setting.PreloadChange.Millimetres, setting.Turns.Count * spring.CollarPitch.Millimetres, 1e-9);
    }

    [Property]
    public void The_spring_for_both_meets_both_targets(uint a, uint b, uint c, uint d, uint e)
    {
        var (load, spring) = Some(a, b, c, d, e);
        var setting = SuspensionSag.Of(load, spring, Targets);
        var other = spring with { Rate = setting.SpringForBoth, Preload = setting.PreloadWithIt };
        Assert.Equal(36, Equilibrium(load.WithRider.Newtons, other), 1e-6);
        Assert.Equal(10, Equilibrium(load.Sprung.Newtons, other), 1e-6);
    }

    [Property]
    public void More_preload_and_a_stiffer_spring_never_sink_deeper(uint a, uint b, uint c, uint d, uint e)
    {
        var (load, spring) = Some(a, b, c, d, e);
        var before = SuspensionSag.Of(load, spring, Targets);
        var preloaded = SuspensionSag.Of(load, spring with { Preload = spring.Preload + new Length(1) }, Targets);
        var stiffer = SuspensionSag.Of(load, spring with { Rate = spring.Rate * 1.1 }, Targets);
        Assert.True(preloaded.RiderSag <= before.RiderSag && preloaded.StaticSag <= before.StaticSag);
        Assert.True(stiffer.RiderSag <= before.RiderSag && stiffer.StaticSag <= before.StaticSag);
        Assert.True(before.StaticSag <= before.RiderSag);
        Assert.Equal(before.PreloadAfter.Millimetres, preloaded.PreloadAfter.Millimetres, 1e-9);
    }

    // The preload that carries the rider exactly, 1350 · 2.6 / 95, and a little on either side
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.01, 0)]
    [InlineData(-0.01, 0.026)]
    public void Topped_out_is_no_sag_and_never_less(double beyond, double sag)
    {
        var spring = Spring with { Preload = new(1350 * 2.6 / 95 + beyond) };
        var setting = SuspensionSag.Of(Load, spring, Targets);
        Assert.Equal(sag, setting.RiderSag.Millimetres, 1e-9);
        Assert.Equal(0, setting.StaticSag.Millimetres);
        Assert.Equal(-36 / 2.6 - beyond, setting.PreloadChange.Millimetres, 1e-9);
    }

    // The spring for both leaves the static sag on its target of 10 mm
    [Theory]
    [InlineData(10, true)]
    [InlineData(10.000001, false)]
    [InlineData(0, true)]
    public void A_static_sag_on_its_minimum_is_enough(double minimum, bool enough) =>
        Assert.Equal(
            enough,
            SuspensionSag
                .Of(Load, Spring with { Rate = new(117) }, Targets with { StaticMinimum = new(minimum) })
                .StaticEnough
        );

    [Theory]
    [InlineData(36)]
    [InlineData(40)]
    public void A_static_target_not_below_the_rider_target_is_a_bug_of_the_caller(double target) =>
        Assert.Throws<ArgumentException>(() => SuspensionSag.Of(Load, Spring, Targets with { Static = new(target) }));

    private static (WheelLoad Load, SpringInstalled Spring) Some(uint a, uint b, uint c, uint d, uint e) =>
        (
            new(new(Chance.Between(300, 1500, a)), new(Chance.Between(150, 900, b))),
            new(
                new(Chance.Between(10, 250, c)),
                new(Chance.Between(0, 40, d)),
                Chance.Between(1, 4, e),
                new(Chance.Between(0.75, 2, a ^ e))
            )
        );

    // Virtual work: the spring, compressed by its preload and 1/MR of the wheel travel, pushes the wheel with 1/MR of its force.
    private static double Equilibrium(double force, SpringInstalled spring)
    {
        double Excess(double travel) =>
            spring.Rate.NewtonsPerMillimetre
                * (spring.Preload.Millimetres + travel / spring.MotionRatio)
                / spring.MotionRatio
            - force;
        if (Excess(0) >= 0)
            return 0;
        var (low, high) = (0.0, 1e5);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Excess(middle) < 0 ? (middle, high) : (low, middle);
        }
        return low;
    }
}
