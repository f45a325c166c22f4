using Witnessmark.Handbook.Sound;

namespace Witnessmark.Handbook.Tests.Sound;

/// <summary>
/// Against the sums as McLeod and Wyvill write them ("A Smarter Way to Find Pitch", Proc. International Computer Music Conference
/// 2005, equations 6 to 9), added up one by one.
/// </summary>
public sealed class SquareDifferenceTests
{
    private static readonly double[] Noisy = [.. Enumerable.Range(0, 300).Select(Sample)];

    [Theory]
    [InlineData(0, 300)]
    [InlineData(17, 200)]
    [InlineData(99, 201)]
    public void The_likeness_is_the_sum_of_products_over_the_sum_of_squares(int from, int length)
    {
        var found = SquareDifference.Of(Noisy, from, length);
        var stretch = Noisy[from..(from + length)];
        Assert.Equal(length / 2, found.Longest);
        Assert.Equal(stretch.Sum(x => x * x), found.Energy, 1e-9);
        Assert.Equal(1, found[0], 1e-12);
        for (var shift = 0; shift <= found.Longest; shift++)
            Assert.Equal(Likeness(stretch, shift), found[shift], 1e-9);
    }

    [Fact]
    public void Stretches_together_weigh_by_their_energy()
    {
        var (loud, quiet) = (
            SquareDifference.Of(Noisy, 0, 120),
            SquareDifference.Of([.. Noisy.Select(x => x / 10)], 150, 120)
        );
        var sum = SquareDifference.Sum([loud, quiet]);
        Assert.Equal(loud.Energy + quiet.Energy, sum.Energy, 1e-9);
        for (var shift = 0; shift <= sum.Longest; shift++)
        {
            var (a, b) = (Squares(Noisy[..120], shift), Squares([.. Noisy[150..270].Select(x => x / 10)], shift));
            Assert.Equal((loud[shift] * a + quiet[shift] * b) / (a + b), sum[shift], 1e-9);
        }
    }

    [Fact]
    public void Silence_is_like_nothing()
    {
        var silence = SquareDifference.Of(new double[100], 0, 100);
        Assert.Equal(0, silence.Energy);
        Assert.All(Enumerable.Range(0, silence.Longest + 1), shift => Assert.Equal(0, silence[shift]));
        Assert.Empty(silence.KeyMaxima());
    }

    // one maximum for each stretch of shifts with a positive likeness, after the first zero (the paper's section 5)
    [Theory]
    [InlineData(20, 0.0)]
    [InlineData(31.4, 0.0)]
    [InlineData(23.7, 0.5)]
    public void The_key_maxima_are_the_highest_points_between_the_zeros(double period, double overtone)
    {
        var samples = Tone(period, overtone, 400);
        var likeness = SquareDifference.Of(samples, 0, 400);
        var peaks = likeness.KeyMaxima().ToArray();
        var expected = Summits(Enumerable.Range(0, likeness.Longest + 1).Select(s => Likeness(samples, s)).ToArray());
        Assert.Equal(expected, peaks.Select(p => (int)Math.Round(p.Shift)));
        for (var k = 1; k <= peaks.Length && overtone == 0; k++)
            Assert.Equal(k * period, peaks[k - 1].Shift, 0.05 * k); // a tone repeats after each of its periods
        Assert.All(peaks, p => Assert.InRange(p.Likeness, likeness[(int)Math.Round(p.Shift)] - 1e-12, 1.001));
    }

    // cos θ + 0.36·cos 5θ: around each period a stretch of positive likeness with three summits, the middle one the highest; in the
    // stretch around no shift stands one too, at a fifth of the period, and it counts for nothing
    [Fact]
    public void Of_several_summits_between_two_zeros_only_the_highest_counts()
    {
        var samples = Enumerable
            .Range(0, 500)
            .Select(i => Math.Sin(2 * Math.PI * i / 100) + 0.6 * Math.Sin(10 * Math.PI * i / 100))
            .ToArray();
        var likeness = SquareDifference.Of(samples, 0, 500);
        var measured = Enumerable.Range(0, likeness.Longest + 1).Select(s => Likeness(samples, s)).ToArray();
        Assert.True(measured[20] > measured[14] && measured[20] > measured[26] && measured[14] > 0); // a summit before the first zero
        Assert.Equal(Summits(measured), likeness.KeyMaxima().Select(p => (int)Math.Round(p.Shift)));
        Assert.Contains(likeness.KeyMaxima(), p => Math.Abs(p.Shift - 100) < 1);
    }

