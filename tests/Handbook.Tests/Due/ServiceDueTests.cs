using FsCheck.Xunit;
using Witnessmark.Handbook.Due;
using static Witnessmark.Handbook.Tests.Due.Schedule;

namespace Witnessmark.Handbook.Tests.Due;

public class ServiceDueTests
{
    // Calendar months after a day, the day clipped: worked out on a calendar.
    [Theory]
    [InlineData("2025-01-31", 1, "2025-02-28")]
    [InlineData("2024-01-31", 1, "2024-02-29")]
    [InlineData("2024-02-29", 12, "2025-02-28")]
    [InlineData("2024-02-29", 48, "2028-02-29")]
    [InlineData("2025-08-31", 6, "2026-02-28")]
    [InlineData("2025-12-31", 2, "2026-02-28")]
    [InlineData("9998-12-15", 12, "9999-12-15")]
    [InlineData("9999-01-31", 11, "9999-12-31")]
    [InlineData("9999-01-31", 12, null)]
    [InlineData("9999-11-30", 1200, null)]
    public void Months_are_calendar_months(string done, int months, string? by)
    {
        var due = Judge(Rule(months: months), Today(done, 100), 30, Done(done, 100));
        Assert.Equal(by is null ? null : Day(by), due.ByDate);
    }

    // 10000-01-31 lies 42 days after 9999-12-20: still counted, though it cannot be written.
    [Theory]
    [InlineData(42, DueState.Soon)]
    [InlineData(41, DueState.Later)]
    public void A_day_beyond_the_last_year_is_still_counted(double horizon, DueState state)
    {
        var due = Judge(Rule(months: 2), Today("9999-12-20", 100), horizon, Done("9999-11-30", 100));
        Assert.Null(due.ByDate);
        Assert.Equal(41, due.DaysLeft); // 10000-01-30
        Assert.Contains("beyond the year 9999", due.Why);
        var later = Judge(Rule(months: 12), Today("9999-12-20", 100), horizon, Done("9999-01-31", 100));
        Assert.Equal((state, 42.0), (later.State, later.DaysLeft));
    }

    [Theory]
    [InlineData("2026-11-30", 30, DueState.Due)]
    [InlineData("2026-12-01", 30, DueState.Overdue)]
    [InlineData("2026-11-29", 30, DueState.Soon)]
    [InlineData("2026-10-31", 30, DueState.Soon)]
    [InlineData("2026-10-30", 30, DueState.Later)]
    [InlineData("2026-11-29", 0, DueState.Later)]
    [InlineData("2026-11-30", 0, DueState.Due)]
    public void By_date(string today, double horizon, DueState state) =>
        Assert.Equal(state, Judge(Rule(months: 12), Today(today, 100), horizon, Done("2025-11-30", 100)).State);

    [Theory]
    [InlineData(10_000, 10, DueState.Due)] // to the kilometre
    [InlineData(10_000.1, 10, DueState.Overdue)]
    [InlineData(9_991, 10, DueState.Due)]
    [InlineData(9_990, 10, DueState.Soon)]
    [InlineData(9_700, 10, DueState.Soon)]
    [InlineData(9_699, 10, DueState.Later)]
    [InlineData(9_999, 0, DueState.Later)] // it stands: never by distance
    [InlineData(10_000, 0, DueState.Due)]
    [InlineData(10_001, 0, DueState.Overdue)]
    public void By_distance(double km, double perDay, DueState state) =>
        Assert.Equal(state, Judge(Rule(10_000), Today("2026-01-01", km, perDay), 30, Done("2026-01-01", 0)).State);

    // 300 km at 10 km a day, but for three parts in 10¹¹ that another unit may add
    [Theory]
    [InlineData(3e-9, DueState.Soon, 30)]
    [InlineData(3e-6, DueState.Later, 30.0000003)]
    public void Rounding_moves_no_day(double more, DueState state, double days)
    {
        var due = Judge(Rule(1000 + more), Today("2026-01-01", 700), 30, Done("2025-01-01", 0));
        Assert.Equal((state, days), (due.State, Math.Round(due.DaysLeft, 9)));
    }

