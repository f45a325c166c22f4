using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;
using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>The largest jobs that are taken, what is refused beyond, and several states that end by themselves.</summary>
public class BenchOrderBoundsTests
{
    [Fact]
    public void As_many_tasks_and_states_as_allowed_are_taken_and_one_more_is_a_callers_bug()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Order.For([], Row(Order.MostTasks + 1), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order.For(States(Order.MostStates + 1), Row(1), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Order.For([], Row(1), 0));
        Assert.Equal(1, Order.For(States(Order.MostStates), Row(1), 1).Certain.Makespan.Seconds);
        Assert.Equal(86_400_000, Order.Longest.Seconds);
    }

    // One order is possible: each task waits for the one that stands after it.
    [Theory]
    [InlineData(26)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(Order.MostTasks)]
    public void A_row_of_tasks_is_done_in_its_order_however_many(int count)
    {
        var plan = Order.For([], Row(count), 1000).Certain;
        Assert.Equal(Enumerable.Range(0, count).Select(i => $"t{count - 1 - i}"), plan.Schedule.Select(s => s.Do));
        Assert.Equal(count, plan.Makespan.Seconds);
    }

    // By hand: one begins a wait of 1000 s, all others fit into it; the last follows the wait.
    [Theory]
    [InlineData(70)]
    [InlineData(100)]
    public void A_wait_is_filled_with_what_is_far_down_the_list(int count)
    {
        var tasks = Row(count).Select(t => t with { After = [] }).ToArray();
        tasks[^1] = tasks[^1] with { WaitAfter = new(1000) };
        tasks[^2] = tasks[^2] with { After = [tasks[^1].Id] };
        var plan = Order.For([], tasks, 20_000).Certain;
        Replay.Check([], tasks, plan);
        Assert.Equal(1 + 1000 + 1, plan.Makespan.Seconds, 1e-9);
        Assert.Equal(tasks[^2].Id, plan.Schedule[^1].Do);
    }

    // Trying every sequence: OrderByEnumeration. Every state may be warm at first, and cools in a time of its own.
    [Fact]
    public void States_that_end_by_themselves_are_waited_for_each_by_itself()
    {
        var waited = 0;
        for (var seed = 0; seed < 150; seed++)
        {
            var chance = new Random(seed);
            var (states, tasks) = RandomOrders.Of(5000 + seed, 1 + seed % 3, 3);
            for (var s = 0; s < states.Length; s++)
                if (chance.Next(3) > 0)
                    states[s] = states[s] with
                    {
                        Initial = chance.Next(2) == 0,
                        Clear = new(60 * chance.Next(0, 5)),
                        ClearAfter = new(60 * chance.Next(5, 90)),
                        Final = chance.Next(3) == 0 ? false : null,
                    };
            var answer = Order.For(states, tasks);
            var least = new OrderByEnumeration(states, tasks).Least();
            Assert.True(double.IsPositiveInfinity(least) == !answer.Holds, $"seed {seed}: {answer.Refusal}, {least}");
            if (!answer.Holds)
                continue;
            Replay.Check(states, tasks, answer.Certain);
            Assert.Equal(least, answer.Certain.Makespan.Seconds, 1e-6);
            waited += answer.Certain.Makespan > answer.Certain.HandsOn ? 1 : 0;
        }
        Assert.InRange(waited, 40, 150);
    }

    private static BenchTask[] Row(int count) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => new BenchTask(
                    $"t{i}",
                    new(1),
                    new(0),
                    i + 1 < count ? [$"t{i + 1}"] : [],
                    new Dictionary<string, bool>()
                )),
        ];

    private static BenchState[] States(int count) =>
        [.. Enumerable.Range(0, count).Select(i => new BenchState($"s{i}", false, new Duration(1)))];
}
