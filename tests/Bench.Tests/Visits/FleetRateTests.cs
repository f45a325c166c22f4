using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Statistics;
using Witnessmark.Bench.Visits;

namespace Witnessmark.Bench.Tests.Visits;

/// <summary>
/// The wear of like machines, against MathNet's <c>Fit.Line</c> and <c>StandardDeviation</c>, the printed table of Student's t, and
/// simulated machines.
/// </summary>
public class FleetRateTests
{
    private const string Tread = "tyre-rear-tread";
    private const double Z95 = 1.645; // Φ⁻¹(0.95), NIST/SEMATECH e-Handbook 1.3.6.7.1

    private static readonly PointHistory Worn = new ManyVisits()
        .Comes("2024-02-01", 1000)
        .ReadsAll(Tread, "6.5 mm")
        .History(Tread);

    private static readonly double Sigma = Worn.Readings[0].Deviation!.Value;

    // 95 % points of Student's t: NIST/SEMATECH e-Handbook 1.3.6.7.2, degrees of freedom 2, 3, 4 and 9
    [Theory]
    [InlineData(3, 2.920)]
    [InlineData(4, 2.353)]
    [InlineData(5, 2.132)]
    [InlineData(10, 1.833)]
    public void Mean_and_width_are_those_of_one_more_machine(int machines, double t)
    {
        double[] km = [1000, 5000, 12_000];
        var mm = Enumerable
            .Range(0, machines)
            .Select(i => new[] { 6.5, 5.1 - 0.2 * i, 2.5 - 0.13 * (i * i % 7) })
            .ToArray();
        var slopes = mm.Select(y => Fit.Line([.. km.Select(x => x / 1000)], y).B).ToArray();
        var (rate, counted) = FleetRate.Of(mm.Select(y => Wears(km, y)));
        Assert.Equal((machines, machines), (rate!.Machines, counted));
        Assert.Equal(slopes.Mean(), rate.Mean, 9);
        Assert.Equal(
            slopes.StandardDeviation() * Math.Sqrt(1 + 1.0 / machines) * t / Z95,
            rate.Deviation,
            rate.Deviation * 1e-3
        );
    }

    [Fact]
    public void Machines_that_agree_better_than_their_readings_can_tell_are_as_wide_as_the_readings_say()
    {
        var (rate, _) = FleetRate.Of(Enumerable.Repeat(Wears([1000, 5000], [6.5, 4.5]), 3));
        // variance of a slope through two points 4 apart: σ²/(2² + 2²)
        Assert.Equal(Sigma / Math.Sqrt(8) * Math.Sqrt(4.0 / 3) * 2.920 / Z95, rate!.Deviation, rate.Deviation * 1e-3);
        Assert.Equal(-0.5, rate.Mean, 9);
    }

    [Fact]
    public void Two_machines_are_no_fleet_and_those_without_a_rate_do_not_count()
    {
        var wears = Wears([1000, 5000], [6.5, 4.5]);
        PointHistory[] silent =
        [
            Worn,
            Worn with
            {
                Readings = [],
            },
            Worn with
            {
                Limit = null,
            },
            Wears([1000, 1999], [6.5, 6.0]),
        ];
        Assert.Equal((null, 0), FleetRate.Of([]));
        Assert.Equal((null, 0), FleetRate.Of(silent));
        Assert.Equal((null, 2), FleetRate.Of([wears, .. silent, wears]));
        Assert.Equal(3, FleetRate.Of([wears, Wears([1000, 2000], [6.5, 6.0]), wears]).Rate!.Machines);
    }

    [Fact]
    public void Only_what_was_read_since_the_last_work_counts()
    {
        var renewed = Wears([1000, 5000, 6000, 8000], [6.5, 2.5, 6.5, 5.5]);
        Assert.Equal(-0.5, FleetRate.Of(Enumerable.Repeat(renewed, 3)).Rate!.Mean, 9);
    }

    [Fact]
    public void The_forecast_is_the_line_with_that_rate_known_beforehand()
    {
        double[] km = [1000, 4000];
        double[] mm = [6.0, 4.9];
        var fleet = new FleetRate(4, -0.5, 0.08);
        var forecast = PointForecast.Of(Wears(km, mm), [], fleet);
        Assert.Equal("With the wear of 4 other machines.", forecast.Basis);

        // normal equations with one more row for the rate, A. Gelman et al., Bayesian Data Analysis, 3rd edition, 14.8 (from memory)
        var a = Matrix<double>.Build.DenseOfArray(
            new[,]
            {
                { 1 / Sigma, km[0] / 1000 / Sigma },
                { 1 / Sigma, km[1] / 1000 / Sigma },
                { 0, 1 / fleet.Deviation },
            }
        );
        var b = Vector<double>.Build.Dense([mm[0] / Sigma, mm[1] / Sigma, fleet.Mean / fleet.Deviation]);
        var line = a.QR().Solve(b);
        var limit = Worn.Limit!.Value.Min!.Value;
        Assert.Equal((limit - line[0]) / line[1] * 1000, forecast.Fan!.Levels[^1].Median, 0.1);
        var alone = PointForecast.Of(Wears(km, mm), []).Fan!.Levels[^1].Median;
        Assert.True(Math.Abs(alone - forecast.Fan.Levels[^1].Median) > 500); // km: the prior is felt
    }

