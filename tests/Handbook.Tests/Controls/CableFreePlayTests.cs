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

    [Fact]
    public void One_trial_is_a_bug_of_the_caller() => Assert.Throws<ArgumentException>(() => To(3, 0.1, (0, 9)));
}
