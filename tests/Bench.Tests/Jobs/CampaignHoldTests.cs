using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>"Do not ride" keeps a machine here until it is done or somebody decides by name, with a reason (docs/decisions/007).</summary>
public class CampaignHoldTests
{
    private static readonly FoundCampaign Tank = new("26X-004", "FUEL TANK", false, false, true);
    private static readonly FoundCampaign Brake = new("26X-011", "FRONT BRAKE", false, true, false);

    [Fact]
    public void Do_not_ride_holds_the_job_and_park_outside_does_not()
    {
        Assert.Equal("Do not ride: campaign 26X-011 is open (FRONT BRAKE).", Held(Arrived([Tank, Brake])));
        Assert.Null(Held(Arrived([Tank])));
        Assert.Null(Held(Arrived([])));
        Assert.Null(Held(Arrived(null)));
        Assert.Equal(Stripe.Outside, Arrived([Brake]).State.Holds[0].Stripe);
    }

    [Fact]
    public void It_is_lifted_by_recording_it_done()
    {
        var work = Arrived([Brake]).Writes(EntryKind.Campaign, EntryBody.Campaign("26x 011", CampaignOutcome.Done));
        Assert.Null(Held(work));
        work.Writes(EntryKind.Strike, EntryBody.Strike("wrong machine"), work.Last.Id);
        Assert.NotNull(Held(work));
    }

    [Theory]
    [InlineData(null, true)]
    [InlineData("", true)]
    [InlineData("  ", true)]
    [InlineData("its VIN is not among those the maker names", false)]
    public void That_it_does_not_concern_the_machine_needs_a_reason(string? why, bool held)
    {
        var work = Arrived([Brake])
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26X-011", CampaignOutcome.NotConcerned, why));
        Assert.Equal(held, Held(work) is not null);
    }

    [Fact]
    public void Somebody_may_let_it_leave_for_a_reason_and_it_stays_open()
    {
        var work = Arrived([Brake])
            .Writes(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-011", "goes on a trailer"));
        Assert.Null(Held(work));
        Assert.Equal([Brake], work.State.CampaignsOpen!);
        var left = Assert.Single(work.State.CampaignsLeft);
        Assert.Equal(("26X-011", "goes on a trailer", work.Last.By), (left.Number, left.Why, left.Entry.By));
        work.Writes(EntryKind.Strike, EntryBody.Strike("it is ridden after all"), work.Last.Id);
        Assert.NotNull(Held(work));
        Assert.Empty(work.State.CampaignsLeft);
    }

    [Fact]
    public void Nothing_leaves_open_what_is_done()
    {
        var work = Arrived([Brake])
            .Writes(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-011", "goes on a trailer"))
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26x 011", CampaignOutcome.Done));
        Assert.Empty(work.State.CampaignsLeft);
        Assert.Null(Held(work));
    }

    [Fact]
    public void A_decision_without_a_reason_lifts_nothing()
    {
        var work = Arrived([Brake]).Writes(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-011", " "));
        Assert.NotNull(Held(work));
        Assert.Empty(work.State.CampaignsLeft);
    }

    [Fact]
    public void The_last_word_on_a_number_counts()
    {
        var work = Arrived([Brake])
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26X-011", CampaignOutcome.Done))
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26X-011", CampaignOutcome.NotConcerned));
        Assert.NotNull(Held(work));
    }

    [Fact]
    public void Each_of_two_holds_by_itself()
    {
        var other = Brake with { Number = "26X-012" };
        var work = Arrived([Brake, other])
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26X-011", CampaignOutcome.Done));
        Assert.Equal("Do not ride: campaign 26X-012 is open (FRONT BRAKE).", Held(work));
    }

    // what a program without this rule released stays released: its arrivals keep no machine
    [Fact]
    public void A_job_of_an_older_program_is_not_held()
    {
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        var body = EntryBody.Arrival(
            machine.Id,
            machine.Sheet,
            AtWork.Bench.Newest(machine.Sheet)!.Revision,
            "handover",
            [],
            null,
            [Brake]
        );
        var state = new AtWork().Writes(EntryKind.Arrival, body).State;
        Assert.Empty(state.Holds);
        Assert.Equal([Brake], state.CampaignsOpen!);
    }

    [Fact]
    public void A_signature_that_had_not_seen_the_decision_does_not_stand()
    {
        var work = Arrived([Brake], []).Writes(EntryKind.Release, EntryBody.Release("Ines Tallow"));
        Assert.Null(work.State.Release);
        work.Writes(EntryKind.CampaignLeft, EntryBody.CampaignLeft("26X-011", "goes on a trailer"));
        Assert.True(work.State.MayGo);
        Assert.Null(work.State.Release);
        work.Writes(EntryKind.Release, EntryBody.Release("Ines Tallow"));
        Assert.NotNull(work.State.Release);
    }

    private static string? Held(AtWork work) =>
        work.State.Holds.Where(h => h.Point is null).Select(h => h.Words).SingleOrDefault();

    private static AtWork Arrived(
        IReadOnlyList<FoundCampaign>? found,
        IReadOnlyList<Bench.Book.PlannedPoint>? points = null
    )
    {
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        var sheet = AtWork.Bench.Newest(machine.Sheet)!;
        var plan = points ?? AtWork.Bench.Book.Purposes["handover"];
        return new AtWork().Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(machine.Id, sheet.Id, sheet.Revision, "handover", plan, null, found, machine)
        );
    }
}
