namespace Witnessmark.Bench.Day;

/// <summary>
/// A plan without search: what is begun or placed by hand first, then job by job in the order of the promises, each where it is
/// ready soonest. Good enough to begin with and to tell how many days a plan takes; nothing proves it the best.
/// </summary>
public static class FirstPlan
{
    /// <summary>The plan; a job that fits nowhere within the hours is not in it.</summary>
    public static DayPlan Of(DayQuestion question) => Of(question, InOrder(question));

    /// <summary>The plan when the jobs are placed in the given order.</summary>
    public static DayPlan Of(DayQuestion question, IEnumerable<DayJob> order)
    {
        var room = new Room(question, new([]));
        List<PlacedJob> placed = [];
        foreach (var job in order)
            if (Best(question, room, job) is { } at)
            {
                placed.Add(at);
                room.Take(job, at);
            }
        return new(placed);
    }

    /// <summary>Where a job is ready soonest when all others stay; null when nowhere.</summary>
    public static PlacedJob? Best(DayQuestion question, DayPlan others, DayJob job) =>
        Best(question, new Room(question, others, job), job);

    /// <summary>When nothing of a job may begin before.</summary>
    public static int Earliest(DayQuestion question, DayJob job) => Math.Max(question.Now, job.Parts ?? int.MinValue);

    /// <summary>What is begun, what is placed by hand, then by promise; what is promised for no time comes last.</summary>
    public static IReadOnlyList<DayJob> InOrder(DayQuestion question) =>
        [
            .. question
                .Jobs.OrderBy(j =>
                    j.Held is null ? 2
                    : j.Held.Begun ? 0
                    : 1
                )
                .ThenBy(j => j.Held?.Start ?? int.MaxValue)
                .ThenBy(j => j.Promised ?? int.MaxValue)
                .ThenBy(j => j.Hands),
        ];

    private static PlacedJob? Best(DayQuestion question, Room room, DayJob job)
    {
        PlacedJob? best = null;
        foreach (var technician in question.WhoCan(job))
            if (
                (job.Held is null || technician.Name == job.Held.Technician)
                && With(question, room, job, technician) is { } at
                && (best is null || at.Ready(job) < best.Ready(job))
            )
                best = at;
        return best;
    }

    private static PlacedJob? With(DayQuestion question, Room room, DayJob job, DayTechnician technician)
    {
        var from = Earliest(question, job);
        while (Soonest.Starts(job.Steps, room.Free(technician.Name), from, job.Held?.Start) is { } starts)
        {
            var placed = new PlacedJob(job.Id, technician.Name, job.Held?.Lift ?? "", starts);
            var stands = placed.Stands(job, question.Now);
            if (job.Held?.Lift is { } named && room.IsFree(named, stands))
                return placed;
            if (job.Held?.Lift is null && room.Lift(stands) is { } lift)
                return placed with { Lift = lift };
            if (job.Held is { Start: not null } or { Lift: not null })
                return placed with { Lift = job.Held.Lift ?? question.Lifts[0] };
            if (room.NextOff(starts[0]) is not { } off)
                return null;
            from = off;
        }
        return null;
    }
}
