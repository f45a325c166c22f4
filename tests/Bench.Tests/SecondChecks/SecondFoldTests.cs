using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.SecondChecks;
using Witnessmark.Bench.Tests.Book;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.SecondChecks;

/// <summary>The second check as it stands after the entries. Common practice, no source.</summary>
public sealed class SecondFoldTests
{
    private const string Nut = "axle-nut";
    private const string Other = "Bram Okello";

    [Fact]
    public void Marked_and_not_checked_holds()
    {
        var state = Marked().State;
        Assert.True(state.Points.Single(p => p.Point.Id == Nut).Second!.Awaited);
        Assert.Contains("a second person has still to read it", Hold(state));
    }

    [Fact]
    public void A_second_reading_that_agrees_lets_it_go()
    {
        var work = Marked().Hands(Other).ReadsSecond(Nut, "torque-wrench-120", "111 N·m");
        Assert.Null(Hold(work.State));
        Assert.Equal(Stripe.Marked, work[Nut].Stripe);
        Assert.Equal((BySelf, Other), (work[Nut].Second!.First!.Entry.By, work[Nut].Second!.Second!.Entry.By));
    }

    [Fact]
    public void A_second_reading_that_differs_breaks_the_mark_until_both_looked_again()
    {
        var work = Marked().Hands(Other).ReadsSecond(Nut, "torque-wrench-120", "100 N·m");
        Assert.Null(work[Nut].Marked);
        Assert.Equal(Stripe.Again, work[Nut].Stripe);
        Assert.Equal(
            "Ines Tallow read 110 N·m, Bram Okello read 100 N·m: the second reading is outside. Both look again.",
            Assert.Single(work[Nut].AgainBecause)
        );
        Assert.Contains("Both look again", Hold(work.State));

        work.Hands(BySelf).Tightens(Nut, "110 N·m").Marks(Nut);
        Assert.Contains("a second person has still to read it", Hold(work.State));
        work.Hands(Other).ReadsSecond(Nut, "torque-wrench-120", "110 N·m");
        Assert.Null(Hold(work.State));
    }

    [Theory]
    [InlineData("Ines Tallow")]
    [InlineData(" ines tallow")]
    public void Nobody_checks_their_own_reading(string by)
    {
        var state = Marked().Hands(by).ReadsSecond(Nut, "torque-wrench-120", "110 N·m").State;
        Assert.Contains("a second person has still to read it", Hold(state));
    }

    // one read, another marked: the one who marked has seen the reading
    [Fact]
    public void Nobody_checks_what_they_have_marked()
    {
        var work = new AtWork().ArrivesChecked(Nut).Tightens(Nut, "110 N·m").Hands(Other).Marks(Nut);
        Assert.Contains("still to read", Hold(work.ReadsSecond(Nut, "torque-wrench-120", "110 N·m").State));
    }

    [Fact]
    public void A_first_reading_made_afterwards_asks_for_the_second_anew()
    {
        var work = Marked().Hands(Other).ReadsSecond(Nut, "torque-wrench-120", "110 N·m");
        work.Hands(BySelf).Tightens(Nut, "110 N·m").Marks(Nut);
        Assert.Contains("still to read", Hold(work.State));
    }

    [Fact]
    public void Work_nearby_that_the_second_person_did_not_see_asks_anew()
    {
        var work = new AtWork()
            .ArrivesChecked("chain-slack")
            .Reads("chain-slack", "60 mm", "38 mm")
            .Marks("chain-slack");
        work.Hands(Other).ReadsSecond("chain-slack", "steel-rule", "60 mm", "38 mm");
        Assert.True(work["chain-slack"].Second!.Agrees);
        work.Tightens(Nut, "110 N·m");
        Assert.Null(work["chain-slack"].Second!.Second);
    }

    [Fact]
    public void A_struck_second_reading_is_missing_again()
    {
        var work = Marked().Hands(Other).ReadsSecond(Nut, "torque-wrench-120", "100 N·m");
        Assert.Equal(Stripe.Marked, work.Strikes(work.Last.Id)[Nut].Stripe);
        Assert.Contains("still to read", Hold(work.State));
    }