    [Fact]
    public void Whichever_comes_first_rules_and_says_so()
    {
        var byDate = Judge(Rule(10_000, 12), Today("2026-11-25", 4812, 8), 30, Done("2025-11-30", 4000));
        Assert.Equal("By 2026-11-30: 12 months after 2025-11-30, 5 days left.", byDate.Why);
        Assert.Equal(Km(14_000), byDate.ByDistance);
        var byDistance = Judge(Rule(1000, 12), Today("2026-11-25", 5012.5, 8), 30, Done("2025-11-30", 4000));
        Assert.Equal("By 5000 km: 1000 km after 4000 km on 2025-11-30, 12.5 km over at 8 km a day.", byDistance.Why);
        var left = Judge(Rule(1000), Today("2026-11-25", 4900), 30, Done("2025-11-30", 4000));
        Assert.Equal("By 5000 km: 1000 km after 4000 km on 2025-11-30, 100 km left at 10 km a day.", left.Why);
        var now = Judge(Rule(1000), Today("2026-11-25", 5000), 30, Done("2025-11-30", 4000));
        Assert.EndsWith(", 0 km left at 10 km a day.", now.Why);
        var today = Judge(Rule(months: 12), Today("2026-11-25", 1), 30, Done("2025-11-25", 1));
        Assert.EndsWith(", 0 days left.", today.Why);
        var one = Judge(Rule(months: 1), Today("2026-12-31", 1), 30, Done("2026-11-30", 1));
        Assert.Equal("By 2026-12-30: 1 month after 2026-11-30, 1 day over.", one.Why);
        var tie = Judge(Rule(10, 1), Today("2026-12-29", 1), 30, Done("2026-11-30", 1));
        Assert.StartsWith("By 2026-12-30", tie.Why);
    }

    [Fact]
    public void The_last_entry_counts_wherever_it_stands_in_the_list()
    {
        var due = Judge(Rule(1000), Today("2026-06-01", 9000), 30, Done("2026-05-01", 8800), Done("2025-05-01", 5000));
        Assert.Equal(Km(9800), due.ByDistance);
        var sameDay = Judge(
            Rule(1000),
            Today("2026-06-01", 9000),
            30,
            Done("2026-05-01", 8800),
            Done("2026-05-01", 8700)
        );
        Assert.Equal(Km(9800), sameDay.ByDistance);
    }

    [Fact]
    public void What_was_never_done_is_unknown_and_due()
    {
        var due = Judge(Rule(1000, 12), Today("2026-06-01", 300), 30);
        Assert.Equal((DueState.Due, "Not on record: unknown, treat as due."), (due.State, due.Why));
        Assert.Null(due.ByDistance);
        Assert.Null(due.ByDate);
    }

    [Theory]
    [InlineData(800, DueState.Soon)]
    [InlineData(1000, DueState.Due)]
    [InlineData(1001, DueState.Overdue)]
    public void The_first_service_has_its_own_distance(double km, DueState state)
    {
        var due = Judge(Rule(10_000, 12, 1000), Today("2026-06-01", km), 30);
        Assert.Equal((state, Km(1000)), (due.State, due.ByDistance!.Value));
        Assert.StartsWith("By 1000 km: the first time", due.Why);
    }

    [Fact]
    public void What_does_not_repeat_is_done_for_good()
    {
        var due = Judge(Rule(first: 1000), Today("2026-06-01", 50_000), 30, Done("2020-01-01", 990));
        Assert.Equal((DueState.Later, "Done on 2020-01-01; it does not repeat."), (due.State, due.Why));
        Assert.Equal(double.PositiveInfinity, due.DaysLeft);
    }

