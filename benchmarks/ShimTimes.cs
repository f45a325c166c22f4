using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Tests.Engine;

namespace Witnessmark.Benchmarks;

/// <summary>valve-shims beside CP-SAT on the same invented engines.</summary>
internal static class ShimTimes
{
    public static void Print()
    {
        Console.WriteLine("valves  stock  seed   ours ms   CP-SAT ms   times");
        foreach (var (valves, stock) in new[] { (4, 10), (8, 30), (16, 60), (16, 200) })
            for (var seed = 1; seed <= 3; seed++)
                Line(valves, stock, seed);
    }

    private static void Line(int valves, int stock, int seed)
    {
        var engine = RandomEngines.Of(seed, valves, stock);
        var ours = Watch.Median(101, () => ValveShims.For(engine.Valves, engine.Stock, engine.Buyable));
        var solver = Watch.Median(3, () => ShimsBySolver.Least(engine.Valves, engine.Stock, engine.Buyable));
        Console.WriteLine($"{valves, 6} {stock, 6} {seed, 5} {ours, 9:0.000} {solver, 11:0.0} {solver / ours, 7:0}");
    }
}
