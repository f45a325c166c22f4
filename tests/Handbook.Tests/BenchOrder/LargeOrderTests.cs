using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>Takes half a minute, so it does not judge mutants.</summary>
public class LargeOrderTests
{
    [Theory]
    [InlineData(16)]
    [InlineData(20)]
    [InlineData(40)]
    [InlineData(128)]
    public void Large_orders_replay_and_say_how_good_they_are(int size)
    {
        for (var seed = 0; seed < 3; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, size);
            if (Order.For(states, tasks) is not { Holds: true, Certain: var plan })
                continue;
            Replay.Check(states, tasks, plan);
            Assert.Equal(size <= Order.ExactUpTo, plan.Proven);
        }
    }
}
