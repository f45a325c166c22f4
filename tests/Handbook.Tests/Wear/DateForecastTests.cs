using FsCheck.Xunit;
using Witnessmark.Handbook.Wear;
using static Witnessmark.Handbook.Tests.Wear.Parts;

namespace Witnessmark.Handbook.Tests.Wear;

public class DateForecastTests
{
    private const double Kilometre = 1e6; // mm

    private static OdometerDay On(double day, double km) => new(day, new(km * Kilometre));

    private static DistanceLeft Left(double km, double deviation = 0) =>
        new(new(km * Kilometre), new(deviation * Kilometre));

    private static UsagePrior Prior(double perDay, double deviation) =>
        new(new(perDay * Kilometre), new(deviation * Kilometre));

    private static Answer<DateOutlook> For(
        OdometerDay[] odometer,
        DistanceLeft left,
        UsagePrior? prior = null,
        params double[] byDays
    ) => DateForecast.For(odometer, left, prior, DateForecast.UsualScatter, byDays);

    // Oracle: machines whose use is drawn from what the readings leave open (seeded), ridden day by day from then on.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(600, 0)]
    [InlineData(600, 20)]
    public void Machines_drawn_at_random_get_there_as_foretold(double leftDeviation, double priorDeviation)
    {
        OdometerDay[] odometer = [On(0, 0), On(14, 700), On(30, 1500), On(45, 2100), On(60, 2900)];
        UsagePrior? prior = priorDeviation > 0 ? Prior(30, priorDeviation) : null;
        var outlook = For(odometer, Left(6200, leftDeviation), prior, 110, 150).Certain;
        var s2 =
            new[] { (14, 700), (16, 800), (15, 600), (15, 800) }.Sum(i =>
                Math.Pow(i.Item2 - 2900 / 60.0 * i.Item1, 2) / i.Item1
            ) / 3;
        var variance = priorDeviation > 0 ? 1 / (60 / s2 + 1 / (priorDeviation * priorDeviation)) : s2 / 60;
        var mean = priorDeviation > 0 ? variance * (2900 / s2 + 30 / (priorDeviation * priorDeviation)) : 2900 / 60.0;
        var random = new Random(640);
        const int draws = 200_000;
        var reached = new int[4];
        double[] days = [110, 150, outlook.Median!.Value, outlook.Early!.Value];
        for (var i = 0; i < draws; i++)
        {
            var (use, left) = (mean + Math.Sqrt(variance) * Draw(random), 6200 + leftDeviation * Draw(random));
            for (var j = 0; j < days.Length; j++)
                reached[j] += use * days[j] + Math.Sqrt(s2 * days[j]) * Draw(random) >= left ? 1 : 0;
        }
        Assert.Equal(outlook.Probabilities[0], reached[0] / (double)draws, 0.005);
        Assert.Equal(outlook.Probabilities[1], reached[1] / (double)draws, 0.005);
        Assert.Equal(0.5, reached[2] / (double)draws, 0.005);
        Assert.Equal(0.1, reached[3] / (double)draws, 0.005);
    }

    private static double Seasonal(double day) => 30 * (1 + 0.8 * Math.Sin(2 * Math.PI * day / 365.25));

    /// <summary>Of 2000 riders who hardly ride in winter: how many get there before the 10 % day, read monthly over so many months?</summary>
    private static double SoonerThanTheEarlyDay(int months, int seed)
    {
        var random = new Random(seed);
        var sooner = 0;
        for (var i = 0; i < 2000; i++)
        {
            var (begin, km) = (random.NextDouble() * 365, 0.0);
            var odometer = new List<OdometerDay> { On(0, 0) };
            for (var day = 1; day <= 30 * months; day++)
            {
                km += Math.Max(0, Seasonal(begin + day) + 25 * Draw(random));
                if (day % 30 == 0)
                    odometer.Add(On(day, km));
            }
            var early = For([.. odometer], Left(3000)).Value!.Early ?? double.PositiveInfinity;
            var (ridden, ahead) = (0.0, 0);
            while (ridden < 3000 && ahead < early)
                ridden += Math.Max(0, Seasonal(begin + 30 * months + ++ahead) + 25 * Draw(random));
            sooner += ridden >= 3000 ? 1 : 0;
        }
        return sooner / 2000.0;
    }

    // Months of one season resemble each other, which the scatter does not know: one in four gets there before the 10 % day, even
    // when two years were read. The documentation says so.
    [Fact]
    public void A_winter_that_stands_still_makes_the_early_day_too_late()
    {
        Assert.InRange(SoonerThanTheEarlyDay(24, 1), 0.2, 0.3);
        Assert.InRange(SoonerThanTheEarlyDay(3, 2), 0.2, 0.5);
    }

    [Theory]
    [InlineData(2, "Fewer than three")]
    [InlineData(3, "Fewer than three")]
    [InlineData(4, "less than a year")]
    public void Too_few_readings_are_said(int readings, string said)
    {
        var odometer = Enumerable.Range(0, readings).Select(i => On(i * 30, i * 900 + i % 2 * 100)).ToArray();
        var outlook = For(odometer, Left(1000)).Certain;
        Assert.Contains(said, outlook.Caution);
        Assert.Equal(readings - 1, outlook.Intervals);
    }

