using System.Diagnostics;
using Google.OrTools.Sat;
using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver;

/// <summary>
/// The best day plan: least lateness; among these the least bench time; among these the one whose machines are ready soonest.
/// Three searches, each with what the one before reached held fast, so that the order of the three is exact.
/// </summary>
public static class DaySearch
{
    /// <summary>How long it may take when nobody says otherwise, in seconds.</summary>
    public const double UsualSeconds = 4;

    // Of the time allowed; what one search leaves is added to the next.
    private const double ForOrders = 0.15;
    private const double ForLateness = 0.65;
    private const double ForBenchTime = 0.85;

    /// <summary>The best plan found within the time, with what is proven of it.</summary>
    /// <param name="question">The question; jobs that have no place are told by name and left out.</param>
    /// <param name="seconds">Time allowed for the search.</param>
    public static SolvedDay Solve(DayQuestion question, double seconds = UsualSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seconds);
        var watch = Stopwatch.StartNew();
        var (able, without) = Plannable.Of(question);
        var (kept, loosened) = Holds.Kept(able);
        if (kept.Jobs.Count == 0)
            return new(new([]), new(0, 0, 0), 0, 0, without, loosened, 0, 0);
        var first = FirstPlan.Of(kept);
        List<NoPlace> all =
        [
            .. without,
            .. kept
                .Jobs.Where(j => first.Of(j.Id) is null)
                .Select(j => new NoPlace(
                    j.Id,
                    $"It finds no room in the {Hours.MostDays} days that a plan looks ahead."
                )),
        ];
        kept = kept with { Jobs = [.. kept.Jobs.Where(j => first.Of(j.Id) is not null)] };
        return Search(kept, first, seconds, watch) with { Without = all, Loosened = loosened };
    }

    private static SolvedDay Search(DayQuestion question, DayPlan first, double seconds, Stopwatch watch)
    {
        var model = new DayModel(question, Horizon(question, first));
        var (best, bestAfter) = (Orders.Better(question, first, seconds * ForOrders), watch.Elapsed.TotalSeconds);
        // a plan that is late nowhere needs no proof that none is less late
        var latenessBound = Now().Lateness == 0 ? 0 : Less(model.Lateness, ForLateness);
        model.Model.Add(model.Lateness <= Now().Lateness);
        var benchBound = Math.Max(Hands(question), Less(model.BenchTime, ForBenchTime));
        model.Model.Add(model.BenchTime <= Now().BenchTime);
        Less(model.Ends, 1);
        var plan = OnLifts.Of(question, best);
        return new(plan, Now(), latenessBound, benchBound, [], [], watch.Elapsed.TotalSeconds, bestAfter);

        DayMeasure Now() => DayMeasure.Of(question, best);

        int Less(LinearExpr what, double until)
        {
            var before = watch.Elapsed.TotalSeconds;
            model.Model.Minimize(what);
            model.Hint(best);
            var run = Run.Of(model, Math.Max(0.1, seconds * until - before));
            if (run.Plan is { } found)
                (best, bestAfter) = (found, before + run.BestAfter);
            return (int)Math.Max(0, Math.Ceiling(run.Bound - 1e-6));
        }
    }

    /// <summary>Hands-on work lies within opening hours, so bench time is never less; but for what was begun before them.</summary>
    private static int Hands(DayQuestion question) => question.Jobs.Sum(DayModel.HandsOpen);

    /// <summary>
    /// How far the search looks: to the end of the first open stretch on a day after the one on which the plan without search is
    /// through, and a day beyond that plan at least. What is proven is proven among the plans that keep within it.
    /// </summary>
    private static int Horizon(DayQuestion question, DayPlan first)
    {
        var last = question.Jobs.Max(j => first.Of(j.Id)!.Ready(j));
        var after = question.Open.FirstOrDefault(o => o.From / 1440 > last / 1440);
        return Math.Max(last + 1440, after.To);
    }
}
