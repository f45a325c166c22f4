using System.Globalization;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace Witnessmark.Bench.Tests.Visits;

/// <summary>
/// Forecasts held against plain least squares: with nothing known of like parts, the line is the one of MathNet's <c>Fit.Line</c>, and
/// the ends of nine in ten are where Φ of the line's own variance says so.
/// </summary>
public class PointForecastTests
{
    private const string Tread = "tyre-rear-tread";

    [Fact]
    public void The_distance_left_is_that_of_the_least_squares_line()
    {
        double[] km = [1000, 3000, 5000, 8000];
        double[] mm = [6.0, 5.1, 4.3, 2.9];
        var work = Worn(Tread, km, mm);
        var history = work.History(Tread);
        var (limit, sigma) = (history.Limit!.Value.Min!.Value, history.Readings[0].Deviation!.Value);
        var fan = work.Forecast(Tread).Fan!;
        var (a, b) = Fit.Line(km, mm);
        Assert.Equal((limit - a) / b, fan.Levels[^1].Median, 1e-3);
        Assert.Equal(limit, fan.Levels[^1].Value, 9);
        Assert.Equal(a + b * 8000, fan.Levels[0].Value, 1e-6);

        // the line's variance at x: σ²·(1/n + (x − x̄)²/Σ(x − x̄)²); textbook least squares, from memory
        var mean = km.Average();
        var spread = km.Sum(x => (x - mean) * (x - mean));
        double Deviation(double x) => sigma * Math.Sqrt(1.0 / km.Length + (x - mean) * (x - mean) / spread);
        double Reached(double x) => Normal.CDF(0, 1, (limit - (a + b * x)) / Deviation(x));
        Assert.Equal(Brent.FindRoot(x => Reached(x) - 0.05, 8000, 40_000), fan.Levels[^1].Earliest, 1.0);
        Assert.Equal(Brent.FindRoot(x => Reached(x) - 0.95, 8000, 40_000), fan.Levels[^1].Latest, 1.0);
    }

    [Fact]
    public void It_is_said_in_words_with_no_more_figures_than_it_has()
    {
        var forecast = Worn(Tread, [1000, 3000, 5000, 8000], [6.0, 5.1, 4.3, 2.9]).Forecast(Tread);
        Assert.Matches(
            @"^About \d[\d]00 km to the limit; between \d[\d]00 km and \d[\d]00 km nine times in ten\. Ridden as so far, about \w+ 20\d\d; one time in ten by \w+ 20\d\d\.",
            forecast.Words
        );
        Assert.Equal(4, forecast.Run.Count);
        Assert.Empty(forecast.Cautions);
    }

    [Fact]
    public void What_grows_goes_to_its_upper_limit()
    {
        var work = new ManyVisits();
        foreach (
            var (day, km, low) in new[] { ("2024-02-01", 1000, 60), ("2024-08-01", 4000, 62), ("2025-02-01", 7000, 64) }
        )
            work.Comes(day, km).Reads("chain-slack", $"{low} mm", "40 mm");
        var (history, forecast) = (work.History("chain-slack"), work.Forecast("chain-slack"));
        Assert.Equal(history.Limit!.Value.Max, forecast.Fan!.Levels[^1].Value);
        Assert.Equal(7000 + (32 - 24) / (2.0 / 3000), forecast.Fan.Levels[^1].Median, 1e-3); // 2 mm in 3000 km, 8 mm left
    }

    [Theory]
    [InlineData("1000", "6.0", "One reading: how fast it wears is seen after the next one.")]
    [InlineData(
        "1000 1000",
        "6.0 6.0",
        "Cannot predict. Readings and fleet do not tell this part's wear from no wear at all"
    )]
    [InlineData("1000 2000 3000", "6.0 6.0 6.0", "Cannot predict.")]
    [InlineData(
        "1000 4000 6000",
        "6.0 3.0 0.8",
        "By the line through its readings the limit is reached: read it again."
    )]
    public void What_cannot_be_told_is_said_in_words(string km, string mm, string words)
    {
        var forecast = Worn(Tread, Numbers(km), Numbers(mm)).Forecast(Tread);
        Assert.StartsWith(words, forecast.Words);
        Assert.Null(forecast.Fan);
    }

    [Fact]
    public void Two_readings_are_a_line_that_nobody_has_seen_to_be_straight()
    {
        var forecast = Worn(Tread, [1000, 6000], [6.0, 3.5]).Forecast(Tread);
        Assert.NotNull(forecast.Fan);
        Assert.StartsWith("Two readings:", Assert.Single(forecast.Cautions));
    }