    // the longest shift known is half the stretch: 210 lies after the summit at 200 and before the next zero, 196 before the summit
    [Theory]
    [InlineData(420, 5)]
    [InlineData(392, 4)]
    public void The_last_stretch_of_shifts_counts_when_its_summit_is_seen(int length, int summits)
    {
        var likeness = SquareDifference.Of(Tone(40, 0, length), 0, length);
        Assert.Equal(summits, likeness.KeyMaxima().Count());
    }

    [Fact]
    public void A_summit_at_the_end_of_the_reach_is_found()
    {
        var likeness = SquareDifference.Of(Tone(40, 0, 400), 0, 400);
        var at = Enumerable.Range(30, 20).MaxBy(s => likeness[s]);
        Assert.Equal(at, likeness.Near(at - 2, 2)!.Value.Shift, 0.5);
        Assert.Equal(at, likeness.Near(at + 2, 2)!.Value.Shift, 0.5);
    }

    [Fact]
    public void In_silence_the_first_shift_within_the_reach_is_as_good_as_any_and_no_number_is_lost()
    {
        var silence = SquareDifference.Of(new double[100], 0, 100);
        Assert.Equal(new Peak(15, 0), silence.Near(20, 5));
    }

    // the vertex of the parabola through three points, by Lagrange's formula
    [Fact]
    public void Between_the_samples_a_parabola_finds_the_summit()
    {
        var samples = Tone(27.3, 0.2, 400);
        var likeness = SquareDifference.Of(samples, 0, 400);
        var peak = likeness.KeyMaxima().First();
        var at = Enumerable.Range(20, 20).MaxBy(s => likeness[s]);
        var (y0, y1, y2) = (likeness[at - 1], likeness[at], likeness[at + 1]);
        var (curve, slope) = ((y0 - 2 * y1 + y2) / 2, (y2 - y0) / 2);
        Assert.Equal(at - slope / (2 * curve), peak.Shift, 1e-9);
        Assert.Equal(y1 - slope * slope / (4 * curve), peak.Likeness, 1e-9);
    }

    [Fact]
    public void Near_a_shift_the_highest_summit_within_the_reach_is_found_and_a_slope_is_none()
    {
        var likeness = SquareDifference.Of(Tone(40, 0, 400), 0, 400);
        Assert.Equal(40, likeness.Near(38, 5)!.Value.Shift, 0.3);
        Assert.Equal(80, likeness.Near(83, 5)!.Value.Shift, 0.5);
        Assert.Null(likeness.Near(50, 5)); // only a slope within the reach
        Assert.Null(likeness.Near(30, 5)); // the other slope
        Assert.Null(likeness.Near(40, 0.4)); // one shift alone is no summit
        Assert.Null(likeness.Near(400, 20)); // beyond the longest shift
        Assert.Null(likeness.Near(-30, 10)); // before the first
    }

    private static double Likeness(double[] stretch, int shift)
    {
        var products = 0.0;
        for (var j = 0; j < stretch.Length - shift; j++)
            products += stretch[j] * stretch[j + shift];
        return 2 * products / Squares(stretch, shift);
    }

    private static double Squares(double[] stretch, int shift)
    {
        var squares = 0.0;
        for (var j = 0; j < stretch.Length - shift; j++)
            squares += stretch[j] * stretch[j] + stretch[j + shift] * stretch[j + shift];
        return squares;
    }

    private static int[] Summits(double[] likeness)
    {
        List<int> found = [];
        var at = Array.FindIndex(likeness, n => n <= 0);
        while (at >= 0 && at < likeness.Length)
        {
            var from = Array.FindIndex(likeness, at, n => n > 0);
            if (from < 0)
                break;
            var to = Array.FindIndex(likeness, from, n => n <= 0);
            var inside = Enumerable.Range(from, (to < 0 ? likeness.Length : to) - from).ToArray();
            var summits = inside.Where(s =>
                s + 1 < likeness.Length && likeness[s] >= likeness[s - 1] && likeness[s] > likeness[s + 1]
            );
            if (summits.Any())
                found.Add(summits.MaxBy(s => likeness[s]));
            at = to < 0 ? likeness.Length : to;
        }
        return [.. found];
    }

    private static double[] Tone(double period, double overtone, int length) =>
        [
            .. Enumerable
                .Range(0, length)
                .Select(i => Math.Sin(2 * Math.PI * i / period) + overtone * Math.Sin(4 * Math.PI * i / period + 1)),
        ];

    // any numbers without a pattern: the fractional part of multiples of an irrational
    private static double Sample(int i) => (i * i * Math.Sqrt(2) % 1) - 0.5 + Math.Sin(i / 3.0);
}
