using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

public class BenchOrderTests
{
    // Trying every sequence: OrderByEnumeration
    [Fact]
    public void Small_orders_are_as_short_as_any_sequence() => Assert.Equal(0, Refused(0, 20));

    [Fact]
    public void Many_small_orders_are_as_short_as_any_sequence() => Assert.InRange(Refused(20, 200), 1, 90);

    private static int Refused(int from, int to)
    {
        var refused = 0;
        for (var seed = from; seed < to; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, 1 + seed % 4, 2 + seed % 3);
            var answer = Order.For(states, tasks);
            var least = new OrderByEnumeration(states, tasks).Least();
            Assert.True(double.IsPositiveInfinity(least) == !answer.Holds, $"seed {seed}: {answer.Refusal}, {least}");
            refused += answer.Holds ? 0 : 1;
            if (!answer.Holds)
                continue;
            Replay.Check(states, tasks, answer.Certain);
            Assert.True(answer.Certain.Proven);
            Assert.Equal(least, answer.Certain.Makespan.Seconds, 1e-6);
        }
        return refused;
    }

    [Fact]
    public void An_order_never_lengthens_when_a_wait_gets_shorter()
    {
        for (var seed = 2000; seed < 2080; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, 3 + seed % 8);
            var waits = Array.FindIndex(tasks, t => t.WaitAfter.Seconds > 0);
            if (waits < 0 || Order.For(states, tasks) is not { Holds: true, Certain: var before })
                continue;
            tasks[waits] = tasks[waits] with { WaitAfter = tasks[waits].WaitAfter * 0.5 };
            Assert.True(Order.For(states, tasks).Certain.Makespan.Seconds <= before.Makespan.Seconds + 1e-6);
        }
    }

    [Fact]
    public void Without_enough_effort_it_says_so_and_bounds_what_is_possible()
    {
        var unproven = 0;
        for (var seed = 3000; seed < 3020; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, 11);
            if (Order.For(states, tasks) is not { Holds: true, Certain: var best })
                continue;
            var hurried = Order.For(states, tasks, effort: 1).Certain;
            Replay.Check(states, tasks, hurried);
            unproven += hurried.Proven ? 0 : 1;
            Assert.True(hurried.Makespan.Seconds >= best.Makespan.Seconds - 1e-6);
            Assert.True((hurried.LowerBound ?? hurried.Makespan).Seconds <= best.Makespan.Seconds + 1e-6);
        }
        Assert.InRange(unproven, 1, 20);
    }

    [Fact]
    public void The_same_question_gets_the_same_order()
    {
        var (states, tasks) = RandomOrders.Of(1, 12);
        Assert.Equal(Order.For(states, tasks).Certain.Schedule, Order.For(states, tasks).Certain.Schedule);
    }
}
