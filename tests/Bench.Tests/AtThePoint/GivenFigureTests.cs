using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Jobs;

namespace Witnessmark.Bench.Tests.AtThePoint;

public class GivenFigureTests
{
    private const string Pads = "front-pads";

    [Fact]
    public void Without_a_figure_a_safety_point_is_held_and_the_hold_says_what_to_do()
    {
        var work = Incomplete.Arrives().ReadsPads();
        Assert.Equal(Stripe.Unproven, work[Pads].Stripe);
        Assert.True(work[Pads].LacksFigure);
        Assert.Contains("no figure judges it: take it from the manual at the point", HoldOf(work.State, Pads));
    }

    [Fact]
    public void A_figure_from_the_manual_judges_what_was_read_before_it_came()
    {
        var work = Incomplete.Arrives().ReadsPads().Gives(Pads, "min", "1.5 mm");
        Assert.Equal(VerdictWord.Inside, work[Pads].Current!.Opinion.Verdict);
        Assert.Equal("≥ 1.5 mm", work[Pads].Figure!.Short);
        Assert.Equal("maker: Fell 640 workshop manual, 1, 2024, p. 71", work[Pads].Figure!.Origin.Text);
        Assert.Equal(work.Last.Id, work[Pads].Given!.Entry.Id);
        Assert.Equal(Incomplete.Manual, work[Pads].Given!.Document);
        Assert.Equal("read, not marked yet", HoldOf(work.State, Pads)![^20..]);
    }

    [Fact]
    public void It_judges_every_point_of_its_key_and_no_other_job()
    {
        var work = Incomplete.Arrives().Gives("tyre-dates", "max", "3650 day", "common practice");
        Assert.NotNull(work["tyre-dates"].Figure);
        Assert.Null(JobFold.Of("413", work.Entries, Incomplete.Bench).Arrival);
        Assert.DoesNotContain("tyre.age", Incomplete.Bench.Newest("fell-640")!.Figures.Keys);
    }

    [Fact]
    public void A_torque_is_given_for_a_fastener()
    {
        var work = Incomplete.Arrives().Tightens("axle-nut", "110 N·m");
        Assert.Equal(VerdictWord.Unproven, work["axle-nut"].Current!.Opinion.Verdict);
        work.Gives("axle-nut", "torque", "110 N·m");
        Assert.Equal("Tightened", work["axle-nut"].Current!.Opinion.Headline);
    }

    [Fact]
    public void A_struck_figure_is_gone_and_with_it_the_mark()
    {
        var work = Incomplete.Arrives().ReadsPads().Gives(Pads, "min", "1.5 mm");
        var given = work.Last.Id;
        work.Marks(Pads);
        Assert.Equal(Stripe.Marked, work[Pads].Stripe);
        work.Strikes(given);
        Assert.Null(work[Pads].Figure);
        Assert.Equal(Stripe.Unproven, work[Pads].Stripe);
    }

    [Fact]
    public void A_mark_made_before_the_figure_came_is_to_be_made_again()
    {
        var work = Incomplete.Arrives().Reads("tyre-dates", "3123", "1823").Marks("tyre-dates");
        Assert.Equal(Stripe.Marked, work["tyre-dates"].Stripe);
        work.Gives("tyre-dates", "max", "3650 day", "shop");
        Assert.Equal(Stripe.Inside, work["tyre-dates"].Stripe);
        Assert.Equal(Stripe.Marked, work.Marks("tyre-dates")["tyre-dates"].Stripe);
    }

    [Fact]
    public void The_last_of_several_counts()
    {
        var work = Incomplete.Arrives().Gives(Pads, "min", "1.5 mm").Gives(Pads, "min", "2 mm");
        Assert.Equal("≥ 2 mm", work[Pads].Figure!.Short);
    }

    [Fact]
    public void Two_given_at_the_same_time_that_differ_judge_nothing_until_somebody_who_saw_both_gives_it_again()
    {
        var phone = Incomplete.Arrives("phone").ReadsPads();
        var tablet = new AtWork("tablet", Incomplete.Bench).Sees(phone).Gives(Pads, "min", "1.5 mm");
        phone.Gives(Pads, "min", "2 mm");
        var both = PadsOf(Incomplete.Together(phone, tablet));
        Assert.Null(both.Figure);
        Assert.Equal(["≥ 1.5 mm", "≥ 2 mm"], both.Disputed.Select(d => d.Figure.Short.ToString()).Order());
        Assert.Contains("differ (", HoldOf(Incomplete.Together(phone, tablet), Pads));
        phone.Sees(tablet).Gives(Pads, "min", "1.5 mm");
        Assert.Equal("≥ 1.5 mm", PadsOf(Incomplete.Together(phone, tablet)).Figure!.Short);
        Assert.Empty(PadsOf(Incomplete.Together(phone, tablet)).Disputed);
    }

