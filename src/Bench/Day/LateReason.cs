namespace Witnessmark.Bench.Day;

/// <summary>Why a promise is missed.</summary>
public enum Late
{
    /// <summary>The promised moment had passed before the plan began.</summary>
    Passed,

    /// <summary>Its own work is longer than the time left, with parts and every hand at once.</summary>
    Work,

    /// <summary>With its parts there in time it could be ready.</summary>
    Parts,

    /// <summary>Nobody who can do it is there in time.</summary>
    Skill,

    /// <summary>With one lift more it could be ready.</summary>
    Lifts,

    /// <summary>Those who can do it are at other machines.</summary>
    Hands,

    /// <summary>It could be ready in time as the others lie; only this plan puts it later.</summary>
    Placed,
}

/// <summary>A missed promise with its reason.</summary>
/// <param name="Job">The job.</param>
/// <param name="Minutes">By how much.</param>
/// <param name="Why">Which of the reasons.</param>
/// <param name="Words">In a sentence.</param>
public sealed record MissedPromise(string Job, int Minutes, Late Why, Sentence Words);

/// <summary>
/// Names the reason of each missed promise: the first of these that alone is enough. What is asked of each is the soonest that
/// the job could be ready if nothing else stood in its way.
/// </summary>
public static class LateReason
{
    /// <summary>The missed promises of a plan, the latest first.</summary>
    public static IReadOnlyList<MissedPromise> Of(DayQuestion question, DayPlan plan) =>
        [
            .. question
                .Jobs.Select(j => plan.Of(j.Id) is { } at && at.Late(j) > 0 ? Of(question, plan, j, at) : null)
                .OfType<MissedPromise>()
                .OrderByDescending(m => m.Minutes),
        ];

    private static MissedPromise Of(DayQuestion question, DayPlan plan, DayJob job, PlacedJob at)
    {
        var promised = job.Promised!.Value;
        var (why, words) = Reason(question, plan, job, promised);
        return new(job.Id, at.Late(job), why, words);
    }

    private static (Late, Sentence) Reason(DayQuestion question, DayPlan plan, DayJob job, int promised)
    {
        var whoCan = question.WhoCan(job).ToList();
        var room = new Room(question, plan, job);
        if (promised <= question.Now)
            return (Late.Passed, $"It was promised for {question.Say(promised)}, which has passed.");
        if (Misses(Soonest.Ready(job, question.Open, question.Now)))
            return (
                Late.Work,
                $"The work takes longer than the time left: {Work(job)} from {question.Say(question.Now)} on."
            );
        var earliest = FirstPlan.Earliest(question, job);
        if (Misses(Soonest.Ready(job, question.Open, earliest)))
            return (
                Late.Parts,
                $"Its parts arrive too late: at {question.Say(earliest)}, and {Work(job)} of work follow."
            );
        if (Misses(Of(whoCan.Select(t => Soonest.Ready(job, t.Hours, earliest)))))
            return (
                Late.Skill,
                $"Nobody who can do it{Skill(job)} is there long enough before {question.Say(promised)}."
            );
        if (FirstPlan.Best(question, plan, job)?.Ready(job) <= promised)
            return (Late.Placed, $"It could be ready in time where the others leave room.");
        if (!Misses(Of(whoCan.Select(t => Soonest.Ready(job, room.Free(t.Name), earliest)))))
            return (Late.Lifts, $"All lifts are taken{UntilLift(question, plan, job)}.");
        return (
            Late.Hands,
            whoCan.Count == 1
                ? (Sentence)$"{Names(whoCan)} is at other machines too long before {question.Say(promised)}."
                : (Sentence)$"{Names(whoCan)} are at other machines too long before {question.Say(promised)}."
        );

        bool Misses(int? ready) => ready is null || ready > promised;
    }

    private static int? Of(IEnumerable<int?> ready) => ready.Min();

    private static Sentence Work(DayJob job) => ShopTime.Length(job.Hands + job.Waits);

    private static Sentence Skill(DayJob job) =>
        job.Skills.Count == 0 ? Sentence.Empty : (Sentence)$" ({string.Join(", ", job.Skills)})";

    private static Sentence UntilLift(DayQuestion question, DayPlan plan, DayJob job)
    {
        var starts = plan.Of(job.Id)!.Starts[0];
        return starts > question.Now ? (Sentence)$" until {question.Say(starts)}" : Sentence.Empty;
    }

    private static Sentence Names(IReadOnlyList<DayTechnician> who) =>
        who switch
        {
            [var one] => Sentence.Of(one.Name),
            [var one, var other] => $"{one.Name} and {other.Name}",
            [var one, var other, var third] => $"{one.Name} and {other.Name} and {third.Name}",
            _ => $"All who can do it",
        };
}
