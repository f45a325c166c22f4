using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Times;

/// <summary>The times to plan with: the book's, and where work has shown others, those, to the whole minute.</summary>
/// <param name="learnt">What work has shown, or null.</param>
/// <param name="technician">Who will do it, or null when anybody may.</param>
public sealed class PlanTimes(LearntTimes? learnt, string? technician)
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    /// <summary>Nothing but the book's.</summary>
    public static PlanTimes ByTheBook { get; } = new(null, null);

    /// <summary>Hands-on time.</summary>
    public TimeSpan Hands(Point point) =>
        learnt?.Has(point.Id) == true ? Whole(learnt.Hands(point.Id, technician)) : point.Hands;

    /// <summary>Unattended time afterwards. A timer runs for the book's time all the same: impatience does not shorten a draining sump.</summary>
    public TimeSpan Waits(Point point) => learnt?.Has(point.Id) == true ? Whole(learnt.Waits(point.Id)) : point.Waits;

    // the book's stands as it is written; nothing that was timed takes no time
    private static TimeSpan Whole(PlannedTime planned) =>
        planned.Doings == 0
            ? planned.Time
            : TimeSpan.FromMinutes(Math.Max(Minute.TotalMinutes, Math.Round(planned.Time.TotalMinutes)));
}
