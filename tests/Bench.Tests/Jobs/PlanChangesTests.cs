using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>Points that are taken into the plan of a job or out of it.</summary>
public class PlanChangesTests
{
    [Fact]
    public void An_added_point_stands_where_the_book_puts_it_with_its_why_and_holds_the_job()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Planned, EntryBody.Planned("front-disc", "It pulsed."));
        var ids = work.State.Points.Select(p => p.Point.Id).ToList();
        Assert.Equal("It pulsed.", work["front-disc"].Why);
        Assert.Contains(work.State.Holds, h => h.Point == "front-disc");
        // in the longest purpose it follows the pads
        Assert.Equal(ids.IndexOf("rear-pads") + 1, ids.IndexOf("front-disc"));
    }

    [Fact]
    public void A_point_that_is_in_the_plan_already_gets_the_second_why_beside_the_first()
    {
        var work = new AtWork().Arrives();
        var before = work["keys"].Why;
        work.Writes(EntryKind.Planned, EntryBody.Planned("keys", "The owner lost one."));
        Assert.Equal($"{before} The owner lost one.", work["keys"].Why);
        Assert.Single(work.State.Points, p => p.Point.Id == "keys");
    }

    [Fact]
    public void A_dropped_point_holds_no_longer_and_is_told_with_its_reason()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("keys", "only one exists"));
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == "keys");
        Assert.DoesNotContain(work.State.Holds, h => h.Point == "keys");
        var dropped = Assert.Single(work.State.Dropped);
        Assert.Equal(("keys", "only one exists", null), (dropped.Point.Id, dropped.Why, dropped.Lead));
    }

    [Fact]
    public void A_safety_point_is_only_dropped_with_the_name_of_a_lead()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week"));
        Assert.Contains(work.State.Points, p => p.Point.Id == "front-pads");
        Assert.Contains("only a lead can drop it", Assert.Single(work.State.NotUnderstood).Why);
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", " "));
        Assert.Contains(work.State.Points, p => p.Point.Id == "front-pads");
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", "Ines Tallow"));
        Assert.DoesNotContain(work.State.Points, p => p.Point.Id == "front-pads");
        Assert.Equal("Ines Tallow", Assert.Single(work.State.Dropped).Lead);
    }

    [Fact]
    public void Nothing_is_dropped_without_a_reason()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("keys", "  "));
        Assert.Empty(work.State.Dropped);
        Assert.Single(work.State.NotUnderstood);
    }

    [Fact]
    public void What_is_dropped_can_be_taken_back_in_or_its_dropping_struck()
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("keys", "only one exists"));
        work.Writes(EntryKind.Planned, EntryBody.Planned("keys", "Found the second."));
        Assert.Contains(work.State.Points, p => p.Point.Id == "keys");
        Assert.Empty(work.State.Dropped);
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("keys", "lost again"));
        Assert.Equal("lost again", Assert.Single(work.State.Dropped).Why);
        work.Strikes(work.Last.Id);
        Assert.Empty(work.State.Dropped);
    }

    // the phone reads the pads outside while the tablet, which has not seen it, drops them: they stay in
    [Fact]
    public void A_reading_that_whoever_dropped_had_not_seen_brings_the_point_back()
    {
        var tablet = new AtWork().Arrives();
        var phone = new AtWork("phone").Sees(tablet).Reads("front-pads", "0.8 mm", "0.8 mm", "0.8 mm", "0.8 mm");
        tablet.Writes(EntryKind.Dropped, EntryBody.Dropped("front-pads", "new last week", "Ines Tallow"));
        var both = JobFold.Of(AtWork.Job, [.. tablet.Entries, .. phone.Entries], AtWork.Bench);
        Assert.Contains(both.Holds, h => h is { Point: "front-pads", Stripe: Stripe.Outside });
        tablet
            .Sees(phone)
            .Writes(EntryKind.Dropped, EntryBody.Dropped("front-pads", "the owner fits new ones", "Ines Tallow"));
        both = JobFold.Of(AtWork.Job, [.. tablet.Entries, .. phone.Entries], AtWork.Bench);
        Assert.DoesNotContain(both.Holds, h => h.Point == "front-pads");
    }

    [Fact]
    public void A_dropped_points_work_still_breaks_its_neighbours_marks()
    {
        var work = new AtWork().Arrives().DoesWell("chain-slack").DoesWell("axle-nut");
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("axle-nut", "done by hand of the lead", "Ines Tallow"));
        Assert.Equal(Stripe.Again, work["chain-slack"].Stripe);
    }

    [Theory]
    [InlineData("front-padz", "the bench book has no point \"front-padz\"")]
    [InlineData("quad-toe", "this machine has no such point")]
    public void What_the_book_or_the_machine_does_not_have_is_kept_and_not_understood(string point, string why)
    {
        var work = new AtWork().Arrives();
        work.Writes(EntryKind.Planned, EntryBody.Planned(point, "Who knows."));
        Assert.Contains(why, Assert.Single(work.State.NotUnderstood).Why);
    }

    [Fact]
    public void A_release_has_to_have_seen_what_was_dropped()
    {
        var work = new AtWork().Arrives();
        foreach (var point in work.State.Points.Select(p => p.Point.Id).Where(p => p != "keys").ToList())
            work.DoesWell(point);
        foreach (
            var point in work
                .State.Points.Where(p => p.Marked is null && p.Point.Id != "keys")
                .Select(p => p.Point.Id)
                .ToList()
        )
            work.DoesWell(point);
        work.Releases("Ines Tallow");
        Assert.Null(work.State.Release);
        work.Writes(EntryKind.Dropped, EntryBody.Dropped("keys", "only one exists"));
        Assert.Null(work.State.Release);
        work.Releases("Ines Tallow");
        Assert.NotNull(work.State.Release);
    }
}