    [Theory]
    [InlineData(12, 0.5, "2026-07-01")]
    [InlineData(100, 0.29, "2028-06-01")] // 29 months, though 0.29 · 100 is a little less in binary
    [InlineData(12, 0.6, "2026-08-01")] // 7.2 months: seven whole ones
    [InlineData(12, 1, "2027-01-01")]
    public void Severe_use_shortens_both_intervals(int months, double severe, string by)
    {
        var due = Judge(Rule(10_000, months, null, severe), Today("2026-01-01", 0), 30, Done("2026-01-01", 0));
        Assert.Equal(Day(by), due.ByDate);
        Assert.Equal(10_000 * severe, due.ByDistance!.Value.Millimetres / 1e6, 1e-9);
    }

    [Fact]
    public void Severe_use_leaves_the_first_service_where_it_is() =>
        Assert.Equal(Km(1000), Judge(Rule(10_000, null, 1000, 0.5), Today("2026-01-01", 0), 30).ByDistance);

    [Fact]
    public void Fewest_days_first_and_equal_ones_as_they_were_given()
    {
        ServiceRule Named(string name, int months) => new(name, null, months, null);
        ServiceEntry Of(string name) => new(name, Seen("2026-01-01", 0));
        var work = ServiceDue.On(
            [Named("a", 24), Named("b", 12), Named("c", 12), Named("never", 12), Named("d", 1)],
            [Of("a"), Of("b"), Of("c"), Of("d"), Of("no rule")],
            Today("2026-03-01", 0)
        );
        Assert.Equal(["d", "never", "b", "c", "a"], work.Due.Select(d => d.Point));
    }

    [Fact]
    public void An_entry_after_today_is_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentException>(() => Judge(Rule(1000), Today("2026-01-01", 0), 30, Done("2026-01-02", 0)));
        Assert.Throws<ArgumentException>(() =>
            Judge(Rule(1000), Today("2026-01-01", 0, 1, [Seen("2026-01-02", 0)]), 30)
        );
        Assert.Throws<ArgumentException>(() =>
            Judge(Rule(1000), Today("2026-01-01", 0, 1, null, [new(Day("2026-01-02"), Km(9), Km(0))]), 30)
        );
        Assert.Throws<ArgumentOutOfRangeException>(() => Judge(Rule(1000), Today("2026-01-01", 0), -1));
    }

    [Property(MaxTest = 1000)]
    public void A_later_day_or_more_distance_never_makes_work_less_due(uint a, uint b, uint c, uint d)
    {
        var rule = Rule(Chance.Between(100, 20_000, a), (int)Chance.Between(1, 48, b), 1000);
        var perDay = Chance.Between(0, 100, c);
        ServiceEntry[] history = d % 3 == 0 ? [] : [Done("2025-01-31", Chance.Between(0, 9000, d))];
        var (before, days) = (
            Judge(rule, Today("2025-02-01", 9000, perDay), 30, history),
            (int)Chance.Between(0, 1500, d)
        );
        var later = Day("2025-02-01")
            .AddDays(days)
            .ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(Judge(rule, Today(later, 9000, perDay), 30, history).State <= before.State);
        Assert.True(Judge(rule, Today("2025-02-01", 9000 + days, perDay), 30, history).State <= before.State);
        var severe = rule with { SevereUse = 0.5, EveryMonths = rule.EveryMonths + 1 };
        Assert.True(Judge(severe, Today("2025-02-01", 9000, perDay), 30, history).State <= before.State);
    }

    [Fact]
    public void Thousands_of_rules_are_judged_at_once()
    {
        var rules = Enumerable
            .Range(0, 10_000)
            .Select(i => new ServiceRule($"p{i}", Km(1000 + i), 1 + i % 60, null))
            .ToArray();
        var history = Enumerable
            .Range(0, 10_000)
            .Select(i => new ServiceEntry($"p{i}", Seen("2025-01-01", i % 900)))
            .ToArray();
        var work = ServiceDue.On(rules, history, Today("2026-01-01", 900));
        Assert.Equal(10_000, work.Due.Count);
        Assert.Equal(work.Due.Select(d => d.DaysLeft).Order(), work.Due.Select(d => d.DaysLeft));
    }
}
