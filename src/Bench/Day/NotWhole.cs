using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Stock;

namespace Witnessmark.Bench.Day;

/// <summary>
/// A job whose kit is not whole, and nobody has said when the rest arrives: the plan gives it a place all the same, and says so.
/// </summary>
/// <param name="Job">The job.</param>
/// <param name="Words">What is lacking, in sentences.</param>
public sealed record NotWhole(string Job, Sentence Words)
{
    /// <summary>All such jobs, by number.</summary>
    /// <param name="bench">The workshop.</param>
    /// <param name="jobs">All jobs; those that are released, or not opened, are passed over.</param>
    /// <param name="shelf">What is there; null when nobody keeps count.</param>
    /// <param name="day">The day of the work: calibration is looked at for it.</param>
    public static IReadOnlyList<NotWhole> Of(Workbench bench, IEnumerable<JobState> jobs, Shelf? shelf, DateOnly day) =>
        [
            .. jobs.Where(j => j is { Arrival: not null, Release: null, Day.Parts: null })
                .OrderBy(j => j.Job, StringComparer.Ordinal)
                .Select(j => (j.Job, Lacks: Lacks(bench, j, shelf, day)))
                .Where(j => j.Lacks.Length > 0)
                .Select(j => new NotWhole(j.Job, j.Lacks)),
        ];

    private static Sentence Lacks(Workbench bench, JobState job, Shelf? shelf, DateOnly day) =>
        Sentence.List(
            Kit.Kit.For(DayOfJobs.StillOpen(job), job.Arrival!.Sheet, bench.Workshop, shelf, day, job.Job)
                .Shortages.Select(s => (Sentence)$"{s.Item}: {s.Why}"),
            " "
        );
}
