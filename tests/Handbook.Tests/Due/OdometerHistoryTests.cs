using Witnessmark.Handbook.Due;
using static Witnessmark.Handbook.Tests.Due.Schedule;

namespace Witnessmark.Handbook.Tests.Due;

public class OdometerHistoryTests
{
    private static readonly OdometerReplacement[] AtForty = [new(Day("2025-06-01"), Km(40_000), Km(0))];

    private static DueWork Judge(MachineToday machine, params ServiceEntry[] history) =>
        ServiceDue.On([Rule(10_000)], history, machine);

    // 38 000 on the old, off at 40 000, new from 0: 48 000 in all is 8000 on the new one, by hand.
    [Fact]
    public void A_distance_counts_on_over_a_known_replacement()
    {
        var work = Judge(Today("2026-01-01", 7900, 10, null, AtForty), Done("2025-01-01", 38_000));
        Assert.Empty(work.Breaks);
        Assert.Equal(Km(8000), work.Due[0].ByDistance);
        Assert.Equal((DueState.Soon, 10.0), (work.Due[0].State, work.Due[0].DaysLeft));
        Assert.Contains("counted on over the odometer replaced since", work.Due[0].Why);
    }

    [Fact]
    public void A_used_odometer_may_begin_higher_than_the_old_one_ended()
    {
        OdometerReplacement[] used = [new(Day("2025-06-01"), Km(40_000), Km(60_000))];
        Assert.Equal(
            Km(68_000),
            Judge(Today("2026-01-01", 61_000, 10, null, used), Done("2025-01-01", 38_000)).Due[0].ByDistance
        );
        // on the day itself: 59 000 is nearer to the 60 000 of the new one, 20 000 in all less
        var history = new OdometerHistory([], Seen("2026-01-01", 61_000), used);
        Assert.Equal(Km(39_000).Millimetres, history.TotalOf(Seen("2025-06-01", 59_000)));
        Assert.Equal(Km(40_100).Millimetres, history.TotalOf(Seen("2025-06-01", 40_100)));
    }

    // 6000, then 3000: what was read before can no longer be counted from, whatever it showed
    [Fact]
    public void After_a_break_only_later_entries_count()
    {
        var odometer = new OdometerHistory(
            [Seen("2025-01-01", 5000), Seen("2025-03-01", 6000), Seen("2025-06-01", 3000)],
            Seen("2025-12-01", 10_000),
            []
        );
        Assert.False(odometer.Reaches(Seen("2025-01-01", 5000)));
        Assert.True(odometer.Reaches(Seen("2025-06-01", 3000)));
        Assert.False(odometer.Reaches(Seen("2025-06-01", 2999)));
        var today = new OdometerHistory([Seen("2025-03-01", 6000)], Seen("2025-06-01", 3000), []);
        Assert.True(today.Reaches(Seen("2025-06-01", 3000)));
        Assert.False(today.Reaches(Seen("2025-06-01", 3001)));
    }

    [Fact]
    public void Two_replacements_add_up_in_whatever_order_they_are_given()
    {
        OdometerReplacement[] two = [new(Day("2025-09-01"), Km(3000), Km(100)), .. AtForty];
        // total 40 000 + 2900 + 200 = 43 100 today; due at 48 000: 5100 on the odometer now fitted
        var work = Judge(Today("2026-01-01", 200, 10, null, two), Done("2025-01-01", 38_000));
        Assert.Equal(Km(5100), work.Due[0].ByDistance);
        Assert.Empty(work.Breaks);
    }

    // On the day of the replacement an entry belongs to the odometer whose figure is nearer.
    [Theory]
    [InlineData(39_990, 9990)]
    [InlineData(20_001, -9999)]
    [InlineData(20_000, -10_000)]
    [InlineData(19_999, 29_999)]
    [InlineData(5, 10_005)]
    public void On_the_day_of_the_replacement_the_nearer_figure_decides(double shown, double by)
    {
        var work = Judge(Today("2026-01-01", 30_000, 10, null, AtForty), Done("2025-06-01", shown));
        Assert.Equal(Km(by), work.Due[0].ByDistance);
    }

    [Fact]
    public void Nothing_is_said_of_work_after_the_replacement()
    {
        var work = Judge(Today("2026-01-01", 7900, 10, null, AtForty), Done("2025-07-01", 1000));
        Assert.Equal(Km(11_000), work.Due[0].ByDistance);
        Assert.DoesNotContain("replaced", work.Due[0].Why);
    }

    [Fact]
    public void An_odometer_that_went_back_is_found_and_what_went_before_is_unknown()
    {
        var work = Judge(
            Today("2026-01-01", 2000, 10, [Seen("2025-03-01", 39_000), Seen("2025-09-01", 500)]),
            Done("2025-01-01", 38_000)
        );
        Assert.Equal([new OdometerBreak(Day("2025-09-01"), Km(39_000), Km(500))], work.Breaks);
        Assert.StartsWith("On 2025-09-01 the odometer showed 500 km, after 39000 km before:", work.Breaks[0].Why);
        Assert.Equal(DueState.Due, work.Due[0].State);
        Assert.Null(work.Due[0].ByDistance);
        Assert.Contains("went back since", work.Due[0].Why);
    }

    [Fact]
    public void Work_after_the_break_is_counted()
    {
        var work = Judge(Today("2026-01-01", 2000, 10, [Seen("2025-03-01", 39_000)]), Done("2025-09-01", 500));
        Assert.Single(work.Breaks);
        Assert.Equal(Km(10_500), work.Due[0].ByDistance);
        Assert.Equal(DueState.Later, work.Due[0].State);
    }

    [Fact]
    public void The_odometer_of_today_may_be_the_one_that_went_back()
    {
        var work = Judge(Today("2026-01-01", 2000), Done("2026-01-01", 2001));
        Assert.Equal([new OdometerBreak(Day("2026-01-01"), Km(2001), Km(2000))], work.Breaks);
        Assert.Null(work.Due[0].ByDistance);
        Assert.Empty(Judge(Today("2026-01-01", 2000), Done("2026-01-01", 2000)).Breaks);
    }

    [Fact]
    public void Entries_of_one_day_are_no_break_whatever_their_order()
    {
        var work = Judge(
            Today("2026-01-01", 2000, 10, [Seen("2025-09-01", 505), Seen("2025-09-01", 500)]),
            Done("2025-09-01", 502)
        );
        Assert.Empty(work.Breaks);
    }

    [Fact]
    public void After_a_break_nobody_knows_when_the_first_service_is()
    {
        var work = ServiceDue.On(
            [Rule(10_000, null, 60_000)],
            [],
            Today("2026-01-01", 2000, 10, [Seen("2025-03-01", 39_000)])
        );
        Assert.Equal(DueState.Due, work.Due[0].State);
        Assert.Null(work.Due[0].ByDistance);
    }

    [Fact]
    public void A_date_that_has_passed_rules_over_an_unknown_distance()
    {
        var machine = Today("2026-03-01", 2000, 10, [Seen("2025-03-01", 39_000)]);
        var work = ServiceDue.On([Rule(10_000, 12)], [Done("2025-01-01", 38_000)], machine);
        Assert.Equal(DueState.Overdue, work.Due[0].State);
        Assert.Equal(Day("2026-01-01"), work.Due[0].ByDate);
    }
}
