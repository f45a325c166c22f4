using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Stock;

namespace Witnessmark.Bench.Day;

/// <summary>
/// A job whose kit is not whole, and nobody has said when the rest arrives: the plan gives it a place all the same, and says so.
/// </summary>
/// <param name="Job">The job.</param>
/// <param name="Lacks">What is lacking, a part each.</param>
public sealed record NotWhole(string Job, IReadOnlyList<Sentence> Lacks)
{
    /// <summary>All of it in one line.</summary>
    public Sentence Words => Sentence.List(Lacks, " ");

    /// <summary>All such jobs, by number.</summary>
    /// <param name="bench">The workshop.</param>
    /// <param name="jobs">All jobs; those that are released, or not opened, are passed over.</param>
    /// <param name="shelf">What is there; null when nobody keeps count.</param>
    /// <param name="day">The day of the work: calibration is looked at for it.</param>
    public static IReadOnlyList<NotWhole> Of(Workbench bench, IEnumerable<JobState> jobs, Shelf? shelf, DateOnly day) =>
        [
            .. jobs.Where(j => j is { Arrival: not null, Release: null, Day.Parts: null })
                .OrderBy(j => j.Job, StringComparer.Ordinal)
                .Select(j => new NotWhole(j.Job, LackingAt(bench, j, shelf, day)))
                .Where(j => j.Lacks.Count > 0),
        ];

    private static IReadOnlyList<Sentence> LackingAt(Workbench bench, JobState job, Shelf? shelf, DateOnly day) =>
        [
            .. Kit
                .Kit.For(DayOfJobs.StillOpen(job), job.Arrival!.Sheet, bench.Workshop, shelf, day, job.Job)
                .Shortages.Select(s => (Sentence)$"{s.Item}: {s.Why}"),
        ];
}
