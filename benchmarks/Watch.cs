using System.Diagnostics;

namespace Witnessmark.Benchmarks;

/// <summary>Measures one thing, warmed up, in milliseconds.</summary>
internal static class Watch
{
    /// <summary>The median of several runs, after one that is not counted.</summary>
    public static double Median(int runs, Action what)
    {
        what();
        var times = new double[runs];
        for (var i = 0; i < runs; i++)
            times[i] = Once(what);
        Array.Sort(times);
        return times[runs / 2];
    }

    public static double Once(Action what)
    {
        var from = Stopwatch.GetTimestamp();
        what();
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
    }
}
