using FsCheck.Xunit;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;
using static Witnessmark.Handbook.Tests.Wear.Parts;

namespace Witnessmark.Handbook.Tests.Wear;

public class WearForecastTests
{
    private static Answer<WearOutlook> Of(WearReading[] readings, FleetWear fleet, WearQuestion asked) =>
        WearForecast.For(readings, new(0.15), fleet, asked);

    // One reading more exact than its prior: the weights are the inverse variances (GUM, weighted mean), by hand.
    [Fact]
    public void A_start_read_on_the_day_it_was_new_is_the_weighted_mean()
    {
        var outlook = WearForecast.For([At(0, 6.5)], new(0.1), Fleet(7, 0.5, 0.2, 0.05), Ask(2, 0, 1)).Certain;
        Assert.Equal((7 / 0.04 + 6.5 / 0.01) / (1 / 0.04 + 1 / 0.01), outlook.Start.Millimetres, 1e-12);
        Assert.Equal(0.5, outlook.Rate.Millimetres, 1e-12);
    }

    [Fact]
    public void The_order_of_the_readings_does_not_matter()
    {
        var one = Of([At(1, 6.4), At(4, 5), At(7, 3.4)], Tread, Ask(2, 7, 9)).Certain;
        var other = Of([At(7, 3.4), At(1, 6.4), At(4, 5)], Tread, Ask(2, 7, 9)).Certain;
        Assert.Equal(1, one.Median!.Value / other.Median!.Value, 1e-12);
        Assert.Equal(one.ByNextService, other.ByNextService, 1e-12);
    }

    // Prior far wider than any part: what is left is the least-squares line through the readings.
    [Fact]
    public void A_fleet_that_says_nothing_leaves_the_straight_line_through_the_readings()
    {
        var outlook = Of([At(1, 6.4), At(4, 5), At(7, 3.4), At(9, 2.6)], Fleet(0, 0, 1e6, 1e6), Ask(2, 9, 11)).Certain;
        var (start, slope) = MathNet.Numerics.Fit.Line([1, 4, 7, 9], [6.4, 5, 3.4, 2.6]);
        Assert.Equal(start, outlook.Start.Millimetres, 1e-6);
        Assert.Equal(-slope, outlook.Rate.Millimetres, 1e-6);
    }

    [Fact]
    public void A_known_line_is_reached_on_the_kilometre()
    {
        var outlook = Of([], Fleet(7, 0.5, 0, 0), Ask(2, 4, 10)).Certain;
        Assert.Equal(6, Thousands(outlook.Median)!.Value, 1e-12);
        Assert.Equal(6, Thousands(outlook.Earliest)!.Value, 1e-12);
        Assert.Equal(6, Thousands(outlook.Latest)!.Value, 1e-12);
        Assert.Equal(1, outlook.ByNextService);
        Assert.Equal(0, Of([], Fleet(7, 0.5, 0, 0), Ask(2, 4, 9.999)).Certain.ByNextService);
        Assert.Null(outlook.Agrees);
    }

    [Fact]
    public void A_limit_that_was_passed_lies_behind()
    {
        var outlook = Of([At(12, 1.2)], Tread, Ask(2, 12, 13)).Certain;
        Assert.True(Thousands(outlook.Latest) < 0);
        Assert.True(outlook.Earliest < outlook.Median && outlook.Median < outlook.Latest);
        Assert.InRange(outlook.ByNextService, 0.999, 1);
    }

    // Bounded while rate > 1.645 of its deviations: just above and just below.
    [Theory]
    [InlineData(0.5, 0.3039, true)]
    [InlineData(0.5, 0.3040, false)]
    [InlineData(0, 0, false)]
    [InlineData(0, 0.1, false)]
    public void Without_a_bound_it_cannot_predict_and_says_what_still_holds(double rate, double deviation, bool bounded)
    {
        var answer = Of([], Fleet(7, rate, 0.1, deviation), Ask(2, 0, 8));
        Assert.Equal(bounded, answer.Holds);
        Assert.Equal(bounded, answer.Value!.Latest is not null);
        Assert.Equal(bounded ? null : "cannotPredict", answer.Refusal?.Key);
        Assert.Equal(rate > 0, answer.Value.Median is not null);
        Assert.Equal(7, answer.Value.Start.Millimetres);
        if (deviation > 0)
            Assert.Equal(0.05, Reached(7, rate, 0.1, deviation, Thousands(answer.Value.Earliest)!.Value), 1e-9);
        else
            Assert.Null(answer.Value.Earliest);
    }

