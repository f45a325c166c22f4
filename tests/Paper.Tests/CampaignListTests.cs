using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Handover;

namespace Witnessmark.Paper.Tests;

public class CampaignListTests
{
    private static readonly FoundCampaign Tank = new("26X-004", "FUEL TANK", false, false, true);
    private static readonly FoundCampaign Brake = new("26X-011", "FRONT BRAKE", true, true, false);

    [Fact]
    public void Open_ones_stand_first_and_loud_and_settled_ones_with_the_reason()
    {
        var state = Job([Tank, Brake], Settled("26x-011", CampaignOutcome.NotConcerned, "says the maker"));
        Assert.Equal(
            [
                ("Open: PARK OUTSIDE. 26X-004, FUEL TANK: it may concern this machine, check with the maker.", true),
                ("Does not concern this machine: 26x-011, says the maker (Ines Marlow)", false),
            ],
            CampaignList.Of(state).Select(l => (l.Line.ToString(), l.Loud))
        );
        Assert.Contains(
            BeforeYouRide.Of(state),
            s => s.ToString().StartsWith("Park it outside") && s.ToString().Contains("26X-004")
        );
        Assert.DoesNotContain(BeforeYouRide.Of(state), s => s.ToString().Contains("26X-011"));
    }

    [Fact]
    public void Do_not_ride_is_said_before_the_ride_too()
    {
        var state = Job([Brake]);
        Assert.Equal(
            ("Open: DO NOT RIDE. 26X-011, FRONT BRAKE: it concerns this machine.", true),
            Assert.Single(CampaignList.Of(state))
        );
        Assert.Contains(
            BeforeYouRide.Of(state),
            s => s.ToString().StartsWith("Do not ride it until") && s.ToString().Contains("26X-011")
        );
    }

    [Fact]
    public void One_that_it_leaves_with_is_said_with_name_and_reason_and_stays_open()
    {
        var left = new CampaignLeft(FullJob.Chain()[0], "26x 011", "goes on a trailer");
        var state = Job([Brake]) with { CampaignsLeft = [left] };
        Assert.Equal(
            [
                ("Open: DO NOT RIDE. 26X-011, FRONT BRAKE: it concerns this machine.", true),
                ("It leaves with 26x 011 open, decided by Ines Marlow: goes on a trailer", true),
            ],
            CampaignList.Of(state).Select(l => (l.Line.ToString(), l.Loud))
        );
        Assert.Contains(
            BeforeYouRide.Of(state),
            s => s.ToString().StartsWith("Do not ride it until") && s.ToString().Contains("26X-011")
        );
        // done after all: nothing is open that it could leave with
        state = Job([Brake], Settled("26X-011", CampaignOutcome.Done, null)) with
        {
            CampaignsLeft = [left],
        };
        Assert.Equal(["Done: 26X-011 (Ines Marlow)"], CampaignList.Of(state).Select(l => l.Line.ToString()));
    }

    [Fact]
    public void Not_looked_up_is_not_none()
    {
        Assert.Empty(CampaignList.Of(Job(null)));
        Assert.Equal(
            "None was found in the shop's lists when the machine arrived.",
            Assert.Single(CampaignList.Of(Job([]))).Line
        );
        Assert.Equal(
            ["Done: 26X-004 (Ines Marlow)", "Others were not looked up when the machine arrived."],
            CampaignList.Of(Job(null, Settled("26X-004", CampaignOutcome.Done, null))).Select(l => l.Line.ToString())
        );
    }

    private static JobState Job(IReadOnlyList<FoundCampaign>? found, params CampaignSettled[] settled) =>
        FullJob.Released with
        {
            Arrival = FullJob.Released.Arrival! with { Campaigns = found },
            CampaignsDone = settled,
        };

    private static CampaignSettled Settled(string number, CampaignOutcome outcome, string? why) =>
        new(FullJob.Chain()[0], number, outcome, why);
}
