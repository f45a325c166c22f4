using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver.Tests;

public class RandomDayTests
{
    // the replay shares no code with rules and solver
    [Fact]
    public void Every_plan_can_be_worked_and_measures_what_it_says()
    {
        var late = 0;
        for (var seed = 1; seed <= 30; seed++)
        {
            var day = Days.Random(seed, 4 + seed % 9, 1 + seed % 4, 1 + seed % 3);
            var solved = DaySearch.Solve(day, 0.7);
            Assert.Empty(solved.Loosened);
            var planned = day with { Jobs = [.. day.Jobs.Where(j => solved.Plan.Of(j.Id) is not null)] };
            Assert.Equal(day.Jobs.Count, planned.Jobs.Count + solved.Without.Count);
            var (wrong, lateness, bench) = Replay.Of(planned, solved.Plan);
            Assert.True(wrong.Count == 0, $"seed {seed}: {string.Join("; ", wrong)}");
            Assert.Equal((lateness, bench), (solved.Measure.Lateness, solved.Measure.BenchTime));
            Assert.Empty(DayRules.Broken(planned, solved.Plan));
            Assert.InRange(solved.LatenessBound, 0, lateness);
            Assert.InRange(solved.BenchBound, 0, bench);
            var missed = LateReason.Of(planned, solved.Plan);
            Assert.Equal(lateness, missed.Sum(m => m.Minutes));
            Assert.All(missed, m => Assert.EndsWith(".", m.Words));
            late += missed.Count;
        }
        Assert.True(late > 15, $"only {late} late");
    }

    [Fact]
    public void No_order_of_any_small_day_is_less_late()
    {
        var late = 0;
        for (var seed = 100; seed < 130; seed++)
        {
            var day = Small(seed);
            var solved = DaySearch.Solve(day, 5);
            Assert.True(solved.Proven, $"seed {seed}");
            Assert.Equal(AllOrders.LeastLateness(day), solved.Measure.Lateness);
            late += solved.Measure.Lateness > 0 ? 1 : 0;
        }
        Assert.InRange(late, 8, 29);
    }

    // every plan whose steps begin at quarters of an hour: with all lengths in quarters a best one is among them
    [Fact]
    public void No_plan_of_any_tiny_day_has_less_lateness_and_then_less_bench_time()
    {
        for (var seed = 200; seed < 215; seed++)
        {
            var day = AllQuarters.Tiny(seed);
            var solved = DaySearch.Solve(day, 5);
            Assert.True(solved.Proven, $"seed {seed}");
            Assert.Equal(AllQuarters.Least(day), (solved.Measure.Lateness, solved.Measure.BenchTime));
        }
    }

    [Fact]
    public void The_plan_without_search_can_be_worked_too()
    {
        for (var seed = 300; seed < 400; seed++)
        {
            var day = Plannable.Of(Days.Random(seed, 3 + seed % 25, 1 + seed % 6, 1 + seed % 4)).Question;
            var plan = FirstPlan.Of(day);
            day = day with { Jobs = [.. day.Jobs.Where(j => plan.Of(j.Id) is not null)] };
            Assert.Empty(Replay.Of(day, plan).Wrong);
        }
    }

    private static DayQuestion Small(int seed)
    {
        var day = Days.Random(seed, 3, 2, 1 + seed % 2);
        return day with
        {
            Jobs =
            [
                .. day.Jobs.Select(
                    (j, i) =>
                        j with
                        {
                            Held = null,
                            Steps = [.. j.Steps.Take(2)],
                            Promised = day.Now + 30 * (2 + (seed + 3 * i) % 6),
                        }
                ),
            ],
        };
    }
}
