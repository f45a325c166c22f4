using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>A new chain gives on its first ride, so its slack is read again after it. Common practice, no source.</summary>
public sealed class SettlingTests
{
    private const string Slack = "chain-slack";
    private const string Ride = "road-test";

    [Theory]
    [InlineData("new chain fitted")]
    [InlineData("chain replaced, rivet link")]
    [InlineData("neue Kette aufgelegt")]
    [InlineData("Kette getauscht")]
    public void After_the_ride_a_new_chain_is_read_again(string did)
    {
        var work = Renewed(new AtWork().Arrives(), did);
        Assert.Equal(Stripe.Marked, work[Slack].Stripe);
        work.DoesWell(Ride);
        Assert.Equal(Stripe.Again, work[Slack].Stripe);
        Assert.Equal("What is new here was ridden since: it settles.", Assert.Single(work[Slack].AgainBecause));
        Assert.Contains(work.State.Holds, h => h.Point == Slack);
        work.DoesWell(Slack);
        Assert.Equal(Stripe.Marked, work[Slack].Stripe);
        Assert.Equal(Stripe.Marked, work[Ride].Stripe); // reading it asks for no other ride
    }

    [Fact]
    public void A_chain_that_was_only_adjusted_is_not()
    {
        var work = Renewed(new AtWork().Arrives(), "chain cleaned").DoesWell(Ride);
        Assert.Equal(Stripe.Marked, work[Slack].Stripe);
    }

    [Fact]
    public void What_is_new_elsewhere_says_nothing_of_the_chain()
    {
        var work = new AtWork().Arrives().Does("front-pads", "new pads").DoesWell(Slack).DoesWell(Ride);
        Assert.Equal(Stripe.Marked, work[Slack].Stripe);
    }

    [Fact]
    public void A_job_of_an_earlier_program_stays_as_it_was_left()
    {
        var work = Renewed(new AtWork().ArrivesWithout("settling"), "new chain fitted").DoesWell(Ride);
        Assert.Equal(Stripe.Marked, work[Slack].Stripe);
    }

    private static AtWork Renewed(AtWork work, string did) => work.Does(Slack, did).DoesWell(Slack);
}
