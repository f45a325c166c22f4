using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Tests.BenchOrder;

namespace Witnessmark.Benchmarks;

/// <summary>bench-order beside CP-SAT on the same invented jobs; the solver may take 20 s, else it counts as "over".</summary>
internal static class OrderTimes
{
    private const double SolverSeconds = 20;

    public static void Print()
    {
        Console.WriteLine("tasks  seed  makespan min  proven   ours ms   CP-SAT ms   times");
        foreach (var tasks in new[] { 7, 11, 16, 20, 25, 40 })
            for (var seed = 1; seed <= 2; seed++)
                Line(tasks, seed);
    }

    private static void Line(int tasks, int seed)
    {
        var (states, work) = RandomOrders.Of(seed, tasks);
        var answer = BenchOrder.For(states, work);
        if (!answer.Holds)
            return;
        var ours = Watch.Median(3, () => BenchOrder.For(states, work));
        var plan = answer.Certain;
        Console.Write($"{tasks, 5} {seed, 5} {plan.Makespan.Seconds / 60, 13:0} {plan.Proven, 7} {ours, 9:0.00}");
        Console.WriteLine(Solver(states, work, ours));
    }

    private static string Solver(BenchState[] states, BenchTask[] work, double ours)
    {
        try
        {
            long? least = null;
            var solver = Watch.Once(() => least = OrderBySolver.Least(states, work, SolverSeconds, 2));
            return $" {solver, 11:0} {solver / ours, 7:0}   (CP-SAT: {least})";
        }
        catch (TimeoutException)
        {
            return $"{"over", 12} {">" + (SolverSeconds * 1000 / ours).ToString("0"), 7}";
        }
    }
}
