using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.AtThePoint;

// Source: own derivation; the loop is what docs/words.md calls figure, reading, verdict, correction and mark.
public class PointLoopTests
{
    private const string Chain = "chain-slack";

    private static AtWork Work => new AtWork().Arrives();

    private static PointLoop Loop(AtWork work, AtPoint at = AtPoint.Looking) => PointLoop.At(work[Chain], at);

    private static LoopStanding[] All(PointLoop loop) => [.. Enum.GetValues<LoopStep>().Select(loop.Of)];

    [Fact]
    public void Before_anything_was_typed_the_figure_is_looked_at_and_then_the_reading_typed()
    {
        Assert.Equal(new(LoopStep.Figure, false), Plain(Loop(Work)));
        Assert.Equal(LoopStep.Reading, Loop(Work, AtPoint.TypingReading).Now);
        Assert.Equal(
            [LoopStanding.Done, LoopStanding.Now, LoopStanding.ToCome, LoopStanding.ToCome, LoopStanding.ToCome],
            All(Loop(Work, AtPoint.TypingReading))
        );
    }

    [Fact]
    public void An_outside_reading_asks_for_a_correction_and_a_correction_for_another_reading()
    {
        var outside = Work.Reads(Chain, "75 mm", "25 mm");
        Assert.Equal(
            [LoopStanding.Done, LoopStanding.Done, LoopStanding.Done, LoopStanding.Now, LoopStanding.ToCome],
            All(Loop(outside))
        );
        Assert.Equal(LoopStep.Correction, Loop(outside, AtPoint.TypingCorrection).Now);
        var turned = outside.Turns(Chain, "2");
        Assert.Equal(new(LoopStep.Reading, true), Plain(Loop(turned)));
        Assert.Equal(
            [LoopStanding.Done, LoopStanding.Now, LoopStanding.ToCome, LoopStanding.Done, LoopStanding.ToCome],
            All(Loop(turned))
        );
    }

    [Fact]
    public void What_is_inside_at_once_needs_no_correction()
    {
        var inside = Work.Reads(Chain, "60 mm", "40 mm");
        Assert.Equal(
            [LoopStanding.Done, LoopStanding.Done, LoopStanding.Done, LoopStanding.NotNeeded, LoopStanding.Now],
            All(Loop(inside))
        );
        var marked = Loop(inside.Marks(Chain));
        Assert.Null(marked.Now);
        Assert.Equal(LoopStanding.NotNeeded, marked.Of(LoopStep.Correction));
        Assert.Equal(LoopStanding.Done, marked.Of(LoopStep.Mark));
    }

    // 66 and 34: 32 ± 1.2 mm against at most 32 mm
    [Fact]
    public void What_cannot_be_told_stays_at_the_verdict() =>
        Assert.Equal(LoopStep.Verdict, Loop(Work.Reads(Chain, "66 mm", "34 mm")).Now);

    [Fact]
    public void Work_that_moves_a_marked_point_opens_the_loop_again()
    {
        var moved = Work.Reads(Chain, "60 mm", "40 mm").Marks(Chain).Tightens("axle-nut", "110 N·m");
        Assert.Equal(new(LoopStep.Reading, true), Plain(Loop(moved)));
    }

    [Fact]
    public void A_struck_reading_goes_back_to_the_figure()
    {
        var work = Work.Reads(Chain, "75 mm", "25 mm");
        Assert.Equal(LoopStep.Figure, Loop(work.Strikes(work.Last.Id)).Now);
    }

    [Fact]
    public void A_point_whose_sheet_has_no_figure_asks_for_it_whatever_was_read()
    {
        var work = new AtWork(at: Incomplete.Without("chain.slack")).Arrives();
        Assert.Equal(LoopStep.Figure, Loop(work).Now);
        Assert.Equal(LoopStep.Figure, Loop(work.Reads(Chain, "75 mm", "25 mm")).Now);
    }

    // 75 − 25 = 50; (50² − 2·1050)^½ = 20; (50² − 1050/2)^½ = 44.4
    [Theory]
    [InlineData("2", 60, 40)]
    [InlineData("0.5", 72, 28)]
    [InlineData("-1", 80, 20)]
    public void The_invented_chain_shows_what_the_turns_have_made_of_it(string turns, int lowest, int highest)
    {
        var work = Work.Reads(Chain, "75 mm", "25 mm");
        Assert.Equal((75, 25), InventedChain.Marks(work[Chain]));
        Assert.Equal((lowest, highest), InventedChain.Marks(work.Turns(Chain, turns)[Chain]));
    }

    [Fact]
    public void A_taut_chain_shows_nothing_and_another_point_neither()
    {
        var work = Work.Reads(Chain, "75 mm", "25 mm").Turns(Chain, "3");
        Assert.Null(InventedChain.Marks(work[Chain]));
        Assert.Null(InventedChain.Marks(work["front-pads"]));
    }

    private static PointLoop Plain(PointLoop loop) => new(loop.Now, loop.Again);
}
