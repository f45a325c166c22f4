using Witnessmark.Handbook.FinalDrive;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ChainRoundTests
{
    private static readonly RoundDrive Usual = new(15, 44, 108);

    // Slack with all three causes and a scatter that repeats on every run
    private static double Uneven(double link, RoundDrive drive) =>
        30
        + 1.5 * Math.Cos(2 * Math.PI * (link - 12) / drive.RearTeeth)
        + 0.8 * Math.Cos(2 * Math.PI * (link - 4) / drive.FrontTeeth)
        - 2 * Math.Cos(2 * Math.PI * (link - 62) / drive.Links)
        + 0.6 * Math.Sin(link * link * 0.37);

    private static RoundReading[] Read(
        RoundDrive drive,
        double step,
        int count,
        Func<double, RoundDrive, double> slack
    ) => [.. Enumerable.Range(0, count).Select(i => new RoundReading(i * step, new(slack(i * step, drive))))];

    private static Answer<Round> Told(RoundDrive drive, double step, int count) =>
        ChainRound.From(drive, Read(drive, step, count, Uneven));

    [Theory]
    [InlineData(15, 44, 108, 9, 24)]
    [InlineData(14, 50, 112, 9, 32)]
    [InlineData(16, 42, 110, 5, 44)]
    public void Components_are_those_of_the_normal_equations(int front, int rear, int links, double step, int count)
    {
        var drive = new RoundDrive(front, rear, links);
        var readings = Read(drive, step, count, Uneven);
        var told = ChainRound.From(drive, readings).Certain;
        double[] Row(double s, bool wheel, bool chain) =>
            [
                1,
                .. wheel ? Pair(s / rear) : [],
                .. Pair(s / front),
                .. chain ? Enumerable.Range(1, 3).SelectMany(j => Pair(j * s / links)) : [],
            ];
        var y = readings.Select(r => r.Slack.Millimetres).ToArray();
        var (b, rss) = NormalEquations([.. readings.Select(r => Row(r.Link, true, true))], y);
        var dof = count - 11;
        Assert.Equal(b[0], told.Mean!.Value.Millimetres, 1e-8);
        Assert.Equal(Math.Sqrt(rss / dof), told.Residual!.Value.Millimetres, 1e-8);
        Assert.Equal(Math.Sqrt(b[1] * b[1] + b[2] * b[2]), told.Components!.Wheel.Amplitude.Millimetres, 1e-8);
        var (_, withoutWheel) = NormalEquations([.. readings.Select(r => Row(r.Link, false, true))], y);
        var (_, withoutChain) = NormalEquations([.. readings.Select(r => Row(r.Link, true, false))], y);
        Same((withoutWheel - rss) / 2 / (rss / dof), 2, dof, told.Components.Wheel.Tested);
        Same((withoutChain - rss) / 6 / (rss / dof), 6, dof, told.Components.Chain.Tested);
        Swept(b, links, told.Components.Chain);
    }

    private static void Same(double f, int q, int dof, Tested tested)
    {
        Assert.Equal(f, tested.F, 1e-6 * f);
        Assert.Equal(UpperTail(f, q, dof), tested.P, 1e-9);
    }

    // The fitted chain curve at every hundredth of a link
    private static void Swept(double[] b, int links, ChainCurve curve)
    {
        double At(double s) =>
            Enumerable
                .Range(1, 3)
                .Sum(j =>
                    b[3 + 2 * j] * Math.Cos(2 * Math.PI * j * s / links)
                    + b[4 + 2 * j] * Math.Sin(2 * Math.PI * j * s / links)
                );
        var places = Enumerable.Range(0, links * 100).Select(i => i / 100.0).ToArray();
        Assert.Equal(places.Max(At) - places.Min(At), curve.PeakToPeak.Millimetres, 1e-5);
        Assert.Equal(places.MinBy(At), curve.TightestAtLink, 0.01);
    }

    [Theory]
    [InlineData(40)]
    [InlineData(12)]
    public void A_wave_is_loosest_where_it_was_put(double link)
    {
        var told = ChainRound.From(
            Usual,
            Read(Usual, 9, 24, (s, d) => 30 + 4 * Math.Cos(2 * Math.PI * (s - link) / d.RearTeeth))
        );
        Assert.Equal(link, told.Certain.Components!.Wheel.LoosestAtLink, 1e-9);
        Assert.Equal(4, told.Certain.Components.Wheel.Amplitude.Millimetres, 1e-9);
    }

    [Theory]
    [InlineData(0.01)]
    [InlineData(-0.01)]
    [InlineData(54)]
    public void The_tightest_place_of_the_chain_is_a_link_of_it(double link)
    {
        var told = ChainRound.From(
            Usual,
            Read(Usual, 9, 24, (s, d) => 30 - 2 * Math.Cos(2 * Math.PI * (s - link) / d.Links))
        );
        Assert.Equal(link < 0 ? 108 + link : link, told.Certain.Components!.Chain.TightestAtLink, 1e-3);
    }

    [Fact]
    public void Without_a_reading_it_is_a_bug_of_the_caller() =>
        Assert.Throws<ArgumentException>("readings", () => ChainRound.From(Usual, []));

    [Fact]
    public void Readings_without_any_residual_are_still_told()
    {
        var even = ChainRound.From(Usual, Read(Usual, 9, 24, (_, _) => 30)).Certain;
        Assert.False(even.Components!.Wheel.Tested.Significant || even.Components.Chain.Tested.Significant);
        var taut = ChainRound.From(Usual, Read(Usual, 9, 24, (_, _) => 0)).Certain;
        Assert.Equal((0, 1, false), (taut.Components!.Chain.Tested.F, taut.Components.Chain.Tested.P, false));
        // A wave of a tenth of a nanometre is arithmetic, however well it fits
        double Tiny(double s, RoundDrive d) => 30 + 1e-7 * Math.Cos(2 * Math.PI * s / d.RearTeeth);
        Assert.False(ChainRound.From(Usual, Read(Usual, 9, 24, Tiny)).Certain.Components!.Wheel.Tested.Significant);
        var wave = ChainRound.From(Usual, Read(Usual, 9, 24, (s, _) => 30 + Math.Cos(2 * Math.PI * s / 44))).Certain;
        Assert.True(wave.Components!.Wheel.Tested.Significant);
        Assert.True(double.IsFinite(wave.Components.Wheel.Tested.F));
        Assert.False(wave.Components.Front.Tested.Significant);
    }

    // Which designs cannot be told apart follows from the frequencies at the sampled places, by counting
    [Theory]
    [InlineData(15, 45, 108, 11.25, 20, "wheel front")] // ratio 3 at quarter turns
    [InlineData(16, 38, 114, 9, 24, "wheel chain")] // the wheel comes round with the chain's third wave
    [InlineData(15, 44, 108, 22, 24, "wheel")] // half turns: only the sign of one wave is seen
    [InlineData(15, 44, 108, 44, 24, "wheel mean")] // whole turns: the wheel looks like the mean
    public void Components_that_cannot_be_told_apart_are_named(
        int front,
        int rear,
        int links,
        double step,
        int count,
        string confounded
    )
    {
        var told = Told(new(front, rear, links), step, count).Certain;
        Assert.Equal(confounded, string.Join(' ', told.Confounded!));
        Assert.Null(told.Components);
        Assert.Equal(confounded.Contains("mean", StringComparison.Ordinal), told.Mean is null);
        Assert.True(told.Residual!.Value.Millimetres > 0);
    }

    [Fact]
    public void All_readings_at_one_place_tell_nothing_apart()
    {
        var told = ChainRound.From(Usual, Read(Usual, 0, 20, (_, _) => 30)).Certain;
        Assert.Equal(["wheel", "front", "chain", "mean"], told.Confounded);
    }

    [Fact]
    public void Fifteen_readings_tell_only_the_ends_and_sixteen_more()
    {
        var few = Told(Usual, 9, 15);
        Assert.Equal("tooFewReadings", few.Refusal?.Key);
        Assert.Contains("16 or more", few.Refusal!.Because, StringComparison.Ordinal);
        Assert.Null(few.Value!.Mean);
        var lowest = Read(Usual, 9, 15, Uneven).MinBy(r => r.Slack.Millimetres);
        Assert.Equal((lowest.Slack, lowest.Link), (few.Value.Min, few.Value.MinAtLink));
        Assert.True(Told(Usual, 9, 16).Holds);
    }

    [Fact]
    public void No_more_readings_than_unknowns_are_too_few()
    {
        var answer = ChainRound.From(Usual, Read(Usual, 5, 25, Uneven), harmonics: 10);
        Assert.Equal("tooFewReadings", answer.Refusal?.Key);
        Assert.Contains("26 or more", answer.Refusal!.Because, StringComparison.Ordinal);
    }

    // Ten thousand readings with ten waves: bounded work
    [Fact]
    public void The_longest_list_is_answered() =>
        Assert.NotNull(ChainRound.From(Usual, Read(Usual, 1, 10_000, Uneven), 10).Certain.Components);

    private static double[] Pair(double turns) => [Math.Cos(2 * Math.PI * turns), Math.Sin(2 * Math.PI * turns)];

    private static (double[] B, double Rss) NormalEquations(double[][] x, double[] y)
    {
        var m = x[0].Length;
        var a = new double[m, m + 1];
        for (var i = 0; i < m; i++)
        {
            for (var j = 0; j < m; j++)
                a[i, j] = x.Sum(row => row[i] * row[j]);
            a[i, m] = x.Zip(y).Sum(pair => pair.First[i] * pair.Second);
        }
        for (var pivot = 0; pivot < m; pivot++)
        for (var i = 0; i < m; i++)
        {
            if (i == pivot)
                continue;
            var factor = a[i, pivot] / a[pivot, pivot];
            for (var j = pivot; j <= m; j++)
                a[i, j] -= factor * a[pivot, j];
        }
        var b = Enumerable.Range(0, m).Select(i => a[i, m] / a[i, i]).ToArray();
        var residual = x.Zip(y).Sum(r => Math.Pow(r.Second - r.First.Zip(b).Sum(p => p.First * p.Second), 2));
        return (b, residual);
    }

    // P(F > f) as the beta integral by Simpson's rule. With x = u² the root at the lower end is smooth; q is even here.
    private static double UpperTail(double f, int q, int dof)
    {
        var end = Math.Sqrt(dof / (dof + q * f));
        double Integral(double to)
        {
            const int steps = 20_000;
            double At(double u) => 2 * Math.Pow(u, dof - 1) * Math.Pow(1 - u * u, q / 2.0 - 1);
            var h = to / steps;
            return h
                / 3
                * Enumerable
                    .Range(0, steps + 1)
                    .Sum(i =>
                        (
                            i is 0 or steps ? 1
                            : i % 2 == 1 ? 4
                            : 2
                        ) * At(i * h)
                    );
        }
        return Integral(end) / Integral(1);
    }
}
