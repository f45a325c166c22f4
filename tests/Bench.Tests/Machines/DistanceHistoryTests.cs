using FsCheck.Xunit;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Tests.Machines;

public class DistanceHistoryTests
{
    private static readonly DateOnly First = new(2024, 1, 10);

    [Fact]
    public void Without_a_reading_there_is_no_history() => Assert.Empty(DistanceHistory.Of([]));

    [Fact]
    public void Readings_come_in_order_each_once()
    {
        var seen = DistanceHistory.Of([At(30, 200), At(0, 100), At(30, 200), At(30, 250)]);
        Assert.Equal([100, 200, 250], seen.Select(s => s.Distance.Kilometres));
        Assert.Equal([null, 30, 0], seen.Select(s => s.DaysSince));
        Assert.All(seen, s => Assert.Equal((DistanceMark.None, null), (s.Mark, s.Why)));
    }

    [Fact]
    public void An_odometer_that_went_back_is_marked_where_it_was_seen()
    {
        var seen = DistanceHistory.Of([At(0, 30_000), At(100, 12_000), At(200, 12_400)]);
        Assert.Equal([DistanceMark.None, DistanceMark.WentBack, DistanceMark.None], seen.Select(s => s.Mark));
        Assert.StartsWith("On 2024-04-19 the odometer showed 12000 km, after 30000 km before", seen[1].Why);
    }

    [Fact]
    public void The_last_reading_too_can_have_gone_back() =>
        Assert.Equal(DistanceMark.WentBack, DistanceHistory.Of([At(0, 2), At(1, 1)])[1].Mark);

    [Fact]
    public void A_day_on_which_it_shows_the_same_is_not_back() =>
        Assert.Equal(DistanceMark.None, DistanceHistory.Of([At(0, 2), At(1, 2)])[1].Mark);

    // a year and a month: common practice, no source
    [Theory]
    [InlineData(397, DistanceMark.None)]
    [InlineData(398, DistanceMark.Gap)]
    public void More_than_a_year_and_a_month_without_a_reading_is_a_gap(int days, DistanceMark mark)
    {
        var seen = DistanceHistory.Of([At(0, 100), At(days, 200)])[1];
        Assert.Equal(mark, seen.Mark);
        Assert.Equal(mark == DistanceMark.Gap, seen.Why == $"Nothing is on record for {days} days before.");
    }

    [Fact]
    public void After_a_gap_that_it_went_back_says_more() =>
        Assert.Equal(DistanceMark.WentBack, DistanceHistory.Of([At(0, 200), At(900, 100)])[1].Mark);

    // the oracle: a fall is a day whose least reading is below the greatest of the day before
    [Property(MaxTest = 200)]
    public void Each_fall_between_two_days_is_marked_and_nothing_else((byte Day, byte Km)[] readings)
    {
        var given = readings.Select(r => At(r.Day, r.Km)).ToArray();
        var byDay = given.GroupBy(g => g.Day).OrderBy(g => g.Key).ToArray();
        var falls = byDay
            .Zip(byDay.Skip(1))
            .Where(p => p.Second.Min(d => d.Kilometres) < p.First.Max(d => d.Kilometres));
        Assert.Equal(
            falls.Select(f => f.Second.Key),
            DistanceHistory.Of(given).Where(s => s.Mark == DistanceMark.WentBack).Select(s => s.Distance.Day)
        );
    }

    private static DistanceOnDay At(int day, double kilometres) => new(First.AddDays(day), kilometres);
}
