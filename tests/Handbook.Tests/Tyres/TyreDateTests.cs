using FsCheck.Xunit;
using Witnessmark.Handbook.Tyres;

namespace Witnessmark.Handbook.Tests.Tyres;

public class TyreDateTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    // 49 CFR 574.5 as explained with its change to four digits: 3197 is the 31st week of 1997, 3 to 9 August
    [Fact]
    public void Age_counts_days_from_the_sunday()
    {
        var tyre = TyreDate.Read("3197", new DateOnly(1997, 8, 9)).Certain;
        Assert.Equal(new DateOnly(1997, 8, 3), tyre.WeekStarts);
        Assert.Equal(6 * 86_400, tyre.Age.Seconds);
    }

    [Theory]
    [InlineData("0026")]
    [InlineData("5426")]
    [InlineData("5325")] // 2025 began on a Wednesday: 52 Sundays
    [InlineData("5026")] // lies ahead
    [InlineData("557")] // no week of any decade
    public void What_is_no_week_is_refused(string code) =>
        Assert.Equal("notAWeek", TyreDate.Read(code, Today).Refusal?.Key);

    // 2023 began on a Sunday: 53 Sundays
    [Fact]
    public void A_year_with_53_sundays_has_a_week_53() =>
        Assert.Equal(new DateOnly(2023, 12, 31), TyreDate.Read("5323", Today).Certain.WeekStarts);

    [Fact]
    public void The_week_that_holds_the_day_is_not_ahead()
    {
        Assert.True(TyreDate.Read("4726", new DateOnly(2026, 11, 22)).Holds);
        Assert.False(TyreDate.Read("4726", new DateOnly(2026, 11, 21)).Holds);
    }

    [Theory]
    [InlineData(1990, 1997, 6, 8)]
    [InlineData(1980, 1987, 6, 7)]
    public void Three_digits_need_the_decade(int decade, int year, int month, int day)
    {
        Assert.Equal("decadeUnknown", TyreDate.Read("237", Today).Refusal?.Key);
        Assert.Equal(new DateOnly(year, month, day), TyreDate.Read("237", Today, decade).Certain.WeekStarts);
    }

    public static IEnumerable<TheoryDataRow<string, string, string>> Codes =>
        PublishedRows
            .ForTests("tyre-dates/date-codes.csv")
            .Select(r => new TheoryDataRow<string, string, string>(r[0], r[1], r[2]));

    // Rows of 49 CFR 574.5 and of what explains it, see ReferenceData/tyre-dates
    [Theory]
    [MemberData(nameof(Codes))]
    public void Week_of_every_published_code(string code, string decade, string sunday)
    {
        var tyre = TyreDate.Read(code, Today, decade.Length == 0 ? null : int.Parse(decade)).Certain;
        Assert.Equal(DateOnly.ParseExact(sunday, "yyyy-MM-dd"), tyre.WeekStarts);
        Assert.Equal(DayOfWeek.Sunday, tyre.WeekStarts.DayOfWeek);
        Assert.Null(tyre.Note);
    }

    [Fact]
    public void The_year_is_the_latest_not_after_the_day() =>
        Assert.Equal(1927, TyreDate.Read("0127", Today).Certain.WeekStarts.Year);

    // 64 FR 36807: four digits by law from July 2000, some years earlier by choice
    [Theory]
    [InlineData("0127", true)] // next year's, or misread
    [InlineData("5089", true)]
    [InlineData("0190", false)]
    [InlineData("3197", false)]
    public void A_year_before_four_digits_were_used_is_told(string code, bool told) =>
        Assert.Equal(told, TyreDate.Read(code, Today).Certain.Note is not null);

    [Fact]
    public void Three_digits_of_an_early_decade_need_no_note() =>
        Assert.Null(TyreDate.Read("237", Today, 1980).Certain.Note);

    [Fact]
    public void A_week_ahead_is_said() =>
        Assert.Contains("lies after the day asked about", TyreDate.Read("5026", Today).Refusal!.Because);

    [Theory]
    [InlineData("0100")]
    [InlineData("0102")]
    [InlineData("5399")]
    public void The_first_year_of_the_calendar_does_not_underflow(string code) =>
        Assert.Contains("no year before 1", TyreDate.Read(code, DateOnly.MinValue).Refusal!.Because);

    [Fact]
    public void The_first_year_of_the_calendar_is_a_year()
    {
        Assert.Equal(1, TyreDate.Read("0101", new(1, 12, 31)).Certain.WeekStarts.Year);
        Assert.Contains("no year before 1", TyreDate.Read("0199", new(50, 1, 1)).Refusal!.Because); // not year 99
    }

    [Fact]
    public void The_last_year_of_the_calendar_does_not_overflow() =>
        Assert.Equal("notAWeek", TyreDate.Read("5399", DateOnly.MaxValue).Refusal?.Key);

    // Oracle: every Sunday counted one by one
    [Property(MaxTest = 300)]
    public void Weeks_agree_with_counting_sundays(uint chance)
    {
        var year = 1927 + (int)(chance % 99);
        var week = 0;
        for (var day = new DateOnly(year, 1, 1); day.Year == year; day = day.AddDays(1))
            if (day.DayOfWeek == DayOfWeek.Sunday)
                Assert.Equal(day, TyreDate.Read($"{++week:00}{year % 100:00}", Today).Certain.WeekStarts);
        if (week == 52)
            Assert.Equal("notAWeek", TyreDate.Read($"53{year % 100:00}", Today).Refusal?.Key);
    }

    [Theory]
    [InlineData("31")]
    [InlineData("31097")]
    [InlineData("3x9")]
    public void Another_form_is_a_bug_of_the_caller(string code) =>
        Assert.Throws<ArgumentException>(() => TyreDate.Read(code, Today));
}
