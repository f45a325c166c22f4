using Witnessmark.Bench.Day;

namespace Witnessmark.DaySolver;

/// <summary>
/// Gives every machine its lift. Machines come in the order in which they take one; of those that stand at once there are never
/// more than lifts, so there is always a free one. A machine that stands on a named lift already came first.
/// </summary>
internal static class OnLifts
{
    public static DayPlan Of(DayQuestion question, DayPlan plan)
    {
        var free = question.Lifts.ToDictionary(l => l, _ => int.MinValue);
        List<PlacedJob> placed = [];
        foreach (var (job, at, stands) in InOrder(question, plan))
        {
            var lift = job.Held is { Begun: true, Lift: { } named }
                ? named
                : question.Lifts.First(l => free[l] <= stands.From);
            free[lift] = Math.Max(free[lift], stands.To);
            placed.Add(at with { Lift = lift });
        }
        return new(placed);
    }

    private static IEnumerable<(DayJob Job, PlacedJob At, Span Stands)> InOrder(DayQuestion question, DayPlan plan) =>
        question
            .Jobs.Select(j => (Job: j, At: plan.Of(j.Id)!))
            .Select(p => (p.Job, p.At, Stands: p.At.Stands(p.Job, question.Now)))
            .OrderBy(p => p.Job.Held is { Begun: true, Lift: not null } ? 0 : 1)
            .ThenBy(p => p.Stands.From);
}