    [Fact]
    public void With_a_fleet_one_reading_is_enough_and_says_so()
    {
        var forecast = PointForecast.Of(Worn, [], new(3, -0.5, 0.05));
        var limit = Worn.Limit!.Value.Min!.Value;
        Assert.Equal(1000 + (6.5 - limit) / 0.5 * 1000, forecast.Fan!.Levels[^1].Median, 0.1);
        Assert.Equal(
            "One reading: how fast it wears is known from the other machines alone.",
            Assert.Single(forecast.Cautions)
        );
        var alone = PointForecast.Of(Worn, []);
        Assert.Equal("From this machine alone.", alone.Basis);
        Assert.Null(alone.Fan);
        Assert.Equal("", PointForecast.Of(Worn with { Limit = null }, [], new(3, -0.5, 0.05)).Basis);
    }

    [Fact]
    public void Readings_that_the_fleet_does_not_explain_are_told()
    {
        var forecast = PointForecast.Of(Wears([1000, 4000], [6.0, 3.0]), [], new(5, -0.2, 0.01));
        Assert.Contains(
            "The readings, a straight line and the other machines do not agree: take it as rough.",
            forecast.Cautions.Select(c => c.ToString())
        );
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(-0.4)]
    public void Between_two_limits_the_fleet_tells_towards_which_it_wears(double rate)
    {
        var slack = new ManyVisits()
            .Comes("2024-02-01", 1000)
            .Reads("chain-slack", "60 mm", "38 mm")
            .History("chain-slack");
        var limit = slack.Limit!.Value;
        var bound = rate > 0 ? limit.Max!.Value : limit.Min!.Value;
        var fan = PointForecast.Of(slack, [], new(3, rate, 0.02)).Fan!;
        Assert.Equal(bound, fan.Levels[^1].Value, 9);
        Assert.Equal(1000 + (bound - slack.Readings[0].Value) / rate * 1000, fan.Levels[^1].Median, 0.1);
    }

    /// <summary>4000 simulated fleets each: nine in ten further machines lie inside, one in twenty on either side, within 1 %.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(12)]
    public void Nine_in_ten_further_machines_reach_the_limit_within_the_forecast(int machines)
    {
        const int fleets = 4000;
        var chance = new Random(26_11);
        var rates = new Normal(-0.5, 0.06, chance);
        var (early, late) = (0, 0);
        for (var i = 0; i < fleets; i++)
        {
            var (fleet, _) = FleetRate.Of(
                Enumerable.Range(0, machines).Select(_ => rates.Sample()).Select(r => Wears([0, 8000], [7, 7 + 8 * r]))
            );
            var z = (rates.Sample() - fleet!.Mean) / fleet.Deviation;
            (early, late) = (early + (z < -Z95 ? 1 : 0), late + (z > Z95 ? 1 : 0));
        }
        Assert.InRange((double)early / fleets, 0.04, 0.06);
        Assert.InRange((double)late / fleets, 0.04, 0.06);
    }

    [Fact]
    public void Other_machines_of_the_same_sheet_are_told_apart_by_VIN_or_id()
    {
        var work = new ManyVisits()
            .Comes("2024-01-01", 1000)
            .Comes("2024-02-01", 500, ManyVisits.Machine with { Id = "x", Vin = "GZ0FE64C8RH000412" }, "x")
            .Comes("2024-01-01", 100, ManyVisits.Machine with { Id = "y", Vin = "GZ0FE64C8RH000412" }, "y")
            .Comes("2024-01-01", 900, ManyVisits.Machine with { Id = "z", Vin = "" }, "z")
            .Comes("2024-01-01", 900, ManyVisits.Machine with { Id = "own" }, "own"); // its VIN is that of 17
        var others = MachineVisits.Others(
            "17",
            ManyVisits.Machine.Vin,
            "fell-640",
            work.All,
            ManyVisits.Bench.Workshop
        );
        Assert.Equal(["3 2", "4"], others.Select(v => string.Join(' ', v.Select(j => j.Job))));
        Assert.Empty(MachineVisits.Others("17", null, "another-sheet", work.All, ManyVisits.Bench.Workshop));
    }

    /// <summary>The demo machine's rear tread with other readings.</summary>
    private static PointHistory Wears(double[] km, double[] mm) =>
        Worn with
        {
            Readings = [.. km.Zip(mm, (x, y) => Worn.Readings[0] with { Kilometres = x, Value = y })],
        };
}
