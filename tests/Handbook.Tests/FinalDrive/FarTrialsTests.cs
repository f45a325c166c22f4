using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

/// <summary>What chain-adjustment says beyond the line: bounds far from the trials, and trials that do not fit.</summary>
public class FarTrialsTests
{
    private static Remaining Told(double target, double u, params (double Turns, double Slack)[] trials) =>
        ChainAdjustment
            .From(
                trials.Select(t => new Trial(new Turns(t.Turns), new Length(t.Slack))).ToArray(),
                new Length(target),
                new Length(u)
            )
            .Value!;

    // Monte Carlo with a seed of its own: 20000 jobs whose true way is known. Linear propagation (turns ± 1.96 of its
    // deviation) covers fewer than it says when the target is far; the bounds cover what they say.
    [Theory]
    [InlineData(50, 38, 22.5)] // one turn, then far: mechanics says 3.7 mm where 4.9 mm is true
    [InlineData(50, 30, 35)] // between the trials
    public void Bounds_hold_the_true_turns_in_95_of_100_jobs(double first, double second, double target)
    {
        var random = new Random(7);
        double Gauss() =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var truth = (second * second - target * target) / (first * first - second * second);
        const int jobs = 20_000;
        var held = 0;
        for (var i = 0; i < jobs; i++)
        {
            var told = Told(target, 1, (0, first + Gauss()), (1, second + Gauss()));
            if (told.TurnsLow!.Value.Count <= truth && truth <= told.TurnsHigh!.Value.Count)
                held++;
        }
        Assert.InRange(held / (double)jobs, 0.94, 0.96);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0.5)]
    public void Bounds_lie_on_the_curves_of_1_96_deviations(double u)
    {
        // (A − S² − c·n)² = 1.96²·var(A − c·n), var by the two readings' own squares
        var told = Told(22.5, u, (0, 50), (1, 38));
        foreach (var n in new[] { told.TurnsLow!.Value.Count, told.TurnsHigh!.Value.Count })
        {
            var miss = 38.0 * 38 - 22.5 * 22.5 - (2500 - 38 * 38) * n;
            var variance = u * u * (Math.Pow(2 * 38 * (1 + n), 2) + Math.Pow(2 * 50 * n, 2));
            Assert.Equal(1.959964 * 1.959964 * variance, miss * miss, 1e-3 * miss * miss);
        }
        Assert.True(told.TurnsLow!.Value < told.Turns!.Value && told.Turns.Value < told.TurnsHigh!.Value);
    }

    [Fact]
    public void Refused_turns_leave_the_least_step_but_not_the_most()
    {
        var told = Told(8, 1, (0, 50), (1, 42));
        Assert.Null(told.Turns);
        Assert.Null(told.TurnsHigh);
        Assert.True(told.TurnsLow!.Value < told.TautAfter);
    }

    [Fact]
    public void Bounds_of_three_trials_are_near_those_of_two_on_the_same_line()
    {
        var two = Told(22.5, 0.5, (0, 50), (1, 38));
        var three = Told(22.5, 0.5, (0, 50), (0, 50), (1, 38));
        Assert.Equal(two.Turns!.Value.Count, three.Turns!.Value.Count, 1e-3);
        Assert.True(three.TurnsHigh!.Value < two.TurnsHigh!.Value);
    }

    [Fact]
    public void The_one_trial_off_the_line_is_named()
    {
        // 52² − 1050 n at 0, 0.5, 1, 1.5, 1.75 with the third read 6 mm too loose
        double On(double n) => Math.Sqrt(52 * 52 - 1050 * n);
        var told = Told(24, 1, (0, On(0)), (0.5, On(0.5)), (1, On(1) + 6), (1.5, On(1.5)), (1.75, On(1.75)));
        Assert.False(told.Consistent);
        Assert.Equal(2, told.Suspect);
    }

    [Fact]
    public void Chi_square_without_a_trial_is_that_of_the_rest_alone()
    {
        // The suspect left out, the rest must be consistent by its own fit; the rest with another left out must not
        (double, double)[] all = [(0, 52), (0.5, 46.7), (1, 46), (1.5, 33.6), (1.75, 29.4)];
        Assert.Equal(2, Told(24, 1, all).Suspect);
        for (var i = 0; i < all.Length; i++)
            Assert.Equal(i == 2, Told(24, 1, [.. all.Where((_, j) => j != i)]).Consistent);
    }

    // Oracle: every trial left out in turn and the rest fitted anew. Chi-square at 1 %: 11.345 with three degrees of freedom,
    // 9.210 with two (any table)
    [Fact]
    public void The_suspect_is_the_only_one_whose_absence_makes_the_rest_plausible()
    {
        var (suspects, consistent) = (0, 0);
        for (var seed = 0; seed < 300; seed++)
        {
            var random = new Random(seed);
            (double Turns, double Slack)[] trials =
            [
                .. new[] { 0, 0.4, 0.9, 1.5, 1.8 }.Select(n =>
                    (n, Math.Sqrt(52 * 52 - 1050 * n) + 1.6 * (random.NextDouble() - 0.5))
                ),
            ];
            trials[seed % 5].Slack += 6 * random.NextDouble() - 3;
            var told = Told(24, 0.5, trials);
            var plausible = Refitted(trials, 0.5) <= 11.345;
            int[] alone =
            [
                .. Enumerable.Range(0, 5).Where(i => Refitted([.. trials.Where((_, j) => j != i)], 0.5) <= 9.210),
            ];
            Assert.Equal((seed, plausible), (seed, told.Consistent));
            Assert.Equal((seed, !plausible && alone.Length == 1 ? alone[0] : (int?)null), (seed, told.Suspect));
            consistent += plausible ? 1 : 0;
            suspects += told.Suspect is null ? 0 : 1;
        }
        Assert.InRange(consistent, 30, 270);
        Assert.InRange(suspects, 30, 270);
    }

    // Least Σ w·(S² − u² − a + c·n)² over a and c, w = 1/(4S²u² + 2u⁴), by the normal equations
    private static double Refitted((double Turns, double Slack)[] trials, double u)
    {
        double w = 0,
            x = 0,
            y = 0,
            xx = 0,
            xy = 0,
            yy = 0;
        foreach (var (n, s) in trials)
        {
            var (weight, square) = (1 / (4 * s * s * u * u + 2 * u * u * u * u), s * s - u * u);
            (w, x, y) = (w + weight, x + weight * n, y + weight * square);
            (xx, xy, yy) = (xx + weight * n * n, xy + weight * n * square, yy + weight * square * square);
        }
        var slope = (w * xy - x * y) / (w * xx - x * x);
        return yy - y * y / w - slope * (xy - x * y / w);
    }

    [Fact]
    public void Of_three_trials_none_can_be_blamed()
    {
        var told = Told(24, 0.5, (0, 52), (1, 46), (1.5, 33.6));
        Assert.False(told.Consistent);
        Assert.Null(told.Suspect);
    }

    [Fact]
    public void Trials_on_the_line_are_consistent_and_two_say_nothing()
    {
        Assert.True(Told(22.5, 1, (0, 48), (1, 33), (1.5, 23.5)).Consistent);
        Assert.Null(Told(22.5, 1, (0, 50), (1, 38)).Consistent);
    }
}
