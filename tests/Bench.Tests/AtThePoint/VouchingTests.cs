using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.AtThePoint;

public class VouchingTests
{
    private const string Axle = "axle-alignment"; // safety; the demo sheet judges it by common practice
    private const string Pads = "front-pads";

    [Fact]
    public void A_safety_point_judged_by_common_practice_is_held_until_somebody_vouches_by_name()
    {
        var work = Finished();
        var hold = Assert.Single(work.State.Holds);
        Assert.Equal(Axle, hold.Point);
        Assert.EndsWith(
            "judged by a common-practice figure, not the maker's: somebody has to vouch for it by name",
            hold.Words
        );
        work.Vouches(Axle, "Bram Okello");
        Assert.Equal("Bram Okello", work[Axle].Vouched?.Name);
        Assert.Empty(work.State.Holds);
        Assert.NotNull(work.Releases("Ines Tallow").State.Release);
    }

    [Fact]
    public void A_signature_without_it_counts_for_nothing()
    {
        var work = Finished().Releases("Ines Tallow");
        Assert.Null(work.State.Release);
        Assert.False(work.State.MayGo);
    }

    [Fact]
    public void A_signature_given_before_somebody_vouched_is_given_again()
    {
        var work = Finished().Releases("Ines Tallow").Vouches(Axle);
        Assert.True(work.State.MayGo);
        Assert.Null(work.State.Release);
        Assert.NotNull(work.Releases("Ines Tallow").State.Release);
    }

    [Fact]
    public void A_point_for_use_and_the_makers_figure_need_nobody()
    {
        var work = new AtWork().Arrives();
        Assert.False(work["tyre-dates"].NeedsVouching); // common practice, but for use
        Assert.False(work["chain-slack"].NeedsVouching); // safety, but the maker's
        Assert.False(work["tyre-front-tread"].NeedsVouching); // safety, but the law's
        Assert.False(work["leaks"].NeedsVouching); // safety, but seen
        Assert.True(work[Axle].NeedsVouching);
    }

    [Theory]
    [InlineData("shop", "judged by the workshop's figure")]
    [InlineData("common practice", "judged by a common-practice figure")]
    public void A_word_covers_the_figure_that_was_seen_and_no_other(string origin, string said)
    {
        var work = Incomplete.Arrives().Gives(Pads, "min", "1.5 mm", origin);
        work.Vouches(Pads, figure: work[Pads].Figure!.InSheet);
        work.Reads(Pads, "4.2 mm", "4.2 mm", "4.2 mm", "4.2 mm").Marks(Pads);
        Assert.NotNull(work[Pads].Vouched);
        work.Gives(Pads, "min", "2 mm", origin).Marks(Pads);
        Assert.Null(work[Pads].Vouched);
        Assert.Contains(said, work.State.Holds.Single(h => h.Point == Pads).Words);
    }

    [Fact]
    public void The_same_number_from_another_origin_is_another_figure()
    {
        var work = Incomplete.Arrives().Gives(Pads, "min", "1.5 mm", "shop");
        work.Vouches(Pads, figure: work[Pads].Figure!.InSheet).Gives(Pads, "min", "1.5 mm", "common practice");
        Assert.Null(work[Pads].Vouched);
        Assert.False(work.Gives(Pads, "min", "1.5 mm")[Pads].NeedsVouching);
    }

    [Fact]
    public void A_struck_word_covers_nothing()
    {
        var work = Finished().Vouches(Axle);
        Assert.Empty(work.State.Holds);
        work.Strikes(work.Last.Id);
        Assert.Single(work.State.Holds);
    }

    [Fact]
    public void A_word_without_a_name_is_kept_and_said()
    {
        var work = new AtWork().Arrives().Vouches(Axle, " ");
        Assert.Contains("nobody is named", Assert.Single(work.State.NotUnderstood).Why);
        Assert.Null(work[Axle].Vouched);
    }

    // as an earlier program opened it: without the word "vouching" in its arrival
    [Fact]
    public void A_job_of_an_earlier_program_that_was_signed_stays_signed()
    {
        var old = Finished(asAnEarlierProgram: true);
        Assert.Single(old.State.Holds); // not signed: it is worked on now, and somebody vouches
        Assert.Null(old.State.Release);
        old.Releases("Ines Tallow");
        Assert.Equal("Ines Tallow", old.State.Release?.Name);
        Assert.True(old.State.MayGo);
    }

    [Fact]
    public void What_held_a_job_of_an_earlier_program_holds_it_still()
    {
        var old = Finished(asAnEarlierProgram: true).Reads("chain-slack", "75 mm", "25 mm").Releases("Ines Tallow");
        Assert.Null(old.State.Release);
        Assert.Equal(2, old.State.Holds.Count);
    }

    /// <summary>All is well but that nobody has vouched.</summary>
    private static AtWork Finished(bool asAnEarlierProgram = false)
    {
        var work = asAnEarlierProgram ? new AtWork().ArrivesWithout("vouching") : new AtWork().Arrives();
        while (work.State.Points.FirstOrDefault(p => p.Marked is null) is { } open)
            if (open.Point.Id == Axle)
                work.ReadsSides(["29.0 mm", "29.0 mm", "29.0 mm"], ["29.0 mm", "29.0 mm", "29.0 mm"]).Marks(Axle);
            else
                work.DoesWell(open.Point.Id);
        return work;
    }
}
