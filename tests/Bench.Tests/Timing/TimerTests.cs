using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Timing;

namespace Witnessmark.Bench.Tests.Timing;

public class TimerTests
{
    private static readonly DateTimeOffset Eight = new(2026, 11, 26, 8, 0, 0, TimeSpan.Zero);

    private static readonly BenchTimer Drain = new(
        "412/drain-plug/wait",
        "412",
        "drain-plug",
        "Drain plug",
        Eight,
        TimeSpan.FromMinutes(10)
    );

    [Fact]
    public void Time_left_runs_down_and_then_up_again_as_over()
    {
        Assert.Equal(TimeSpan.FromMinutes(10), Drain.Left(Eight));
        Assert.False(Drain.IsOver(Eight.AddSeconds(599)));
        Assert.True(Drain.IsOver(Eight.AddSeconds(600)));
        Assert.Equal(TimeSpan.FromSeconds(-30), Drain.Left(Eight.AddSeconds(630)));
    }

    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(0.4, "0:01")]
    [InlineData(59, "0:59")]
    [InlineData(60, "1:00")]
    [InlineData(-65, "1:05")]
    [InlineData(3599, "59:59")]
    [InlineData(3600, "1:00:00")]
    [InlineData(5400, "1:30:00")]
    public void It_is_shown_in_hours_minutes_seconds(double seconds, string shown) =>
        Assert.Equal(shown, BenchTimer.Show(TimeSpan.FromSeconds(seconds)));

    [Fact]
    public void It_is_read_as_it_was_written() => Assert.Equal(Drain, BenchTimer.Read(Drain.Id, Drain.Write()));

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("""{"job":"1","point":"p","title":"t","started":"yesterday","seconds":5}""")]
    [InlineData("""{"job":"1","point":"p","title":"t","started":null,"seconds":5}""")]
    public void What_is_no_timer_is_none(string text) => Assert.Null(BenchTimer.Read("x", text));

    [Fact]
    public void A_point_offers_its_wait_and_the_states_that_end_by_themselves()
    {
        var book = DemoFiles.Bench.Book;
        var drain = WaitsOfPoint.Of(book.Points["drain-plug"], book)[0];
        Assert.Equal(("wait", TimeSpan.FromMinutes(10)), (drain.Key, drain.Length));
        Assert.Contains(
            book.Points.Values,
            p => WaitsOfPoint.Of(p, book).Any(w => w.Key == "engine warm" && w.Length == TimeSpan.FromMinutes(90))
        );
        Assert.Empty(WaitsOfPoint.Of(book.Points["chain-slack"], book));
    }
}
