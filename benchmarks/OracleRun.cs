using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Tests.BenchOrder;
using Witnessmark.Handbook.Tests.Engine;

namespace Witnessmark.Benchmarks;

/// <summary>
/// The answers of valve-shims and bench-order beside those of CP-SAT on thousands of invented engines and jobs: what the tests ask of a
/// few each time, asked of many by hand.
/// </summary>
internal static class OracleRun
{
    /// <summary>Exit code: 0 when none differs.</summary>
    public static int Print(int count)
    {
        Console.WriteLine("              asked   planned   refused   differ   seconds");
        var differ = Line("valve-shims", count, Engine) + Line("bench-order", count, Job);
        return differ == 0 ? 0 : 1;
    }

    private static int Line(string name, int count, Func<int, (bool Holds, bool Same)> ask)
    {
        var (planned, refused, differ) = (0, 0, 0);
        var milliseconds = Watch.Once(() =>
        {
            for (var seed = 1; seed <= count; seed++)
            {
                var (holds, same) = ask(seed);
                (planned, refused) = holds ? (planned + 1, refused) : (planned, refused + 1);
                if (same)
                    continue;
                differ++;
                Console.WriteLine($"{name}, seed {seed}: another answer");
            }
        });
        Console.WriteLine($"{name, -12} {count, 6} {planned, 9} {refused, 9} {differ, 8} {milliseconds / 1000, 9:0}");
        return differ;
    }

    private static (bool, bool) Engine(int seed)
    {
        var engine = RandomEngines.Of(100_000 + seed, 1 + seed % 16, seed % 7 * 10);
        var answer = ValveShims.For(engine.Valves, engine.Stock, engine.Buyable);
        var least = ShimsBySolver.Least(engine.Valves, engine.Stock, engine.Buyable);
        return (answer.Holds, answer.Holds ? least == ShimsBySolver.Aims(answer.Certain) : least is null);
    }

    private static (bool, bool) Job(int seed)
    {
        var (states, tasks) = RandomOrders.Of(100_000 + seed, 3 + seed % 6, 2 + seed % 5);
        var answer = BenchOrder.For(states, tasks);
        var least = OrderBySolver.Least(states, tasks, 60, 2);
        return (
            answer.Holds,
            answer.Holds
                ? answer.Certain.Proven && least == (long)Math.Round(answer.Certain.Makespan.Seconds / 60)
                : least is null
        );
    }
}
