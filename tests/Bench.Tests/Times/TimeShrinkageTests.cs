using FsCheck.Xunit;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Tests.Times;

public class TimeShrinkageTests
{
    private const double Book = 600;

    [Fact]
    public void With_no_time_of_anybody_the_book_stands()
    {
        Assert.Equal(Book, Of().Shop, 9);
        Assert.Empty(Of().Own);
        var disturbed = Of(("Ines", [Book * 10.001, Book / 10.001]));
        Assert.Equal((Book, 0), (Math.Round(disturbed.Shop, 9), disturbed.Counted["Ines"]));
        Assert.Equal(2, Of(("Ines", [Book * 10, Book / 10])).Counted["Ines"]);
    }

    /// <summary>
    /// Worked by hand, normal model with known variances (Gelman et al., Bayesian Data Analysis, 2.5 and 5.4, from memory).
    /// Four doings of 750 s against 600 s: ω = 4·4/(4 + 4) = 2, θ = (2·ln 600 + 2·ln 750)/4, so the shop's is √(600·750) = 670.820 s;
    /// φ = (4·θ + 4·ln 750)/8, so Ines's is √(670.820·750) = 709.306 s.
    /// </summary>
    [Fact]
    public void Four_equal_doings_move_the_shop_half_way_and_their_technician_three_quarters()
    {
        var shrunk = Of(("Ines", [750, 750, 750, 750]));
        Assert.Equal(670.820, shrunk.Shop, 3);
        Assert.Equal(709.306, shrunk.Own["Ines"], 3);
    }

    /// <summary>By hand: Ines 4 × 750 s (ω = 2), Bram 1 × 660 s (ω = 1·4/5 = 0.8): θ = (2·ln 600 + 2·ln 750 + 0.8·ln 660)/4.8.</summary>
    [Fact]
    public void Two_technicians_are_weighed_by_what_each_can_tell_of_the_shop()
    {
        var shrunk = Of(("Ines", [750, 750, 750, 750]), ("Bram", [660]));
        var theta = (2 * Math.Log(600) + 2 * Math.Log(750) + 0.8 * Math.Log(660)) / 4.8;
        Assert.Equal(Math.Exp(theta), shrunk.Shop, 6);
        Assert.Equal(Math.Exp((4 * theta + Math.Log(660)) / 5), shrunk.Own["Bram"], 6);
    }

    /// <summary>The joint normal distribution of shop and technicians, solved as one linear system: precision · mean = information.</summary>
    [Property(MaxTest = 200)]
    public void While_nothing_is_far_off_it_is_the_posterior_mean_of_the_two_levels(uint seed)
    {
        var chance = new Random((int)(seed % int.MaxValue));
        var times = Enumerable
            .Range(0, chance.Next(1, 5))
            .Select(k =>
                (
                    $"t{k}",
                    Enumerable
                        .Range(0, chance.Next(1, 8))
                        .Select(_ => Book * (0.95 + 0.1 * chance.NextDouble()))
                        .ToArray()
                )
            )
            .ToArray();
        var shrunk = Of(times);
        var precision = Matrix<double>.Build.Dense(times.Length + 1, times.Length + 1);
        var information = Vector<double>.Build.Dense(times.Length + 1);
        precision[0, 0] = TimeShrinkage.BookWeight + TimeShrinkage.ShopWeight * times.Length;
        information[0] = TimeShrinkage.BookWeight * Math.Log(Book);
        foreach (var (i, (_, own)) in times.Index())
        {
            precision[0, i + 1] = precision[i + 1, 0] = -TimeShrinkage.ShopWeight;
            precision[i + 1, i + 1] = TimeShrinkage.ShopWeight + own.Length;
            information[i + 1] = own.Sum(Math.Log);
        }
        var mean = precision.Solve(information);
        Assert.Equal(Math.Exp(mean[0]), shrunk.Shop, 6);
        foreach (var (i, (name, _)) in times.Index())
            Assert.Equal(Math.Exp(mean[i + 1]), shrunk.Own[name], 6);
    }

