using FsCheck.Xunit;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.FinalDrive;

public class ChainAdjustmentTests
{
    private static Trial At(double turns, double slack) => new(new Turns(turns), new Length(slack));

    private static Answer<Remaining> To(double target, params Trial[] trials) => With(1, target, trials);

    private static Answer<Remaining> With(double uncertainty, double target, params Trial[] trials) =>
        ChainAdjustment.From(trials, new Length(target), new Length(uncertainty));

    // Own loop geometry: teeth, centre distance, thread pitch all invented. The line S² is wrong by at most 0.01 mm there.
    [Theory]
    [InlineData(14, 50, 600, 22.5)]
    [InlineData(15, 45, 585, 24.4)]
    [InlineData(16, 42, 540, 32)]
    [InlineData(17, 38, 650, 15)]
    [InlineData(15, 45, 520, 60)]
    public void The_loop_itself_has_the_slack_that_the_law_promises(int front, int rear, double centre, double target)
    {
        const double threadPitch = 1.0; // mm of axle for each turn
        var loop = new ChainLoop(front, rear, 15.875);
        var start = loop.CentreFor(50, loop.Taut(centre) + 2, centre - 3, centre + 0.9);
        var length = loop.Taut(centre) + 2;
        double SlackAfter(double turns) => loop.Slack(length, start + turns * threadPitch);
        var remaining = With(0.01, target, At(0, SlackAfter(0)), At(0.5, SlackAfter(0.5))).Certain;
        Assert.Equal(target, SlackAfter(0.5 + remaining.Turns!.Value.Count), 0.01);
    }

    [Property(MaxTest = 300)]
    public void Trials_on_the_line_give_its_law_whatever_their_number(uint a, uint b)
    {
        var (c, start) = (Chance.Between(500, 2000, a), Chance.Between(40, 60, b));
        Trial OnLine(double turns) => At(turns, Math.Sqrt(start * start - c * turns));
        var first = Math.Min(1, (start * start - 400) / c);
        var two = With(0.1, 18, OnLine(0), OnLine(first)).Certain;
        Assert.Equal(c, two.Law.SquareMillimetresPerTurn, 1e-6 * c);
        var four = With(0.1, 18, OnLine(0), OnLine(first / 3), OnLine(first / 2), OnLine(first)).Certain;
        Assert.Equal(c, four.Law.SquareMillimetresPerTurn, 1e-6 * c);
        // Taking σ² off every square shifts the line by σ²/c turns
        Assert.Equal(two.Turns!.Value.Count - 0.01 / c, four.Turns!.Value.Count, 1e-6);
        Assert.Equal(0, four.ChiSquare!.Value, 1e-6);
    }

    [Fact]
    public void A_trial_exactly_at_the_bound_is_learnt_from_and_below_it_is_refused()
    {
        // |S₀² − S₁²| = 4σ√(S₀² + S₁²), solved for S₁² with S₀ = 50, σ = 1
        var bound = Math.Sqrt(2500 + 8 - Math.Sqrt(64 + 32 * 2500));
        Assert.NotEqual("trialTooSmall", To(45, At(0, 50), At(1, bound - 1e-9)).Refusal?.Key);
        Assert.Equal("trialTooSmall", To(45, At(0, 50), At(1, bound + 1e-9)).Refusal?.Key);
    }

    // Weights 1/(4·50²): the law is known to ± 122 mm² a turn and found near 50
    [Fact]
    public void Three_trials_that_hardly_move_are_too_small_and_three_that_move_are_not()
    {
        Assert.Equal("trialTooSmall", To(45, At(0, 50), At(0, 50), At(1, 49.5)).Refusal?.Key);
        Assert.NotEqual("trialTooSmall", To(45, At(0, 50), At(0, 50), At(1, 46)).Refusal?.Key);
    }

    [Fact]
    public void Trials_at_one_and_the_same_place_are_too_small()
    {
        Assert.Equal("trialTooSmall", To(22, At(1, 50), At(1, 20)).Refusal?.Key);
        Assert.Equal("trialTooSmall", To(22, At(1, 50), At(1, 20), At(1, 30)).Refusal?.Key);
    }

    [Fact]
    public void Slack_that_grows_with_the_turns_is_not_tightening()
    {
        Assert.Equal("notTightening", To(22, At(0, 20), At(1, 50)).Refusal?.Key);
        Assert.Equal("notTightening", To(22, At(0, 20), At(1, 35), At(2, 50)).Refusal?.Key);
    }

    [Fact]
    public void A_target_near_taut_from_afar_is_refused_but_the_law_still_holds()
    {
        var answer = To(8, At(0, 50), At(1, 42));
        Assert.Equal("wouldGoTaut", answer.Refusal?.Key);
        Assert.Equal(2500 - 42 * 42, answer.Value!.Law.SquareMillimetresPerTurn, 1e-9);
        Assert.Null(answer.Value.Turns);
        Assert.Null(answer.Value.Expected);
    }

    [Fact]
    public void One_trial_is_a_bug_of_the_caller() => Assert.Throws<ArgumentException>(() => To(22, At(0, 50)));
}
