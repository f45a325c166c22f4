using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

public class BenchOrderTests
{
    // Trying every sequence: own code, OrderByEnumeration
    [Fact]
    public void Small_orders_are_as_short_as_any_sequence()
    {
        for (var seed = 0; seed < 150; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, 1 + seed % 4, 2 + seed % 3);
            var answer = Order.For(states, tasks);
            var least = new OrderByEnumeration(states, tasks).Least();
            Assert.Equal(double.IsPositiveInfinity(least), !answer.Holds);
            if (!answer.Holds)
                continue;
            Replay.Check(states, tasks, answer.Certain);
            Assert.True(answer.Certain.Proven);
            Assert.True(Math.Abs(least - answer.Certain.Makespan.Seconds) < 1e-6, $"seed {seed}: {least / 60} by enumeration, {answer.Certain.Makespan.Seconds / 60}");
        }
    }

    // CP-SAT on another formulation: OrderBySolver
    [Fact]
    public void Orders_are_as_short_as_a_constraint_solver_proves()
    {
        for (var seed = 1000; seed < 1016; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, 4 + seed % 5, 2 + seed % 5);
            var answer = Order.For(states, tasks);
            var least = OrderBySolver.Least(states, tasks);
            Assert.True(least is null == !answer.Holds, $"seed {seed}: {answer.Refusal}, solver {least}");
            if (!answer.Holds)
                continue;
            Replay.Check(states, tasks, answer.Certain);
            Assert.True(least == (long)Math.Round(answer.Certain.Makespan.Seconds / 60), $"seed {seed}: {least} by the solver, {answer.Certain.Makespan.Seconds / 60}");
        }
    }
}
