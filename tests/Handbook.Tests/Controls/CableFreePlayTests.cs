using Witnessmark.Handbook.Controls;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Controls;

public class CableFreePlayTests
{
    private static Answer<RemainingPlay> To(double target, double u, params (double Turns, double Play)[] trials) =>
        CableFreePlay.From(
            [.. trials.Select(t => new PlayTrial(new Turns(t.Turns), new Length(t.Play)))],
            new(target),
            new(u)
        );

    // NIST StRD style check by hand: x 0 1 2, y 9 5 4 has slope −2.5, mean (1, 6), so the line at 2 is 3.5
    [Fact]
    public void Three_trials_are_joined_by_least_squares()
    {
        var remaining = To(3, 0.1, (0, 9), (1, 5), (2, 4)).Certain;
        Assert.Equal(2.5, remaining.PerTurn.MillimetresPerTurn, 1e-12);
        Assert.Equal(0.2, remaining.Turns!.Value.Count, 1e-12);
        Assert.Equal(1.4, remaining.TautAfter.Count, 1e-12);
    }

    // Two trials one turn apart: the deviation of the slope is u√2
    [Fact]
    public void A_trial_exactly_at_the_bound_is_learnt_from_and_below_it_is_refused()
    {
        var bound = 2 * Math.Sqrt(2);
        Assert.NotEqual("trialTooSmall", To(40, 1, (0, 50), (1, 50 - bound - 1e-9)).Refusal?.Key);
        Assert.Equal("trialTooSmall", To(40, 1, (0, 50), (1, 50 - bound + 1e-9)).Refusal?.Key);
        Assert.Equal("trialTooSmall", To(3, 0.1, (1, 9), (1, 6)).Refusal?.Key);
    }

    [Fact]
    public void Play_that_grows_with_the_turns_is_not_tightening() =>
        Assert.Equal("notTightening", To(3, 0.1, (0, 6), (1, 9)).Refusal?.Key);

    [Fact]
    public void A_target_near_taut_is_refused_but_the_law_still_holds()
    {
        var answer = To(0.2, 0.3, (0, 9), (1, 6));
        Assert.Equal("wouldGoTaut", answer.Refusal?.Key);
        Assert.Equal(3, answer.Value!.PerTurn.MillimetresPerTurn, 1e-12);
        Assert.Null(answer.Value.Turns);
    }

    // All numbers exact: two trials each at 0 and 2 turns give Sxx = 4, c = 1 and 2 deviations of the turns to 1.25 mm = 1.25
    [Fact]
    public void Two_deviations_from_taut_are_refused_and_the_least_bit_more_is_not()
    {
        (double, double)[] trials = [(0, 3), (0, 3), (2, 1), (2, 1)];
        Assert.Equal("wouldGoTaut", To(1.25, 1, trials).Refusal?.Key);
        Assert.Equal(-0.25, To(1.25, 1 - 1e-9, trials).Certain.Turns!.Value.Count);
        Assert.Equal("trialTooSmall", To(1.25, 1 + 1e-9, trials).Refusal?.Key);
    }

    // By hand: 9 and 6 mm one turn apart, u = 0.3 mm, to 3 mm: 8.308538 n² − 18.691462 n + 8.654269 = 0 with (1.959964 · 0.3)² = 0.345731
    [Fact]
    public void The_bounds_are_the_roots_of_Fiellers_equation()
    {
        var remaining = To(3, 0.3, (0, 9), (1, 6)).Certain;
        Assert.Equal((9.345731 - 3.929169) / 8.308538, remaining.Low.Count, 1e-5);
        Assert.Equal((9.345731 + 3.929169) / 8.308538, remaining.High.Count, 1e-5);
    }

    // Far from the trials 95 in 100 of simulated adjusters hold their true turns within the bounds; normal readings, seed fixed
    [Theory]
    [InlineData(4)]
    [InlineData(1)]
    public void The_bounds_hold_95_in_100_jobs_near_the_trials_and_far_from_them(double target)
    {
        var chance = new Random(11);
        var (asked, held) = (0, 0);
        for (var job = 0; job < 20_000; job++)
        {
            var answer = To(target, 0.25, (0, 9 + 0.25 * Normal(chance)), (1, 7 + 0.25 * Normal(chance)));
            if (answer.Value is not { } remaining)
                continue;
            asked++;
            var needed = (7 - target) / 2; // the true line is 9 − 2 n, the last trial stands at 1
            held += remaining.Low.Count <= needed && needed <= remaining.High.Count ? 1 : 0;
        }
        Assert.InRange(asked, 19_500, 20_000);
        Assert.InRange((double)held / asked, 0.945, 0.955);
    }

    private static double Normal(Random chance) =>
        Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());

    [Fact]
    public void One_trial_is_a_bug_of_the_caller() => Assert.Throws<ArgumentException>(() => To(3, 0.1, (0, 9)));
}
