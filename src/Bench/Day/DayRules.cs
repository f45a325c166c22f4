namespace Witnessmark.Bench.Day;

/// <summary>Where a plan breaks a rule.</summary>
/// <param name="Job">The job that is to be moved.</param>
/// <param name="Words">Which rule, in a sentence.</param>
public sealed record Breach(string Job, Sentence Words);

/// <summary>The rules of a day plan, whoever made it: solver or hand.</summary>
public static class DayRules
{
    /// <summary>Every breach of a plan; empty: it can be worked.</summary>
    public static IReadOnlyList<Breach> Broken(DayQuestion question, DayPlan plan)
    {
        List<Breach> breaches = [];
        var placed = question
            .Jobs.Select(j => (Job: j, At: plan.Of(j.Id)))
            .Where(p => p.At is not null && p.At.Starts.Count == p.Job.Steps.Count)
            .Select(p => (p.Job, At: p.At!))
            .OrderBy(p => p.At.Starts[0])
            .ToList();
        foreach (var (job, at) in placed)
            breaches.AddRange(Alone(question, job, at).Select(words => new Breach(job.Id, words)));
        for (var later = 0; later < placed.Count; later++)
        for (var earlier = 0; earlier < later; earlier++)
            if (Together(question, placed[earlier], placed[later]) is { } words)
                breaches.Add(new(placed[later].Job.Id, words));
        return breaches;
    }

    private static IEnumerable<Sentence> Alone(DayQuestion question, DayJob job, PlacedJob at)
    {
        var technician = question.Technicians.FirstOrDefault(t => t.Name == at.Technician);
        if (technician is null)
            yield return $"\"{at.Technician}\" is no technician of this shop.";
        else if (!technician.Can(job))
            yield return $"{at.Technician} lacks the skill {string.Join(", ", job.Skills.Except(technician.Skills ?? []))}.";
        if (!question.Lifts.Contains(at.Lift))
            yield return $"\"{at.Lift}\" is no lift of this shop.";
        if (
            technician is not null
            && at.Hands(job).Where(h => !Inside(h, technician, job, at)).ToList() is [var away, ..]
        )
            yield return $"{at.Technician} is not there all the time from {question.Say(away.From)} to {question.Say(away.To)}.";
        for (var i = 1; i < at.Starts.Count; i++)
            if (at.Starts[i] < at.Starts[i - 1] + job.Steps[i - 1].Hands + job.Steps[i - 1].Waits)
                yield return $"\"{job.Steps[i].What}\" begins before \"{job.Steps[i - 1].What}\" is over.";
        foreach (var words in Beginning(question, job, at))
            yield return words;
    }

    private static IEnumerable<Sentence> Beginning(DayQuestion question, DayJob job, PlacedJob at)
    {
        if (job.Held is { Begun: true } begun)
        {
            if (begun.Technician != at.Technician || (begun.Lift is { } lift && lift != at.Lift))
                yield return $"It has been begun by {begun.Technician}{On(begun.Lift)} and is not moved.";
            if (begun.Start is { } start && start != at.Starts[0])
                yield return $"It was begun at {question.Say(start)} and is not moved.";
            if (begun.Start is not null)
                yield break;
        }
        if (job.Parts is { } parts && at.Starts[0] < parts)
            yield return $"It begins before its parts arrive at {question.Say(parts)}.";
        if (at.Starts[0] < question.Now)
            yield return $"It begins at {question.Say(at.Starts[0])}, which has passed.";
    }

    // what was begun before opening, or before this plan, is not asked for its hours again
    private static bool Inside(Span hands, DayTechnician technician, DayJob job, PlacedJob at) =>
        technician.Hours.Any(h => h.From <= hands.From && hands.To <= h.To)
        || (job.Held is { Begun: true, Start: { } start } && hands.From == start && start == at.Starts[0]);

    private static Sentence On(string? lift) => lift is null ? Sentence.Empty : (Sentence)$" on {lift}";

    private static Sentence? Together(
        DayQuestion question,
        (DayJob Job, PlacedJob At) earlier,
        (DayJob Job, PlacedJob At) later
    )
    {
        if (earlier.At.Technician == later.At.Technician)
            foreach (var one in earlier.At.Hands(earlier.Job))
            foreach (var other in later.At.Hands(later.Job))
                if (one.Meets(other))
                    return $"{later.At.Technician} is at {earlier.Job.Title} ({earlier.Job.Id}) from {question.Say(one.From)} to {question.Say(one.To)}.";
        var stands = earlier.At.Stands(earlier.Job, question.Now);
        return earlier.At.Lift == later.At.Lift && stands.Meets(later.At.Stands(later.Job, question.Now))
            ? (Sentence)
                $"{earlier.Job.Title} ({earlier.Job.Id}) stands on {later.At.Lift} until {question.Say(stands.To)}."
            : null;
    }
}
