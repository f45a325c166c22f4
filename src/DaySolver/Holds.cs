using Witnessmark.Bench.Day;
using Witnessmark.Handbook.Languages;

namespace Witnessmark.DaySolver;

/// <summary>
/// What a hand has placed is kept where the rules let it. What cannot be kept beside what was begun, or beside what was placed
/// before it, is said and left to the plan; the technician stays.
/// </summary>
internal static class Holds
{
    public static (DayQuestion Kept, IReadOnlyList<Breach> Loosened) Kept(DayQuestion question)
    {
        List<Breach> loosened = [];
        var kept = question with { Jobs = [.. question.Jobs.Where(j => !Fast(j))] };
        foreach (var job in question.Jobs.Where(Fast).OrderBy(Order))
        {
            var with = kept with { Jobs = [.. kept.Jobs, job] };
            if (Broken(with, job) is { } words)
            {
                loosened.Add(new(job.Id, words));
                with = kept with { Jobs = [.. kept.Jobs, job with { Held = Loose(job.Held!) }] };
            }
            kept = with;
        }
        return (kept, loosened);
    }

    private static bool Fast(DayJob job) => job.Held is { Start: not null } or { Begun: true, Lift: not null };

    private static int Order(DayJob job) => job.Held!.Begun ? int.MinValue : job.Held.Start!.Value;

    /// <summary>Whether those that stand fast can all be worked when the job is one of them.</summary>
    private static Sentence? Broken(DayQuestion question, DayJob job)
    {
        var fast = question with { Jobs = [.. question.Jobs.Where(Fast)] };
        return DayRules.Broken(fast, FirstPlan.Of(fast)).FirstOrDefault() is { } breach
            ? breach.Job == job.Id
                ? breach.Words
                : (Sentence)$"With it, {breach.Job} could not be kept: {breach.Words}"
            : null;
    }

    private static Held Loose(Held held) => held with { Start = null, Lift = null };
}
