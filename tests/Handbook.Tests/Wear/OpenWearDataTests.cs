using System.Globalization;
using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Wear;
using static Witnessmark.Handbook.Tests.Wear.Parts;

namespace Witnessmark.Handbook.Tests.Wear;

/// <summary>The forecast judged by wear that was really measured (ReferenceData/wear/PROVENANCE.md). The numbers found stand in the documentation.</summary>
public class OpenWearDataTests
{
    // crack lengths are written in steps of 0.01 in over 0.9 in: the deviation of a rounded reading (GUM F.2.2.1)
    private static readonly double Rounded = 0.01 / 0.9 / Math.Sqrt(12);

    private static double[][] Rows(string name) =>
        [
            .. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "ReferenceData", "wear", name))
                .Skip(1)
                .Select(line => line.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray()),
        ];

    // 10 000 cycles count as 1000 km; what is left of twice the starting length counts as thickness
    private static WearReading[][] CrackPaths() =>
        [.. Rows("fatigue.csv").GroupBy(r => r[0]).Select(g => g.Select(r => At(r[1] * 100, 2 - r[2])).ToArray())];

    private static WearReading[] FirstHalf(WearReading[] path) => path[..((path.Length + 1) / 2)];

    private static double RateOf(WearReading[] path) =>
        -MathNet
            .Numerics.Fit.Line(
                [.. path.Select(p => Thousands(p.At)!.Value)],
                [.. path.Select(p => p.Value.Millimetres)]
            )
            .B;

    private static (double Mean, double Deviation) Across(IReadOnlyCollection<double> values)
    {
        var mean = values.Average();
        return (mean, Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Count - 1)));
    }

    /// <summary>Of every path the first half is read, the other twenty being the fleet; where does the later reading lie?</summary>
    private static (int Inside, int Sooner, int Later, int Agree) Cracks(Func<WearReading[], WearReading> later)
    {
        var paths = CrackPaths();
        var found = (Inside: 0, Sooner: 0, Later: 0, Agree: 0);
        foreach (var path in paths)
        {
            var (rate, deviation) = Across([.. paths.Where(p => p != path).Select(p => RateOf(FirstHalf(p)))]);
            var (half, truth) = (FirstHalf(path), later(path));
            var question = new WearQuestion(truth.Value, half[^1].At, truth.At);
            var outlook = WearForecast.For(half, new(Rounded), Fleet(1, rate, 0, deviation), question).Certain;
            var ahead = truth.At - half[^1].At;
            found.Sooner += ahead < outlook.Earliest ? 1 : 0;
            found.Later += ahead > outlook.Latest ? 1 : 0;
            found.Inside += ahead >= outlook.Earliest && ahead <= outlook.Latest ? 1 : 0;
            found.Agree += outlook.Agrees == true ? 1 : 0;
        }
        return found;
    }

    [Fact]
    public void There_are_21_crack_paths_of_262_readings()
    {
        Assert.Equal(21, CrackPaths().Length);
        Assert.Equal(262, CrackPaths().Sum(p => p.Length));
    }

    // Cracks grow ever faster: a straight line promises too much, and must be known to.
    [Fact]
    public void A_straight_line_fails_on_cracks_and_always_to_the_late_side()
    {
        var toTheEnd = Cracks(path => path[^1]);
        // only 6 of the 21 halves still pass for a straight line: most failures announce themselves
        Assert.Equal((0, 21, 0), (toTheEnd.Inside, toTheEnd.Sooner, toTheEnd.Later));
        var toTheNext = Cracks(path => path[FirstHalf(path).Length]);
        Assert.Equal((1, 20, 0, 6), (toTheNext.Inside, toTheNext.Sooner, toTheNext.Later, toTheNext.Agree));
    }

    // Leave one out: the others are the fleet, nothing of the one is read, its wear after 1000 km is the truth.
    [Theory]
    [InlineData("shoes.csv", 0, 8, 10)]
    [InlineData("shoes.csv", 1, 9, 10)]
    [InlineData("rubber.csv", 0, 26, 30)]
    public void The_fleet_alone_foretells_the_wear_of_one_more(string name, int column, int inside, int of)
    {
        var wear = Rows(name).Select(r => r[column]).ToArray();
        var hits = 0;
        for (var i = 0; i < wear.Length; i++)
        {
            var (rate, deviation) = Across([.. wear.Where((_, j) => j != i)]);
            var oneMore = deviation * Math.Sqrt(1 + 1.0 / (wear.Length - 1));
            var outlook = WearForecast.For([], new(1), Fleet(1000, rate, 0, oneMore), Ask(1000 - wear[i], 0, 1)).Value!;
            hits += Thousands(outlook.Earliest) <= 1 && (Thousands(outlook.Latest) ?? 9) >= 1 ? 1 : 0;
        }
        Assert.Equal((inside, of), (hits, wear.Length));
    }

    // Every second group of wheels is fitted; the others are foretold: how many lie within the 90 % interval of their count?
    [Fact]
    public void Wheels_that_crack_by_wear_are_foretold_and_early_cracks_are_not()
    {
        var groups = Rows("turbine.csv");
        var missed = new List<double>();
        foreach (var half in (int[])[0, 1])
        {
            var (rate, deviation) = MostLikely([.. groups.Where((_, i) => i % 2 == half)]);
            foreach (var group in groups.Where((_, i) => i % 2 != half))
            {
                var p = Cracked(rate, deviation, group[0]);
                var spread = Math.Sqrt(group[1] * p * (1 - p));
                if (Math.Abs(group[2] - group[1] * p) > 1.6449 * spread)
                    missed.Add(group[0]);
            }
        }
        Assert.Equal([10, 38, 46], missed.Order());
    }

    private static double Cracked(double rate, double deviation, double hours) =>
        WearForecast.For([], new(1), Fleet(1, rate, 0, deviation), Ask(0, 0, hours)).Value!.ByNextService;

    private static (double Rate, double Deviation) MostLikely(double[][] groups)
    {
        var best = (Rate: 0.0, Deviation: 0.0, Log: double.NegativeInfinity);
        for (var rate = 0.002; rate < 0.08; rate += 0.0004)
        for (var deviation = 0.002; deviation < 0.08; deviation += 0.0004)
        {
            var log = groups.Sum(g =>
                Binomial.PMFLn(Math.Clamp(Cracked(rate, deviation, g[0]), 1e-12, 1 - 1e-12), (int)g[1], (int)g[2])
            );
            best = log > best.Log ? (rate, deviation, log) : best;
        }
        return (best.Rate, best.Deviation);
    }
}
