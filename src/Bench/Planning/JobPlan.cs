using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.Planning;

/// <summary>What a job has in its plan and what is asked for besides: the job's own decisions stand above every proposal.</summary>
public static class JobPlan
{
    /// <summary>All lines: those of the job with what else asks for them, and those that are proposed; none that was dropped.</summary>
    public static IReadOnlyList<PlanLine> Of(JobState job, IReadOnlyList<PlanLine> proposed, BenchBook book)
    {
        var lines = proposed.Where(l => !IsDropped(job, l)).ToDictionary(l => l.Point.Id);
        foreach (var point in job.Points)
            if (!lines.TryGetValue(point.Point.Id, out var line))
                lines[point.Point.Id] = new(point.Point, [new(Because.Purpose, Sentence.Of(point.Why))]);
            else if (
                line.Reasons.All(r => r.Because != Because.Purpose)
                && !line.Why.ToString().Contains(point.Why, StringComparison.Ordinal)
            )
                lines[point.Point.Id] = line with
                {
                    Reasons = [.. line.Reasons, new(Because.Purpose, Sentence.Of(point.Why))],
                };
        return [.. BaseOrder.Of(lines.Keys, job.Arrival?.Purpose ?? "", book).Select(id => lines[id])];
    }

    /// <summary>What is asked for and the job does not have: what was found since, or could not be known at its arrival.</summary>
    public static IReadOnlyList<PlanLine> Asked(JobState job, IReadOnlyList<PlanLine> proposed) =>
        [.. proposed.Where(l => !IsDropped(job, l) && job.Points.All(p => p.Point.Id != l.Point.Id))];

    private static bool IsDropped(JobState job, PlanLine line) => job.Dropped.Any(d => d.Point.Id == line.Point.Id);
}
