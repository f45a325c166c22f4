using Order = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>Takes seconds, so it does not judge mutants.</summary>
public class OrderAgainstSolverTests
{
    // CP-SAT on another formulation: OrderBySolver
    [Fact]
    public void Orders_are_as_short_as_a_constraint_solver_proves()
    {
        var refused = 0;
        for (var seed = 1000; seed < 1024; seed++)
        {
            var (states, tasks) = RandomOrders.Of(seed, 4 + seed % 5, 2 + seed % 5);
            var answer = Order.For(states, tasks);
            var least = OrderBySolver.Least(states, tasks);
            Assert.True(least is null == !answer.Holds, $"seed {seed}: {answer.Refusal}, solver {least}");
            refused += answer.Holds ? 0 : 1;
            if (!answer.Holds)
                continue;
            Replay.Check(states, tasks, answer.Certain);
            Assert.Equal(least, (long)Math.Round(answer.Certain.Makespan.Seconds / 60));
        }
        Assert.InRange(refused, 1, 12);
    }
}