    // Readings that grow: less and less is known to be left, yet the early point is still the one the law gives.
    [Fact]
    public void A_part_that_seems_to_grow_has_no_median()
    {
        var answer = WearForecast.For([At(2, 8), At(4, 9)], new(0.1), Fleet(7, 0.1, 0.5, 0.5), Ask(2, 4, 8));
        Assert.Equal("cannotPredict", answer.Refusal!.Key);
        Assert.True(answer.Value!.Rate.Millimetres < 0);
        Assert.Null(answer.Value.Median);
        Assert.Null(answer.Value.Earliest);
        Assert.InRange(answer.Value.ByNextService, 0, 1e-6);
        Assert.True(answer.Value.Agrees); // a fleet as unsure as this one foretells anything
    }

    // Worn far past, the rate unknown: more than 5 % at every distance, so there is no 5 % point.
    [Fact]
    public void Where_the_chance_is_never_small_there_is_no_early_point()
    {
        var answer = Of([], Fleet(1, 0.5, 0.1, 0.4), Ask(2, 0, 1));
        Assert.Equal("cannotPredict", answer.Refusal!.Key);
        Assert.Null(answer.Value!.Earliest);
        Assert.Equal(-2, Thousands(answer.Value.Median)!.Value, 1e-12);
    }

    private static double Reached(double start, double rate, double startDeviation, double rateDeviation, double x) =>
        MathNet.Numerics.Distributions.Normal.CDF(
            0,
            1,
            (2 - start + rate * x) / Math.Sqrt(startDeviation * startDeviation + rateDeviation * rateDeviation * x * x)
        );

    // The 95 % point of χ² with one degree of freedom is 3.841459 (ISO 2854 table, from memory): 1.96 deviations of the miss.
    [Theory]
    [InlineData(1.959, true)]
    [InlineData(1.961, false)]
    [InlineData(-1.961, false)]
    public void A_reading_far_from_what_was_foretold_does_not_agree(double deviations, bool agrees)
    {
        var miss = deviations * Math.Sqrt(0.15 * 0.15 + 0.2 * 0.2 + 0.15 * 0.15 * 16);
        Assert.Equal(agrees, Of([At(4, 7 - 0.45 * 4 + miss)], Tread, Ask(2, 4, 6)).Value!.Agrees);
    }

    [Fact]
    public void A_part_renewed_between_the_readings_does_not_agree() =>
        Assert.False(Of([At(2, 6.1), At(6, 4.3), At(7, 7)], Tread, Ask(2, 7, 9)).Value!.Agrees);

    [Fact]
    public void What_makes_no_sense_is_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WearForecast.For([], new(0), Tread, Ask(2, 0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([], Fleet(7, 1, -1, 1), Ask(2, 0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([], Fleet(7, 1, 1, -1), Ask(2, 0, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([], Tread, Ask(2, 1, 0.999)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of([At(1.001, 6)], Tread, Ask(2, 1, 2)));
        Assert.True(Of([At(1, 6)], Tread, Ask(2, 1, 1)).Value is not null);
    }

    // While the limit lies ahead: a lower last reading, or a higher limit, never lengthens what remains.
    [Property(MaxTest = 1000)]
    public void More_wear_never_lengthens_the_remaining_distance(uint a, uint b, uint c, uint d)
    {
        var fleet = Fleet(7, Chance.Between(0.1, 0.6, a), Chance.Between(0, 0.5, b), Chance.Between(0, 0.3, c));
        var more = Chance.Between(0, 1, d);
        WearOutlook Outlook(double wear, double limit) =>
            Of([At(1, 6.6), At(3, 5.9), At(6, 5 - wear)], fleet, Ask(limit, 6, 9)).Value!;
        foreach (var worse in (WearOutlook[])[Outlook(more, 2), Outlook(0, 2 + more)])
        {
            var before = Outlook(0, 2);
            Shorter(before.Median, worse.Median);
            Shorter(before.Earliest, worse.Earliest);
            Shorter(before.Latest, worse.Latest);
            Assert.True(worse.ByNextService >= before.ByNextService - 1e-12);
        }
    }

    private static void Shorter(Length? before, Length? after)
    {
        if (before is { Millimetres: > 0 } b && after is { } a)
            Assert.True(a.Millimetres <= b.Millimetres * (1 + 1e-9));
    }

    [Property(MaxTest = 1000)]
    public void Each_point_is_where_the_chance_is_what_it_says(uint a, uint b, uint c, uint d)
    {
        var fleet = Fleet(7, 0.5, Chance.Between(0, 0.5, a), Chance.Between(0.01, 0.6, b));
        WearReading[] readings = [At(2, 6), At(Chance.Between(2, 9, c), Chance.Between(1, 7, d))];
        var outlook = Of(readings, fleet, Ask(2, 9, 9)).Value!;
        foreach (
            var (point, chance) in new[] { (outlook.Earliest, 0.05), (outlook.Median, 0.5), (outlook.Latest, 0.95) }
        )
            if (Thousands(point) is > 0 and < 1e6 and var t)
                Assert.Equal(chance, Of(readings, fleet, Ask(2, 9, 9 + t)).Value!.ByNextService, 1e-6);
    }
}
