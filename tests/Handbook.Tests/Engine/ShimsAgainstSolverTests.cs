using Witnessmark.Handbook.Engine;

namespace Witnessmark.Handbook.Tests.Engine;

/// <summary>Takes seconds, so it does not judge mutants.</summary>
public class ShimsAgainstSolverTests
{
    // CP-SAT, another formulation: ShimsBySolver
    [Fact]
    public void Plans_are_as_good_as_a_constraint_solver_proves()
    {
        var refused = 0;
        for (var seed = 0; seed < 200; seed++)
        {
            var engine = RandomEngines.Of(seed, 1 + seed % 16, seed % 7 * 10);
            var answer = ValveShims.For(engine.Valves, engine.Stock, engine.Buyable);
            var least = ShimsBySolver.Least(engine.Valves, engine.Stock, engine.Buyable);
            Assert.Equal(least is null, !answer.Holds);
            refused += answer.Holds ? 0 : 1;
            if (answer.Holds)
                Assert.Equal(least, ShimsBySolver.Aims(answer.Certain));
        }
        Assert.InRange(refused, 5, 150);
    }
}