    [Fact]
    public void Two_devices_that_have_not_met_count_beside_each_other_in_any_order()
    {
        var phone = new AtWork("phone-1").ArrivesChecked(Nut);
        var tablet = new AtWork("tablet-2", by: Other).Sees(phone);
        phone.Tightens(Nut, "110 N·m").Marks(Nut);
        tablet.ReadsSecond(Nut, "torque-wrench-120", "109 N·m");
        Entry[] all = [.. phone.Entries, .. tablet.Entries];
        foreach (var entries in (Entry[][])[all, [.. all.Reverse()]])
            Assert.True(
                JobFold.Of(AtWork.Job, entries, AtWork.Bench).Points.Single(p => p.Point.Id == Nut).Second!.Agrees
            );
    }

    [Fact]
    public void Jobs_that_were_opened_without_it_are_as_they_were()
    {
        var work = new AtWork().Arrives().Tightens(Nut, "110 N·m").Marks(Nut);
        Assert.Null(work[Nut].Second);
        Assert.Null(Hold(work.State));
        // what an unasked second person read is kept and changes nothing
        work.Hands(Other).ReadsSecond(Nut, "torque-wrench-120", "20 N·m");
        Assert.Equal(Stripe.Marked, work[Nut].Stripe);
    }

    [Fact]
    public void The_second_person_sees_nothing_of_the_first()
    {
        var job = Marked().Writes(EntryKind.Note, EntryBody.Note(Nut, "clicked at 110")).State;
        var seen = job.SeenBy(Other).Points.Single(p => p.Point.Id == Nut);
        Assert.Empty(seen.Readings);
        Assert.Empty(seen.Notes);
        Assert.Equal((Stripe.Unread, null, null), (seen.Stripe, seen.Current, seen.Marked));
        Assert.Equal((null, true, true), (seen.Second!.First, seen.Second.Hidden, seen.Second.Awaited));
        Assert.NotNull(seen.Advice); // what to set the wrench to comes from the sheet
        Assert.DoesNotContain(job.SeenBy(Other).Holds, h => h.Point == Nut && h.Stripe == Stripe.Marked);
        Assert.Same(job, job.SeenBy(BySelf));
    }

    [Fact]
    public void What_is_outside_is_seen_by_everybody_for_somebody_has_to_put_it_right()
    {
        var job = new AtWork().ArrivesChecked("chain-slack").Reads("chain-slack", "75 mm", "25 mm").State;
        Assert.Same(job, job.SeenBy(Other));
    }

    [Fact]
    public void After_both_have_read_both_are_seen() =>
        Assert.NotEmpty(
            Marked()
                .Hands(Other)
                .ReadsSecond(Nut, "torque-wrench-120", "110 N·m")
                .State.SeenBy(Other)
                .Points.Single(p => p.Point.Id == Nut)
                .Readings
        );

    [Fact]
    public void A_second_reading_after_the_signature_asks_for_it_again()
    {
        var work = new AtWork().Writes(
            EntryKind.Arrival,
            EntryBody.Arrival("fell-640-0412", "fell-640", 4, "handover", [new("distance", "each visit")])
        );
        work.Reads("distance", "11900 km").Marks("distance").Releases(BySelf);
        Assert.NotNull(work.State.Release);
        Assert.Null(work.Hands(Other).ReadsSecond("distance", "odometer", "11900 km").State.Release);
    }

    [Theory]
    [InlineData("points = [\"axle-nutt\"]", "\"axle-nut\"")]
    [InlineData("groups = [\"breaks\"]", "\"brakes\"")]
    [InlineData("", "points = [\"axle-nut\"]")]
    [InlineData("point = [\"axle-nut\"]", "points")]
    public void A_slip_in_the_shops_file_is_told(string rule, string right) =>
        Assert.Contains(
            DemoFiles.MistakesWith("shop.toml", "[estimates]", $"[second-check]\n{rule}\n\n[estimates]"),
            m => m.ToString().Contains(right)
        );

    [Fact]
    public void A_group_means_its_safety_points()
    {
        var meant = new SecondCheckRule(["idle-speed"], ["brakes"]).In(AtWork.Bench.Book);
        Assert.Contains("front-pads", meant);
        Assert.Contains("idle-speed", meant);
        Assert.DoesNotContain("disc-runout", meant); // guards use
    }

    private const string BySelf = "Ines Tallow";

    private static AtWork Marked() => new AtWork().ArrivesChecked(Nut).Tightens(Nut, "110 N·m").Marks(Nut);

    private static string? Hold(JobState state) => state.Holds.FirstOrDefault(h => h.Point == Nut)?.Words;
}
