using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver.Tests;

/// <summary>The best plan of a day so tiny that every plan in quarters of an hour can be tried.</summary>
public static class AllQuarters
{
    /// <summary>Two machines of up to two steps, one technician, one or two lifts; from 15:30 on, so that a night comes in.</summary>
    public static DayQuestion Tiny(int seed)
    {
        var chance = new Random(seed);
        return Days.Of([
            .. Enumerable
                .Range(1, 2)
                .Select(i => new DayJob(
                    $"{i}",
                    $"Machine {i}",
                    [
                        .. Enumerable
                            .Range(0, chance.Next(1, 3))
                            .Select(s => new DayStep($"step {s}", 15 * chance.Next(1, 4), 15 * chance.Next(0, 5))),
                    ],
                    Days.At(15, 30) + 15 * chance.Next(1, 8),
                    chance.Next(3) == 0 ? Days.At(15, 30) + 15 * chance.Next(1, 4) : null
                )),
        ]) with
        {
            Now = Days.At(15, 30),
            Lifts = chance.Next(2) == 0 ? ["Lift 1"] : ["Lift 1", "Lift 2"],
        };
    }

    public static (int Lateness, int BenchTime) Least(DayQuestion day)
    {
        var best = (int.MaxValue, int.MaxValue);
        int[] times =
        [
            .. Enumerable.Range(0, 6).Select(i => Days.At(15, 30) + 15 * i),
            .. Enumerable.Range(0, 10).Select(i => Days.At(8, 0, 1) + 15 * i),
        ];
        foreach (var first in Ways(day.Jobs[0].Steps.Count, times))
        foreach (var second in Ways(day.Jobs[1].Steps.Count, times))
        foreach (var lift in day.Lifts)
        {
            var plan = new DayPlan([new("1", "Ines", day.Lifts[0], first), new("2", "Ines", lift, second)]);
            var (wrong, lateness, bench) = Replay.Of(day, plan);
            if (wrong.Count == 0 && (lateness, bench).CompareTo(best) < 0)
                best = (lateness, bench);
        }
        return best;
    }

    private static IEnumerable<int[]> Ways(int steps, int[] times) =>
        steps == 1
            ? times.Select(t => (int[])[t])
            : times.SelectMany(t => times.Where(u => u > t).Select(u => (int[])[t, u]));
}
