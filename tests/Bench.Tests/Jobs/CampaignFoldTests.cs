using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Jobs;

public class CampaignFoldTests
{
    private static readonly FoundCampaign Tank = new("26X-004", "FUEL TANK", false, false, true);
    private static readonly FoundCampaign Brake = new("26X-011", "FRONT BRAKE", true, true, false);

    [Fact]
    public void A_job_whose_machine_was_not_looked_up_says_so_and_not_none()
    {
        Assert.Null(new AtWork().Arrives().State.CampaignsOpen);
        Assert.Equal([], Arrived([]).State.CampaignsOpen!);
    }

    [Fact]
    public void What_was_found_at_arrival_is_open_until_it_is_settled()
    {
        var work = Arrived([Tank, Brake]);
        Assert.Equal([Tank, Brake], work.State.CampaignsOpen!);
        work.Writes(EntryKind.Campaign, EntryBody.Campaign("26x 004", CampaignOutcome.Done));
        Assert.Equal([Brake], work.State.CampaignsOpen!);
        work.Writes(
            EntryKind.Campaign,
            EntryBody.Campaign("26X-011", CampaignOutcome.NotConcerned, "the maker says so")
        );
        Assert.Empty(work.State.CampaignsOpen!);
        Assert.Equal(
            [("26x 004", CampaignOutcome.Done, null), ("26X-011", CampaignOutcome.NotConcerned, "the maker says so")],
            work.State.CampaignsDone.Select(c => (c.Number, c.Outcome, c.Why))
        );
        Assert.Empty(work.State.NotUnderstood);
    }

    [Fact]
    public void The_last_word_on_a_number_counts_and_a_strike_takes_it_back()
    {
        var work = Arrived([Tank])
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26X-004", CampaignOutcome.NotConcerned))
            .Writes(EntryKind.Campaign, EntryBody.Campaign("26X-004", CampaignOutcome.Done));
        Assert.Equal(CampaignOutcome.Done, Assert.Single(work.State.CampaignsDone).Outcome);
        work.Writes(EntryKind.Strike, EntryBody.Strike("wrong machine"), work.Last.Id);
        Assert.Equal(CampaignOutcome.NotConcerned, Assert.Single(work.State.CampaignsDone).Outcome);
    }

    [Theory]
    [InlineData("""{"number":"26X-004","outcome":"perhaps"}""")]
    [InlineData("""{"number":"26X-004"}""")]
    [InlineData("""{"outcome":"done"}""")]
    public void What_is_not_understood_is_kept_and_settles_nothing(string body)
    {
        using var json = System.Text.Json.JsonDocument.Parse(body);
        var state = Arrived([Tank]).Writes(EntryKind.Campaign, json.RootElement).State;
        Assert.Equal([Tank], state.CampaignsOpen!);
        Assert.Single(state.NotUnderstood);
    }

    private static AtWork Arrived(IReadOnlyList<FoundCampaign> found)
    {
        var machine = AtWork.Bench.Workshop.Machines["fell-640-0412"];
        Assert.Equal("Tarnmoor", machine.Make);
        var sheet = AtWork.Bench.Newest(machine.Sheet)!;
        var points = AtWork.Bench.Book.Purposes["handover"];
        return new AtWork().Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(machine.Id, sheet.Id, sheet.Revision, "handover", points, null, found)
        );
    }
}