    /// <summary>Huber's likelihood written out and searched by a grid, one technician: the mode is where nothing is better.</summary>
    [Theory]
    [InlineData(700, 720, 690, 4800)]
    [InlineData(700, 720, 690, 100)]
    [InlineData(500, 2000, 2100, 2200)]
    public void Nothing_near_it_is_more_likely(params int[] seconds)
    {
        var shrunk = Of(("Ines", [.. seconds.Select(s => (double)s)]));
        var (shop, own) = (Math.Log(shrunk.Shop), Math.Log(shrunk.Own["Ines"]));
        var best = Cost(shop, own);
        foreach (var step in (double[])[1e-4, 1e-2, 0.3, 2])
        foreach (
            var (a, b) in ((double, double)[])[(1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, -1), (1, -1), (-1, 1)]
        )
            Assert.True(Cost(shop + a * step, own + b * step) > best - 1e-12);

        double Cost(double theta, double phi) =>
            TimeShrinkage.BookWeight * Square(theta - Math.Log(Book)) / 2
            + TimeShrinkage.ShopWeight * Square(phi - theta) / 2
            + seconds.Sum(s => Rho(Math.Log(s) - phi));
    }

    // in units of σ²: r²/2 near, c·|r| − c²/2 far
    private static double Rho(double away)
    {
        const double far = TimeShrinkage.Far * TimeShrinkage.Scatter;
        return Math.Abs(away) <= far ? away * away / 2 : far * Math.Abs(away) - far * far / 2;
    }

    /// <summary>
    /// Simulation: one doing in ten is interrupted and takes six times as long. 40 doings of a true 900 s, book 600 s, 400 shops; the seed is
    /// fixed. The plain mean of the logs is dragged by 0.1·ln 6 = 18 %; the bound of a third of it is chosen here.
    /// </summary>
    [Fact]
    public void Interrupted_work_does_not_drag_the_time()
    {
        var chance = new Random(20261125);
        List<double> robust = [];
        List<double> plain = [];
        for (var shop = 0; shop < 400; shop++)
        {
            var logs = Enumerable
                .Range(0, 40)
                .Select(_ =>
                    Normal.Sample(chance, Math.Log(900), TimeShrinkage.Scatter)
                    + (chance.Next(10) == 0 ? Math.Log(6) : 0)
                )
                .ToArray();
            robust.Add(Math.Log(Of(("Ines", [.. logs.Select(Math.Exp)])).Own["Ines"] / 900));
            plain.Add(logs.Average() - Math.Log(900));
        }
        Assert.InRange(plain.Average(), 0.15, 0.21);
        Assert.InRange(robust.Average(), -0.06, 0.06);
    }

    /// <summary>Without interruption it comes to the technician's own time, whatever the book says.</summary>
    [Theory]
    [InlineData(300)]
    [InlineData(2000)]
    public void With_many_doings_the_technicians_own_time_is_planned(double truth)
    {
        var chance = new Random(7);
        var times = Enumerable
            .Range(0, 400)
            .Select(_ => Math.Exp(Normal.Sample(chance, Math.Log(truth), TimeShrinkage.Scatter)))
            .ToArray();
        Assert.Equal(truth, Of(("Ines", times)).Own["Ines"], truth * 0.05);
    }

    [Property(MaxTest = 200)]
    public void It_lies_between_the_book_and_what_was_timed_and_scales_with_both(uint seed)
    {
        var chance = new Random((int)(seed % int.MaxValue));
        var times = Enumerable
            .Range(0, chance.Next(1, 10))
            .Select(_ => Book * Math.Pow(10, chance.NextDouble() * 1.9 - 0.95))
            .ToArray();
        var shrunk = Of(("Ines", times));
        Assert.InRange(shrunk.Own["Ines"], times.Append(Book).Min() - 1e-6, times.Append(Book).Max() + 1e-6);
        Assert.InRange(
            shrunk.Shop,
            Math.Min(Book, shrunk.Own["Ines"]) - 1e-6,
            Math.Max(Book, shrunk.Own["Ines"]) + 1e-6
        );
        var thrice = TimeShrinkage.Of(
            3 * Book,
            new Dictionary<string, IReadOnlyList<double>> { ["Ines"] = [.. times.Select(t => 3 * t)] }
        );
        Assert.Equal(3 * shrunk.Own["Ines"], thrice.Own["Ines"], 3 * Book * 1e-9);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-1, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(1, 0)]
    [InlineData(1, -5)]
    public void Nothing_takes_no_time(double book, double time) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            TimeShrinkage.Of(book, new Dictionary<string, IReadOnlyList<double>> { ["Ines"] = [time] })
        );

    private static double Square(double x) => x * x;

    private static Shrunk Of(params (string Who, double[] Times)[] times) =>
        TimeShrinkage.Of(Book, times.ToDictionary(t => t.Who, IReadOnlyList<double> (t) => t.Times));
}
