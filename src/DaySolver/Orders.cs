using System.Diagnostics;
using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver;

/// <summary>
/// A better plan to begin the search with: in the order in which jobs are placed, one is taken out and put in elsewhere, and what
/// is not worse stays. Where many promises are missed this finds in a moment what the solver alone finds late.
/// </summary>
internal static class Orders
{
    public static DayPlan Better(DayQuestion question, DayPlan first, double seconds)
    {
        var watch = Stopwatch.StartNew();
        var chance = new Random(1);
        var order = FirstPlan.InOrder(question).ToList();
        var fast = order.Count(j => j.Held is not null); // they come first, or there may be no room for them
        var (best, measure) = (first, Measure(question, first));
        while (order.Count - fast > 1 && measure.Lateness > 0 && watch.Elapsed.TotalSeconds < seconds)
        {
            var (from, to) = (chance.Next(fast, order.Count), chance.Next(fast, order.Count));
            var tried = order.ToList();
            tried.RemoveAt(from);
            tried.Insert(to, order[from]);
            var plan = FirstPlan.Of(question, tried);
            if (plan.Jobs.Count < question.Jobs.Count || Measure(question, plan) is var m && m.CompareTo(measure) > 0)
                continue;
            (order, best, measure) = (tried, plan, Measure(question, plan));
        }
        return best;
    }

    private static (int Lateness, int Ends) Measure(DayQuestion question, DayPlan plan) =>
        (question.Jobs.Sum(j => plan.Of(j.Id)!.Late(j)), question.Jobs.Sum(j => plan.Of(j.Id)!.Ready(j)));
}
