using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Tests.Visits;

namespace Witnessmark.Bench.Tests.Expectations;

/// <summary>What is told of wearing parts is what the machine's page tells: the same forecast, from the same visits.</summary>
public class WearAheadTests
{
    private const string Tread = "tyre-rear-tread";

    [Fact]
    public void It_is_the_forecast_of_the_machines_page()
    {
        var work = Worn([6.0, 5.1, 4.3, 2.9]);
        var tread = Of(work).Wear.Single(w => w.Point.Id == Tread);
        Assert.True(tread.Forecast.Tells);
        Assert.Equal(work.Forecast(Tread).Words, tread.Forecast.Words);
        Assert.Matches(@"^About \d+ km to the limit; between", tread.Forecast.Words);
        Assert.Equal("≥ 1 mm", tread.Limit);
    }

    [Fact]
    public void Without_earlier_visits_one_reading_tells_nothing_and_says_so()
    {
        var tread = Of(Worn([6.0, 5.1, 4.3, 2.9]), tell: false).Wear.Single(w => w.Point.Id == Tread);
        Assert.False(tread.Forecast.Tells);
        Assert.StartsWith("One reading:", tread.Forecast.Words);
    }

    [Fact]
    public void What_wears_too_little_to_be_seen_is_not_foretold()
    {
        var tread = Of(Worn([6.0, 6.0])).Wear.Single(w => w.Point.Id == Tread);
        Assert.False(tread.Forecast.Tells);
        Assert.StartsWith("Cannot predict.", tread.Forecast.Words);
    }

    [Fact]
    public void Of_what_was_not_read_now_and_of_what_does_not_wear_nothing_stands_there()
    {
        var work = Worn([6.0, 5.1]).Comes("2026-12-01", 30_000);
        work.Reads("tyre-rear-pressure", "271 kPa").Reads("chain-slack", "60 mm", "40 mm");
        Assert.Empty(Of(work).Wear);
    }

    private static ManyVisits Worn(double[] millimetres)
    {
        var work = new ManyVisits();
        foreach (var (number, depth) in millimetres.Index())
            work.Comes($"2025-{number + 1:00}-01", 1000 + 2500 * number)
                .ReadsAll(Tread, FormattableString.Invariant($"{depth:0.0} mm"));
        return work;
    }

    private static Outlook Of(ManyVisits work, bool tell = true) =>
        Outlook.Of(work.Jobs[^1], ManyVisits.Bench, tell ? work.Jobs : []);
}
