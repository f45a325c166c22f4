namespace Witnessmark.Bench.Day;

/// <summary>A job that no plan has a place for.</summary>
/// <param name="Job">Its number.</param>
/// <param name="Words">Why, and what would help.</param>
public sealed record NoPlace(string Job, Sentence Words);

/// <summary>What cannot be planned at all is said by name, and the rest is planned without it.</summary>
public static class Plannable
{
    /// <summary>The longest step that is believed.</summary>
    public const int MostHands = 1440;

    /// <summary>The longest wait that is believed: paint that hardens over a week.</summary>
    public const int MostWaits = 7 * 1440;

    /// <summary>The question without the jobs that have no place, and why they have none.</summary>
    public static (DayQuestion Question, IReadOnlyList<NoPlace> Without) Of(DayQuestion question)
    {
        List<NoPlace> without = [];
        foreach (var job in question.Jobs)
            if (Why(question, job) is { } words)
                without.Add(new(job.Id, words));
        return (question with { Jobs = [.. question.Jobs.Where(j => without.All(w => w.Job != j.Id))] }, without);
    }

    private static Sentence? Why(DayQuestion question, DayJob job)
    {
        if (question.Lifts.Count == 0)
            return $"The shop has no lift. The workshop file names them under [lifts].";
        if (job.Steps.Count == 0)
            return $"No work is left in it.";
        foreach (var step in job.Steps)
            if (step.Hands is < 1 or > MostHands)
                return $"\"{step.What}\" has {step.Hands} min of hands-on work; 1 to 1440 min is allowed.";
            else if (step.Waits is < 0 or > MostWaits)
                return $"\"{step.What}\" waits for {step.Waits} min; 0 min to 7 days is allowed.";
        return Nobody(question, job);
    }

    private static Sentence? Nobody(DayQuestion question, DayJob job)
    {
        if (job.Held is { } held && question.Technicians.All(t => t.Name != held.Technician))
            return $"It is held by \"{held.Technician}\", who is no technician of this shop.";
        var whoCan = question.WhoCan(job).ToList();
        if (whoCan.Count == 0)
            return $"Nobody in the shop has the skill {Sentence.List(job.Skills, " + ")}.";
        var longest = job.Steps.MaxBy(s => s.Hands)!;
        if (whoCan.All(t => t.Hours.All(h => h.Length < longest.Hands)))
            return $"\"{longest.What}\" takes {ShopTime.Length(longest.Hands)} in one piece; nobody who can do it is there as long without a break.";
        var earliest = FirstPlan.Earliest(question, job);
        return job.Held?.Start is null && whoCan.All(t => Soonest.Ready(job, t.Hours, earliest) is null)
            ? (Sentence)$"It does not fit into the {Hours.MostDays} days that a plan looks ahead."
            : null;
    }
}
