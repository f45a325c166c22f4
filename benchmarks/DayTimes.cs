using Witnessmark.DaySolver;
using Witnessmark.DaySolver.Tests;

namespace Witnessmark.Benchmarks;

/// <summary>The day plan of invented shops: how late, proven how far, and after how long; the bar is 5 s.</summary>
internal static class DayTimes
{
    public static void Print()
    {
        Console.WriteLine(
            "jobs  people  lifts  seed   late min   bound   bench min   bound   proven   best after s   all s"
        );
        for (var seed = 1; seed <= 6; seed++)
            Line(30, 6, 4, seed);
        Line(12, 3, 3, 1);
    }

    private static void Line(int jobs, int people, int lifts, int seed)
    {
        var day = Days.Random(seed, jobs, people, lifts);
        var solved = DaySearch.Solve(day);
        var m = solved.Measure;
        Console.WriteLine(
            $"{jobs, 4} {people, 7} {lifts, 6} {seed, 5} {m.Lateness, 10} {solved.LatenessBound, 7} {m.BenchTime, 11} {solved.BenchBound, 7} {solved.Proven, 8} {solved.BestAfter, 14:0.00} {solved.Seconds, 7:0.00}"
        );
    }
}
