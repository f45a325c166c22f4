using Witnessmark.Handbook.Wear;
using static Witnessmark.Handbook.Tests.Wear.Parts;

namespace Witnessmark.Handbook.Tests.Wear;

/// <summary>The forecast against two computations that share nothing with it, and against simulated parts whose truth is known.</summary>
public class WearForecastOracleTests
{
    public static TheoryData<double[], double[], double, double[], double, double> Scenes =>
        new()
        {
            { [5], [4.9], 0.2, [7, 0.5, 0.2, 0.15], 5, 10 },
            { [2, 3, 4], [3.9, 3.8, 3.35], 0.15, [4.5, 0.25, 0.5, 0.15], 4, 12 },
            { [1, 4, 7, 9], [6.4, 5, 3.4, 2.6], 0.15, [7, 0.45, 0.2, 0.15], 9, 11 },
            { [], [], 0.15, [7, 0.45, 0.2, 0.08], 0, 11 },
            { [4, 1, 4], [5.2, 6.6, 5.1], 0.3, [7, 0.45, 0.4, 0.1], 6, 9 },
        };

    private static WearOutlook Forecast(
        double[] at,
        double[] read,
        double sigma,
        double[] fleet,
        double now,
        double next
    )
    {
        var answer = WearForecast.For(
            [.. at.Zip(read, At)],
            new(sigma),
            Fleet(fleet[0], fleet[1], fleet[2], fleet[3]),
            Ask(2, now, next)
        );
        Assert.True(answer.Holds);
        return answer.Certain;
    }

    // Oracle: Bayes' theorem summed over a grid of 801 × 801 lines, seven deviations of the prior each way.
    [Theory]
    [MemberData(nameof(Scenes))]
    public void It_is_the_posterior_summed_over_a_grid_of_lines(
        double[] at,
        double[] read,
        double sigma,
        double[] fleet,
        double now,
        double next
    )
    {
        var outlook = Forecast(at, read, sigma, fleet, now, next);
        var (weight, start, rate, reached) = (0.0, 0.0, 0.0, 0.0);
        for (var i = -400; i <= 400; i++)
        for (var j = -400; j <= 400; j++)
        {
            var (y, r) = (fleet[0] + fleet[2] * i * 7 / 400, fleet[1] + fleet[3] * j * 7 / 400);
            var w = Math.Exp(-0.5 * (Square(i * 7 / 400.0) + Square(j * 7 / 400.0) + Misfit(at, read, sigma, y, r)));
            weight += w;
            start += w * y;
            rate += w * r;
            reached += y - r * next <= 2 ? w : 0;
        }
        Assert.Equal(start / weight, outlook.Start.Millimetres, 1e-6);
        Assert.Equal(rate / weight, outlook.Rate.Millimetres, 1e-6);
        Assert.Equal(reached / weight, outlook.ByNextService, 5e-3); // the grid's own step at the edge of "reached"
    }

    // Oracle: 400 000 lines drawn from the prior (seeded), each weighted by the likelihood of the readings.
    [Theory]
    [MemberData(nameof(Scenes))]
    public void Lines_drawn_at_random_reach_the_limit_as_foretold(
        double[] at,
        double[] read,
        double sigma,
        double[] fleet,
        double now,
        double next
    )
    {
        var outlook = Forecast(at, read, sigma, fleet, now, next);
        var random = new Random(640);
        var (total, median, early, late, reached) = (0.0, 0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < 400_000; i++)
        {
            var (y, r) = (fleet[0] + fleet[2] * Draw(random), fleet[1] + fleet[3] * Draw(random));
            var w = Math.Exp(-0.5 * Misfit(at, read, sigma, y, r));
            var left = r > 0 ? (y - 2) / r - now : double.PositiveInfinity;
            total += w;
            median += left <= Thousands(outlook.Median) ? w : 0;
            early += left <= Thousands(outlook.Earliest) ? w : 0;
            late += left <= Thousands(outlook.Latest) ? w : 0;
            reached += left <= next - now ? w : 0;
        }
        Assert.Equal(0.5, median / total, 0.01);
        Assert.Equal(0.05, early / total, 0.005);
        Assert.Equal(0.95, late / total, 0.005);
        Assert.Equal(outlook.ByNextService, reached / total, 0.01);
    }

    // Truth known: 4000 parts drawn from the fleet, worn in a straight line, read three times with error.
    [Theory]
    [InlineData(0.2, 0.1, 0.15, 1)]
    [InlineData(0.2, 0.1, 0.05, 2)]
    [InlineData(0.5, 0.05, 0.4, 3)]
    public void Of_parts_that_wear_straight_ninety_in_a_hundred_end_inside_the_interval(
        double startDeviation,
        double rateDeviation,
        double sigma,
        int seed
    )
    {
        var random = new Random(seed);
        var (early, late) = (0, 0);
        const int parts = 4000;
        for (var i = 0; i < parts; i++)
        {
            var (start, rate) = (7 + startDeviation * Draw(random), 0.45 + rateDeviation * Draw(random));
            WearReading[] readings =
            [
                .. new double[] { 1, 3, 5 }.Select(x => At(x, start - rate * x + sigma * Draw(random))),
            ];
            var fleet = Fleet(7, 0.45, startDeviation, rateDeviation);
            var outlook = WearForecast.For(readings, new(sigma), fleet, Ask(2, 5, 6)).Value!;
            var truth = (start - 2) / rate - 5;
            early += truth < Thousands(outlook.Earliest) ? 1 : 0;
            late += truth > (Thousands(outlook.Latest) ?? double.PositiveInfinity) ? 1 : 0;
        }
        Assert.InRange(early / (double)parts, 0.04, 0.06); // three deviations of 4000 draws
        Assert.InRange(late / (double)parts, 0.04, 0.06);
    }

    private static double Square(double x) => x * x;

    private static double Misfit(double[] at, double[] read, double sigma, double start, double rate) =>
        at.Zip(read).Sum(p => Square((p.Second - start + rate * p.First) / sigma));
}
