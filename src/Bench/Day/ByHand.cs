namespace Witnessmark.Bench.Day;

/// <summary>Moves a job by hand. Its steps follow each other as the technician's hours let them; whether that breaks a rule, the rules say.</summary>
public static class ByHand
{
    /// <summary>How far one tap moves a job.</summary>
    public const int Step = 15;

    /// <summary>A job with another technician, from another moment on; on its lift when that is free, else on one that is.</summary>
    public static PlacedJob Move(DayQuestion question, DayPlan plan, DayJob job, string technician, int start)
    {
        var hours = question.Technicians.FirstOrDefault(t => t.Name == technician)?.Hours ?? [];
        var starts =
            Soonest.Starts(job.Steps, hours, start, start) ?? Soonest.Starts(job.Steps, [new(0, int.MaxValue)], start)!;
        var was = plan.Of(job.Id);
        var moved = new PlacedJob(job.Id, technician, was?.Lift ?? question.Lifts[0], starts);
        var lift = new Room(question, plan, job).Lift(moved.Stands(job, question.Now), moved.Lift);
        return lift is null ? moved : moved with { Lift = lift };
    }

    /// <summary>
    /// The plan as the jobs are now: what is no longer open is gone, work that was done meanwhile is taken off, and a job that the
    /// plan does not know yet comes where it is ready soonest. What was placed by hand stands where the hand put it.
    /// </summary>
    public static DayPlan UpToDate(DayQuestion question, DayPlan plan)
    {
        var now = new DayPlan([]);
        foreach (var job in question.Jobs)
            if (job.Held is { Start: { } start, Begun: false } held)
                now = now.With(Move(question, plan, job, held.Technician, start));
            else if (plan.Of(job.Id) is { } at)
                now = now.With(
                    at.Starts.Count == job.Steps.Count
                        ? at
                        : Move(question, plan, job, at.Technician, Math.Max(at.Starts[0], question.Now))
                );
        foreach (var job in question.Jobs.Where(j => now.Of(j.Id) is null))
            if (FirstPlan.Best(question, now, job) is { } placed)
                now = now.With(placed);
        return now;
    }
}