    [Fact]
    public void Readings_that_no_straight_line_explains_are_told()
    {
        var forecast = Worn(Tread, [1000, 3000, 5000, 7000, 9000], [6.0, 4.0, 4.8, 2.9, 2.5]).Forecast(Tread);
        Assert.Contains(
            forecast.Cautions,
            c => c.ToString().StartsWith("Counted since 2024-03-01", StringComparison.Ordinal)
        );
        forecast = Worn(Tread, [1000, 3000, 5000, 7000, 9000], [6.0, 4.2, 4.1, 4.0, 2.5]).Forecast(Tread);
        Assert.Contains(
            forecast.Cautions,
            c => c.ToString().StartsWith("The readings lie further", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void After_work_it_counts_anew()
    {
        var work = Worn(Tread, [1000, 3000, 5000], [6.0, 5.0, 4.0]).Does(Tread, "new tyre").ReadsAll(Tread, "7.0 mm");
        var forecast = work.Forecast(Tread);
        Assert.Equal(7.0, Assert.Single(forecast.Run).Value);
        Assert.Equal("Counted since 2024-03-01: it was worked on.", forecast.Cautions[0]);
        Assert.StartsWith("One reading", forecast.Words);
    }

    [Fact]
    public void Work_at_a_neighbour_that_moves_the_point_counts_too()
    {
        var work = new ManyVisits().Comes("2024-02-01", 1000).Reads("chain-slack", "60 mm", "40 mm");
        Assert.Contains("axle-nut", ManyVisits.Bench.Book.Points["chain-slack"].AgainAfter);
        work.Reads("axle-nut", "110 N·m").Reads("chain-slack", "58 mm", "40 mm");
        Assert.Equal([false, true], work.History("chain-slack").Readings.Select(r => r.AfterWork));
    }

    [Fact]
    public void What_reads_better_than_before_was_renewed_though_nobody_wrote_it_down()
    {
        var forecast = Worn(Tread, [1000, 3000, 5000, 7000], [4.0, 3.0, 7.0, 6.0]).Forecast(Tread);
        Assert.Equal([7.0, 6.0], forecast.Run.Select(r => r.Value));
        Assert.Contains("renewed or adjusted, though nobody wrote that down", forecast.Cautions[0]);
    }

    [Fact]
    public void An_odometer_that_went_back_begins_anew()
    {
        var forecast = Worn(Tread, [11_000, 13_000, 200, 2200], [7.0, 6.0, 5.9, 4.9]).Forecast(Tread);
        Assert.Equal(2, forecast.Run.Count);
        Assert.Equal("Counted since 2024-03-01: the odometer shows less than before.", forecast.Cautions[0]);
        Assert.DoesNotContain("cannot be told", forecast.Words);
    }

    [Fact]
    public void A_reading_without_a_distance_counts_for_nothing_but_is_kept()
    {
        var work = new ManyVisits().Comes("2024-02-01", null).ReadsAll(Tread, "5.0 mm");
        Assert.Single(work.History(Tread).Readings);
        Assert.Equal("No forecast: no reading has both its distance and its uncertainty.", work.Forecast(Tread).Words);
    }

    [Theory]
    [InlineData("chain-round", 12, "24 mm", "does not wear away along a line")]
    [InlineData("tyre-rear-pressure", 1, "270 kPa", "it needs a length")]
    public void What_is_no_wear_is_not_forecast(string point, int count, string raw, string says)
    {
        var work = new ManyVisits().Comes("2024-02-01", 1000).Reads(point, [.. Enumerable.Repeat(raw, count)]);
        Assert.Contains(says, work.Forecast(point).Words);
    }

    [Fact]
    public void Each_level_on_the_way_is_passed_earliest_first_and_nothing_lies_behind()
    {
        var fan = Worn(Tread, [1000, 3000, 5000, 8000], [6.0, 5.1, 4.3, 2.9]).Forecast(Tread).Fan!;
        Assert.Equal(8000, fan.From);
        Assert.Equal(13, fan.Levels.Count);
        foreach (var level in fan.Levels)
            Assert.True(fan.From <= level.Earliest && level.Earliest <= level.Median && level.Median <= level.Latest);
        Assert.Equal(fan.Levels.OrderByDescending(l => l.Value), fan.Levels);
        Assert.Equal(fan.Levels.OrderBy(l => l.Latest), fan.Levels);
    }

    /// <summary>One visit for each reading, a month apart, the first on 1 January 2024.</summary>
    private static ManyVisits Worn(string point, double[] km, double[] mm)
    {
        var work = new ManyVisits();
        for (var i = 0; i < km.Length; i++)
            work.Comes($"{new DateOnly(2024, 1, 1).AddMonths(i):yyyy-MM-dd}", km[i])
                .ReadsAll(point, string.Create(CultureInfo.InvariantCulture, $"{mm[i]} mm"));
        return work;
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ').Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
}
