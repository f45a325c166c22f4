using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

public class BeltAndIdleTests
{
    // Mersenne's laws (Harmonie universelle, 1636): f ~ 1/L, f ~ √T, f ~ 1/√m
    [Theory]
    [InlineData(2, 1, 1, 4)]
    [InlineData(1, 2, 1, 4)]
    [InlineData(1, 1, 2, 2)]
    public void Tension_grows_as_the_laws_of_the_string_say(double f, double span, double mass, double times) =>
        Assert.Equal(
            times * BeltTension.Of(new(90), new(300), new(0.1)).Newtons,
            BeltTension.Of(new(90 * f), new(300 * span), new(0.1 * mass)).Newtons,
            1e-9
        );

    // Count the bangs: n cylinders, each once every two turns (four-stroke) or every turn (two-stroke)
    [Theory]
    [InlineData(1, true, 4, 1_200)]
    [InlineData(3, true, 4, 400)]
    [InlineData(2, true, 2, 300)]
    [InlineData(2, false, 4, 1_200)]
    [InlineData(4, false, 2, 600)]
    public void Speed_is_bangs_by_the_turns_between_them(int cylinders, bool even, int strokes, double perMinute) =>
        Assert.Equal(perMinute, 60 * IdleSpeed.Of(new(10), cylinders, even, strokes).Hertz, 1e-9);

    [Fact]
    public void Engines_of_other_kinds_are_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => IdleSpeed.Of(new(10), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => IdleSpeed.Of(new(10), 1, true, 3));
    }

    // u = √(0.3² + 0.4²) = 0.5; one-sided 95 % of the normal distribution is 1.645 u (the other end is 6 u away)
    [Theory]
    [InlineData(41.17, Call.Inside)]
    [InlineData(41.18, Call.Unproven)]
    [InlineData(42.82, Call.Unproven)]
    [InlineData(42.83, Call.Outside)]
    [InlineData(38.83, Call.Inside)]
    [InlineData(37.17, Call.Outside)]
    public void A_change_is_proven_one_way_or_the_other_or_not_at_all(double after, Call call)
    {
        var r = IdleChange.Between(new(40), new(after), new(0.3), new(0.4), new(2));
        Assert.Equal(0.5, r.Uncertainty.Hertz, 1e-12);
        Assert.Equal(after - 40, r.Change.Hertz, 1e-12);
        Assert.Equal((after - 40) / 40, r.Share.Value, 1e-12);
        Assert.Equal(call, r.Call);
    }
}
