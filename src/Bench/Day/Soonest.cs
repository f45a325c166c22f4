namespace Witnessmark.Bench.Day;

/// <summary>The soonest way through a job's steps for one pair of hands.</summary>
public static class Soonest
{
    /// <summary>
    /// When each step begins, at the earliest; null when the free time does not suffice. Each step as early as it can be is
    /// best for all that follow it, so no other way is ready sooner.
    /// </summary>
    /// <param name="steps">In their order.</param>
    /// <param name="free">When the technician has time, in order.</param>
    /// <param name="from">Nothing begins before.</param>
    /// <param name="first">When the first step begins, wherever that lies; null: as soon as it can.</param>
    public static IReadOnlyList<int>? Starts(
        IReadOnlyList<DayStep> steps,
        IReadOnlyList<Span> free,
        int from,
        int? first = null
    )
    {
        var starts = new int[steps.Count];
        for (var i = 0; i < steps.Count; i++)
        {
            var start = i == 0 && first is { } given ? given : Start(steps[i].Hands, free, from);
            if (start is not { } at)
                return null;
            starts[i] = at;
            from = Math.Max(from, at + steps[i].Hands + steps[i].Waits);
        }
        return starts;
    }

    /// <summary>When a job would be ready if the shop and everybody's hands were free for it; null when never.</summary>
    public static int? Ready(DayJob job, IReadOnlyList<Span> free, int from) =>
        Starts(job.Steps, free, from) is { } starts ? starts[^1] + job.Steps[^1].Hands + job.Steps[^1].Waits : null;

    private static int? Start(int hands, IReadOnlyList<Span> free, int from)
    {
        foreach (var span in free)
            if (Math.Max(span.From, from) + hands <= span.To)
                return Math.Max(span.From, from);
        return null;
    }
}
