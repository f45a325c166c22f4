using FsCheck.Xunit;
using Witnessmark.Handbook.Measuring;

namespace Witnessmark.Handbook.Tests.Measuring;

public class VerdictTests
{
    // Better is smaller: inside 0, unproven 1, outside 2
    private static int Rank(Call call) =>
        call switch
        {
            Call.Inside => 0,
            Call.Unproven => 1,
            _ => 2,
        };

    [Property(MaxTest = 1000)]
    public void A_reading_moved_toward_the_limit_never_improves_the_verdict(uint a, uint b, uint c, bool upper)
    {
        var limit = upper ? new Limit(null, 30) : new Limit(20, null);
        var (value, u, step) = (Chance.Between(10, 40, a), Chance.Between(0, 5, b), Chance.Between(0, 10, c));
        var before = Verdict.On(value, u, limit);
        var after = Verdict.On(upper ? value + step : value - step, u, limit);
        Assert.True(Rank(after.Call) >= Rank(before.Call));
        Assert.True(after.Conformance <= before.Conformance);
        Assert.True(after.Margin <= before.Margin);
    }

    [Property(MaxTest = 500)]
    public void A_reading_at_the_acceptance_limit_is_inside_and_beyond_it_is_not(uint a, uint b)
    {
        var (u, confidence) = (Chance.Between(0.01, 5, a), Chance.Between(0.6, 0.99, b));
        var accept = Verdict.On(0, u, new Limit(20, null), confidence).AcceptMin!.Value;
        Assert.Equal(Call.Inside, Verdict.On(accept + 1e-6 * u, u, new Limit(20, null), confidence).Call);
        Assert.NotEqual(Call.Inside, Verdict.On(accept - 1e-6 * u, u, new Limit(20, null), confidence).Call);
    }

    [Theory]
    [InlineData(30, Call.Inside)]
    [InlineData(30.001, Call.Outside)]
    [InlineData(20, Call.Inside)]
    [InlineData(19.999, Call.Outside)]
    public void An_exact_reading_is_never_unproven(double value, Call call) =>
        Assert.Equal(call, Verdict.On(value, 0, new Limit(20, 30)).Call);

    // JCGM 106:2012, 7.2: the probability asked for is enough
    [Fact]
    public void The_very_confidence_asked_for_proves_it()
    {
        var kept = Verdict.On(28, 1, new Limit(20, 30)).Conformance;
        Assert.Equal(Call.Inside, Verdict.On(28, 1, new Limit(20, 30), kept).Call);
        Assert.Equal(Call.Unproven, Verdict.On(28, 1, new Limit(20, 30), Math.BitIncrement(kept)).Call);
        // A probability whose complement can be written without rounding
        var broken = Enumerable
            .Range(1, 1000)
            .Select(i =>
                (Value: 30 + i / 1000.0, Kept: Verdict.On(30 + i / 1000.0, 1, new Limit(null, 30)).Conformance)
            )
            .First(r => 1 - (1 - r.Kept) == r.Kept);
        Assert.Equal(Call.Outside, Verdict.On(broken.Value, 1, new Limit(null, 30), 1 - broken.Kept).Call);
    }

    [Fact]
    public void A_limit_may_be_a_single_value() => Assert.Equal(Call.Inside, Verdict.On(20, 0, new Limit(20, 20)).Call);

    [Theory]
    [InlineData(22, 2)]
    [InlineData(27, 3)]
    [InlineData(19, -1)]
    [InlineData(32, -2)]
    public void The_margin_is_the_distance_to_the_nearest_end(double value, double margin) =>
        Assert.Equal(margin, Verdict.On(value, 1, new Limit(20, 30)).Margin);

    [Fact]
    public void A_lower_end_alone_has_a_margin_too() => Assert.Equal(2, Verdict.On(22, 1, new Limit(20, null)).Margin);

    [Fact]
    public void Arguments_out_of_bounds_are_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.On(1, -1, new Limit(0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.On(1, 1, new Limit(null, null)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.On(1, 1, new Limit(2, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.On(1, 1, new Limit(0, 1), 0.5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Verdict.On(1, 1, new Limit(0, 1), 1));
    }
}
