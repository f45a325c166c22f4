using Witnessmark.Doors;

namespace Witnessmark.Tests.Doors;

/// <summary>A flood of refused requests does not fill the disk by way of what is told of it.</summary>
public sealed class RefusedRequestsTests
{
    [Fact]
    public void Of_a_flood_it_tells_some_and_then_how_many()
    {
        var clock = new SetClock();
        List<string> told = [];
        var refused = new RefusedRequests(told.Add, clock);
        for (var n = 1; n <= RefusedRequests.Most + 40; n++)
            refused.Tell($"{n}");
        Assert.Equal(Enumerable.Range(1, RefusedRequests.Most).Select(n => $"{n}"), told);
        clock.Pass(TimeSpan.FromMinutes(1));
        refused.Tell("later");
        Assert.Equal(["refused 40 more in the minute before", "later"], told.Skip(RefusedRequests.Most));
        clock.Pass(TimeSpan.FromMinutes(1));
        refused.Tell("later still");
        Assert.Equal("later still", told[RefusedRequests.Most + 2]);
    }
}
