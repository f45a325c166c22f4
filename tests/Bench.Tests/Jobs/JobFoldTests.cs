using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

public class JobFoldTests
{
    private static AtWork Ready()
    {
        var work = new AtWork().Arrives();
        foreach (var point in work.State.Points.Select(p => p.Point.Id))
            work.DoesWell(point);
        foreach (var again in new[] { "chain-slack", "axle-alignment" })
            work.DoesWell(again);
        foreach (var point in work.State.Points.Where(p => p.Marked is null).Select(p => p.Point.Id))
            work.DoesWell(point);
        return work;
    }

    [Fact]
    public void A_job_done_well_has_no_hold_and_can_be_released()
    {
        var work = Ready();
        Assert.Equal([], work.State.Holds.Select(h => h.Words));
        Assert.Null(work.State.Release);
        Assert.Equal("Ines Tallow", work.Releases("Ines Tallow").State.Release?.Name);
    }

    [Fact]
    public void Without_its_arrival_a_job_is_held()
    {
        var state = new AtWork().Reads("chain-slack", "75 mm", "25 mm").State;
        Assert.Null(state.Arrival);
        Assert.Single(state.Holds);
    }

    [Fact]
    public void Tightening_the_axle_nut_breaks_the_mark_on_the_slack()
    {
        var work = new AtWork().Arrives().DoesWell("chain-slack");
        Assert.Equal(Stripe.Marked, work["chain-slack"].Stripe);
        work.Tightens("axle-nut", "110 N·m");
        Assert.Equal(Stripe.Again, work["chain-slack"].Stripe);
        Assert.Contains("Rear axle nut was tightened", Assert.Single(work["chain-slack"].AgainBecause));
    }

    [Fact]
    public void A_correction_asks_for_the_point_and_the_neighbours_that_it_moves()
    {
        var work = new AtWork().Arrives().DoesWell("chain-slack").DoesWell("axle-alignment").DoesWell("axle-nut");
        work.DoesWell("chain-slack").DoesWell("axle-alignment").Turns("chain-slack", "0.25");
        Assert.Equal(Stripe.Again, work["chain-slack"].Stripe);
        Assert.Equal(Stripe.Again, work["axle-alignment"].Stripe);
        Assert.Equal(Stripe.Again, work["axle-nut"].Stripe);
    }

    [Fact]
    public void A_mark_on_an_outside_reading_counts_for_nothing()
    {
        var work = new AtWork().Arrives().Reads("chain-slack", "75 mm", "25 mm").Marks("chain-slack");
        Assert.Null(work["chain-slack"].Marked);
        Assert.Equal(Stripe.Outside, work["chain-slack"].Stripe);
    }

    [Fact]
    public void A_safety_point_cannot_be_left_but_another_can()
    {
        var work = new AtWork().Arrives().Leaves("chain-slack", "no time").Leaves("tyre-dates", "owner knows");
        Assert.Equal(Stripe.Unread, work["chain-slack"].Stripe);
        Assert.Contains(work.State.NotUnderstood, n => n.Why.ToString().Contains("safety"));
        Assert.Equal(Stripe.Left, work["tyre-dates"].Stripe);
    }

    [Fact]
    public void Striking_restores_and_striking_the_strike_takes_it_back()
    {
        var work = new AtWork().Arrives().DoesWell("chain-slack");
        var before = Picture(work.State);
        var wrong = work.Reads("chain-slack", "75 mm", "25 mm").Last.Id;
        var after = Picture(work.State);
        Assert.NotEqual(before, after);
        var strike = work.Strikes(wrong).Last.Id;
        Assert.Equal(before, Picture(work.State));
        work.Strikes(strike);
        Assert.Equal(after, Picture(work.State));
    }

    [Fact]
    public void What_comes_after_a_release_asks_for_it_again()
    {
        var work = Ready().Releases("Ines Tallow");
        work.Reads("chain-slack", "60 mm", "38 mm");
        Assert.Null(work.State.Release);
        work.Marks("chain-slack").Releases("Bram Okello");
        Assert.Equal("Bram Okello", work.State.Release?.Name);
    }

    [Fact]
    public void An_unknown_kind_and_a_broken_body_are_kept_and_said()
    {
        var work = new AtWork().Arrives().Writes("moon-phase", EntryBody.Note(null, "full"));
        work.Writes(EntryKind.Reading, EntryBody.Note(null, "no point here"));
        Assert.Equal(2, work.State.NotUnderstood.Count);
        Assert.Equal(3, work.State.Entries.Count);
    }

    [Fact]
    public void A_mark_that_could_not_have_seen_the_nut_being_tightened_is_asked_again()
    {
        var phone = new AtWork("phone").Arrives();
        var tablet = new AtWork("tablet").Sees(phone).Tightens("axle-nut", "110 N·m");
        phone.DoesWell("chain-slack");
        var together = JobFold.Of(AtWork.Job, [.. phone.Entries, .. tablet.Entries], AtWork.Bench);
        Assert.Equal(Stripe.Again, together.Points.Single(p => p.Point.Id == "chain-slack").Stripe);
    }

    [Fact]
    public void Two_readings_that_disagree_unseen_by_each_other_are_both_shown_and_neither_counts()
    {
        var phone = new AtWork("phone").Arrives();
        var tablet = new AtWork("tablet").Sees(phone).Reads("chain-slack", "60 mm", "37 mm");
        phone.Reads("chain-slack", "75 mm", "25 mm");
        var point = JobFold
            .Of(AtWork.Job, [.. phone.Entries, .. tablet.Entries], AtWork.Bench)
            .Points.Single(p => p.Point.Id == "chain-slack");
        Assert.Equal(2, point.Readings.Count);
        Assert.Null(point.Current);
        Assert.False(point.CanBeMarked);
    }

    /// <summary>What a technician sees of a state.</summary>
    internal static string Picture(JobState state) =>
        string.Join(
            "\n",
            state.Points.Select(p =>
                $"{p.Point.Id} {p.Stripe} {p.Marked?.Id} {p.Current?.Entry.Id} {p.Advice?.Headline} {string.Join("|", p.AgainBecause)}"
            )
        ) + $"\n{string.Join("|", state.Holds.Select(h => h.Words))}\n{state.Release?.Entry.Id}";
}
