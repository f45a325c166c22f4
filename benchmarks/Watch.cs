using System.Diagnostics;
using System.Runtime.CompilerServices;

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

    /// <summary>The least of many runs: what the work takes when nobody else wants the processor.</summary>
    public static double Least(int runs, Action what) => Enumerable.Range(0, runs).Min(_ => Once(what));

    public static double Once(Action what)
    {
        var from = Stopwatch.GetTimestamp();
        what();
        return Stopwatch.GetElapsedTime(from).TotalMilliseconds;
    }

    /// <summary>Microseconds of one short call: the least mean of several rounds, each long enough for the clock.</summary>
    public static double PerCall<T>(Func<T> what, int calls = 20_000, int rounds = 15)
    {
        var least = double.PositiveInfinity;
        for (var round = 0; round < rounds; round++)
        {
            var took = Once(() =>
            {
                for (var i = 0; i < calls; i++)
                    Keep(what());
            });
            least = Math.Min(least, took * 1000 / calls);
        }
        return least;
    }

    /// <summary>Bytes that one call leaves to the collector, its answer not counted when it is a value.</summary>
    public static long Allocated<T>(Func<T> what)
    {
        var answer = what();
        var before = GC.GetAllocatedBytesForCurrentThread();
        answer = what();
        var after = GC.GetAllocatedBytesForCurrentThread();
        GC.KeepAlive(answer);
        return after - before;
    }

    // Called, not inlined: or the compiler may see that nobody wants the answer.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Keep<T>(T answer) => _ = answer;
}
