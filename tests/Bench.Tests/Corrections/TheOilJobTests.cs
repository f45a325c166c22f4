using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.Corrections;

/// <summary>Three US quarts, a low dipstick, and the rest computed: own derivation (docs/handbook/oil-top-up.md), Monte Carlo in its tests.</summary>
public class TheOilJobTests
{
    [Fact]
    public void The_first_dose_stays_below_the_high_mark()
    {
        var advice = new AtWork().Arrives()["oil-first-fill"].Advice!;
        // capacity 3.60 US qt less 0.10 L retained leaves 3.307 L; the first dose keeps one fill in a hundred below it
        Assert.Equal(3.1579, advice.Proposal!.AddLitres!.Value, 1e-3);
        Assert.Contains("Pour at most 3.15 L", advice.Headline);
    }

    [Fact]
    public void Three_quarts_and_a_quarter_on_the_stick_ask_for_the_rest_and_never_for_half_a_quart()
    {
        var work = new AtWork().Arrives().Reads("oil-first-fill", "3 US qt").Reads("oil-level", "0.25");
        var advice = work["oil-level"].Advice!;
        Assert.Equal(VerdictWord.Outside, work["oil-level"].Current?.Opinion.Verdict);
        Assert.InRange(advice.Proposal!.AddLitres!.Value, 0.26, 0.30);
        Assert.True(advice.Proposal.AddLitres < 0.473, "half a US quart would overfill");
        work.Adds("oil-level", "0.28 L").Reads("oil-level", "0.75");
        Assert.Equal(VerdictWord.Inside, work["oil-level"].Current?.Opinion.Verdict);
    }

    [Fact]
    public void Over_the_high_mark_it_says_how_much_to_draw_off_and_never_adds()
    {
        var point = new AtWork().Arrives().Reads("oil-level", "1.3")["oil-level"];
        Assert.Contains("Draw off about 0.3 L", point.Advice?.Headline);
        Assert.Null(point.Advice?.Proposal);
    }
}
