namespace Witnessmark.Bench.Day;

/// <summary>What a plan leaves free: everybody's hands, and every lift.</summary>
internal sealed class Room
{
    private readonly DayQuestion question;
    private readonly Dictionary<string, IReadOnlyList<Span>> free;
    private readonly Dictionary<string, List<Span>> lifts;

    /// <param name="question">The question.</param>
    /// <param name="plan">What is placed already.</param>
    /// <param name="without">A job whose own place counts as free, or null.</param>
    public Room(DayQuestion question, DayPlan plan, DayJob? without = null)
    {
        this.question = question;
        free = question.Technicians.ToDictionary(t => t.Name, t => t.Hours);
        lifts = question.Lifts.ToDictionary(l => l, _ => new List<Span>());
        foreach (var job in question.Jobs.Where(j => j.Id != without?.Id))
            if (plan.Of(job.Id) is { } at && at.Starts.Count == job.Steps.Count)
                Take(job, at);
    }

    /// <summary>When a technician has time, in order.</summary>
    public IReadOnlyList<Span> Free(string technician) => free[technician];

    /// <summary>A lift that is free all the time, the wanted one if it can be; null when none is.</summary>
    public string? Lift(Span stands, string? wanted = null) =>
        wanted is not null && IsFree(wanted, stands) ? wanted : question.Lifts.FirstOrDefault(l => IsFree(l, stands));

    /// <summary>Whether a lift is free all the time.</summary>
    public bool IsFree(string lift, Span stands) =>
        lifts.TryGetValue(lift, out var taken) && !taken.Exists(stands.Meets);

    /// <summary>When the next machine leaves its lift; null when none does.</summary>
    public int? NextOff(int after)
    {
        int? next = null;
        foreach (var taken in lifts.Values)
        foreach (var span in taken)
            if (span.To > after && !(next <= span.To))
                next = span.To;
        return next;
    }

    /// <summary>Takes what a placed job needs.</summary>
    public void Take(DayJob job, PlacedJob at)
    {
        if (free.TryGetValue(at.Technician, out var hours))
            free[at.Technician] = Spans.Without(hours, at.Hands(job));
        if (lifts.TryGetValue(at.Lift, out var taken))
            taken.Add(at.Stands(job, question.Now));
    }
}