    [Fact]
    public void A_year_of_readings_needs_no_caution()
    {
        Assert.Null(For([On(0, 0), On(100, 900), On(200, 2000), On(365, 3000)], Left(1000)).Certain.Caution);
        Assert.NotNull(For([On(0, 0), On(100, 900), On(200, 2000), On(364.9, 3000)], Left(1000)).Certain.Caution);
    }

    // One interval: the scatter given is used. 40 km a day over 25 days with 60 km/√day: variance of u = 3600/25 = 144, by hand.
    [Fact]
    public void With_one_interval_the_usual_scatter_counts()
    {
        var outlook = For([On(5, 100), On(30, 1100)], Left(1000), null, 25).Certain;
        Assert.Equal(25, outlook.Median!.Value, 1e-12);
        Assert.Equal(0.5, outlook.Probabilities[0], 1e-12);
        var other = For([On(5, 100), On(30, 1100)], Left(1000), null, 16).Certain.Probabilities[0];
        var by = (40 * 16 - 1000) / Math.Sqrt(16 * 16 * 144 + 3600 * 16);
        Assert.Equal(MathNet.Numerics.Distributions.Normal.CDF(0, 1, by), other, 1e-12);
    }

    // Two intervals: their own scatter. (110 − 100)²/10 + (90 − 100)²/10 = 20 km² a day, by hand.
    [Fact]
    public void With_two_intervals_their_own_scatter_counts()
    {
        var p = For([On(0, 0), On(10, 110), On(20, 200)], Left(100), null, 9).Certain.Probabilities[0];
        var by = (10 * 9 - 100) / Math.Sqrt(9 * 9 * 1.0 + 20 * 9);
        Assert.Equal(MathNet.Numerics.Distributions.Normal.CDF(0, 1, by), p, 1e-12);
    }

    [Fact]
    public void One_reading_needs_a_prior()
    {
        Assert.Equal("noUsage", For([On(0, 500)], Left(100)).Refusal!.Key);
        var outlook = For([On(0, 500)], Left(100), Prior(20, 5), 5).Certain;
        Assert.Equal(5, outlook.Median!.Value, 1e-12);
        Assert.Equal(0, outlook.Intervals);
    }

    [Fact]
    public void A_machine_that_stands_gets_no_day_and_one_that_went_back_no_answer()
    {
        var still = For([On(0, 500), On(9, 500)], Left(100), null, 4);
        Assert.Equal("notRidden", still.Refusal!.Key);
        Assert.Null(still.Value!.Median);
        Assert.Null(still.Value.Early);
        Assert.InRange(still.Value.Probabilities[0], 0, 0.5);
        var back = For([On(0, 500), On(9, 400), On(12, 300)], Left(100));
        Assert.Equal("odometerBack", back.Refusal!.Key);
        Assert.Contains("day 0 and day 9", back.Refusal.Because);
        Assert.Null(back.Value);
    }

    [Fact]
    public void What_makes_no_sense_is_a_bug_of_the_caller()
    {
        Assert.Throws<ArgumentException>(() => For([], Left(100)));
        Assert.Throws<ArgumentException>(() => For([On(1, 0), On(1, 10)], Left(100)));
        Assert.Throws<ArgumentException>(() => For([On(2, 0), On(1, 10)], Left(100)));
    }

    [Fact]
    public void Even_riding_gets_there_on_the_day()
    {
        var outlook = For([On(0, 0), On(10, 300), On(20, 600), On(30, 900)], Left(600), null, 19.999, 20).Certain;
        Assert.Equal([0, 1], outlook.Probabilities);
        Assert.Equal(20, outlook.Early!.Value, 1e-9);
    }

    // 0.1 = Φ(−1.2816): with that many deviations left the early day is today.
    [Theory]
    [InlineData(1281, 0)]
    [InlineData(1282, 1e-3)]
    public void A_distance_that_may_be_gone_already_is_early_today(double km, double least)
    {
        var day = For([On(0, 0), On(10, 310), On(20, 640), On(30, 900)], Left(km, 1000)).Certain.Early!.Value;
        Assert.True(least == 0 ? day == 0 : day is > 1e-3 and < 1);
    }

    [Property(MaxTest = 1000)]
    public void The_early_day_is_where_the_chance_is_one_in_ten(uint a, uint b, uint c, uint d)
    {
        OdometerDay[] odometer =
        [
            On(0, 0),
            On(20, Chance.Between(0, 900, a)),
            On(50, Chance.Between(901, 2000, b)),
            On(80, 2500),
        ];
        var left = Left(Chance.Between(0, 9000, c), Chance.Between(0, 900, d));
        var day = For(odometer, left).Certain.Early!.Value;
        var p = For(odometer, left, null, day).Certain.Probabilities[0];
        Assert.True(day == 0 ? p >= 0.1 - 1e-9 : Math.Abs(p - 0.1) < 1e-6);
        Assert.True(day <= For(odometer, left).Certain.Median + 1e-9);
    }
}