    [Fact]
    public void Two_given_at_the_same_time_that_say_the_same_agree()
    {
        var phone = Incomplete.Arrives("phone");
        var tablet = new AtWork("tablet", Incomplete.Bench).Sees(phone).Gives(Pads, "min", "1.5 mm");
        phone.Gives(Pads, "min", "1.5 mm");
        Assert.Equal("≥ 1.5 mm", PadsOf(Incomplete.Together(phone, tablet)).Figure!.Short);
    }

    [Theory]
    [InlineData("chain-slack", "chain.slack", "range", "10 to 20 mm", "shop", "the sheet has a figure \"chain.slack\"")]
    [InlineData(Pads, "pads.rear", "min", "2 mm", "shop", "is not judged by a figure \"pads.rear\"")]
    [InlineData("leaks", "pads.front", "min", "2 mm", "shop", "is not judged by a figure")]
    [InlineData("no-such-point", "pads.front", "min", "2 mm", "shop", "is no point of this job")]
    [InlineData(Pads, "pads.front", "min", "2 N·m", "shop", "is read in mm")]
    [InlineData(Pads, "pads.front", "amount", "2 mm", "shop", "sets no limit")]
    [InlineData(Pads, "pads.front", "range", "3 to 2 mm", "shop", "the ends are swapped")]
    [InlineData(Pads, "pads.front", "least", "2 mm", "shop", "\"least\" is no demand")]
    [InlineData(Pads, "pads.front", "min = \"1 mm\"\nmax", "2 mm", "shop", "is no demand")]
    [InlineData(Pads, "pads.front", "min", "2", "shop", "the unit is missing")]
    [InlineData(Pads, "pads.front", "min", "2 mm", "somebody", "\"somebody\"")]
    [InlineData(Pads, "pads.front", "min", "2 mm", "maker: leaflet p. 2", "document \"leaflet\"")]
    [InlineData(Pads, "pads.front", "min", "2 mm", "maker: manual", "without a place in it")]
    public void What_cannot_judge_the_point_is_kept_and_said(
        string point,
        string key,
        string demand,
        string printed,
        string origin,
        string said
    )
    {
        var work = Incomplete.Arrives().Gives(point, demand, printed, origin, key);
        Assert.Contains(said, Assert.Single(work.State.NotUnderstood).Why);
        Assert.Null(work[Pads].Figure);
    }

    [Theory]
    [InlineData("", "Fell 640 manual", "1", "cannot name a document")]
    [InlineData("two words", "Fell 640 manual", "1", "cannot name a document")]
    [InlineData("manual", " ", "1", "needs its title")]
    [InlineData("manual", "Fell 640 manual", "", "needs its title")]
    [InlineData("handbook", "Fell 640 manual", "1", "by the name \"handbook\"")]
    public void A_document_says_what_it_is(string name, string title, string edition, string said)
    {
        var draft = new FigureDraft("pads.front", "min", "2 mm", $"maker: {name} p. 71");
        var work = Incomplete.Arrives();
        work.Writes(EntryKind.Figure, EntryBody.Figure(Pads, draft, new(name, title, edition)));
        Assert.Contains(said, Assert.Single(work.State.NotUnderstood).Why);
    }

    [Fact]
    public void A_document_of_the_sheet_is_named_as_the_sheet_names_it()
    {
        var work = Incomplete.Arrives().Gives(Pads, "min", "1.5 mm", "maker: handbook p. 71");
        Assert.Equal("maker: handbook p. 71", work[Pads].Figure!.Origin.Text);
        Assert.True(work[Pads].Figure!.Origin.Binding);
    }

    private static PointState PadsOf(JobState state) => state.Points.Single(p => p.Point.Id == Pads);

    private static string? HoldOf(JobState state, string point) =>
        state.Holds.SingleOrDefault(h => h.Point == point)?.Words;
}

file static class Reading
{
    public static AtWork ReadsPads(this AtWork work) =>
        work.Reads("front-pads", "4.2 mm", "4.2 mm", "4.2 mm", "4.2 mm");
}
