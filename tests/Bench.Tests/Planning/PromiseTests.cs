using Witnessmark.Bench.Planning;

namespace Witnessmark.Bench.Tests.Planning;

public class PromiseTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Theory]
    [InlineData("Friday 27 November, 16:00", "2026-11-27", "16:00")]
    [InlineData("27 November", "2026-11-27", null)]
    [InlineData("Fri 27 Nov 2026 9:30", "2026-11-27", "09:30")]
    [InlineData("2026-11-27 16:00", "2026-11-27", "16:00")]
    [InlineData("2026-11-27T16:00", "2026-11-27", "16:00")]
    [InlineData("2026-11-27", "2026-11-27", null)]
    [InlineData("2 January, 10:00", "2027-01-02", "10:00")] // the nearest one lies over the year
    [InlineData("30 December", "2026-12-30", null)]
    public void A_day_in_words_is_read(string words, string day, string? time)
    {
        var promise = Promise.Read(words, Today)!;
        Assert.Equal(DateOnly.Parse(day), promise.Day);
        Assert.Equal(time is null ? null : TimeOnly.Parse(time), promise.Time);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Friday, 16:00")]
    [InlineData("16:00")]
    [InlineData("when the part has come")]
    [InlineData("31 February")]
    [InlineData("27")]
    [InlineData("2026-13-01")]
    public void Words_without_a_day_are_no_promise_and_no_mistake(string words) =>
        Assert.Null(Promise.Read(words, Today));

    [Theory]
    [InlineData("2026-11-24", true)]
    [InlineData("2026-11-25", false)] // the day is not over
    [InlineData("2026-11-25 11:59", true)]
    [InlineData("2026-11-25 12:00", false)]
    [InlineData("2026-11-26 08:00", false)]
    public void It_lies_in_the_past_once_its_day_or_time_is_over(string words, bool past) =>
        Assert.Equal(past, Promise.Read(words, Today)!.IsPast(new(2026, 11, 25, 12, 0, 0)));
}
