using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Planning;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Expectations;

/// <summary>What whoever rides the machine away has to expect: the next work, how far wearing parts go, and what follows from this job's work.</summary>
/// <param name="Services">The schedule's work, the first due first; empty when the sheet has no schedule.</param>
/// <param name="Odometer">Unit in which the odometer was read, else kilometres.</param>
/// <param name="NotReadSince">The day of the distance that is counted from, where this job read none; null when it did, or none is known.</param>
/// <param name="Wear">What the readings of wearing parts say, in the order of the job.</param>
/// <param name="Cautions">What follows from the work that was done.</param>
public sealed record Outlook(
    IReadOnlyList<ServiceAhead> Services,
    Unit Odometer,
    DateOnly? NotReadSince,
    IReadOnlyList<WearAhead> Wear,
    IReadOnlyList<WorkCaution> Cautions
)
{
    /// <summary>Of a job that was opened; a job without arrival expects nothing.</summary>
    /// <param name="job">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="earlier">The machine's jobs before it, in any order; those of other machines are passed over.</param>
    public static Outlook Of(JobState job, Workbench bench, IEnumerable<JobState> earlier)
    {
        if (job.Arrival is not { } arrival || PastVisit.Of(job) is not { } today)
            return new([], UnitTable.Named("km"), null, [], [.. WorkCautions.Of(job)]);
        var before = earlier.Where(j => j.Job != job.Job && IsOf(arrival.Machine, j)).ToList();
        var asked = new PlanQuestion(arrival.Purpose, arrival.Sheet, arrival.Machine, today.Day)
        {
            Kilometres = today.Kilometres,
            Visits = [.. before.Select(PastVisit.Of).OfType<PastVisit>(), today],
        };
        return new(
            ServicesAhead.Of(asked, bench.Book),
            Distances.UnitIn(job),
            today.Kilometres is null && DistanceToday.Of(asked).Known is [.., var last] ? last.Day : null,
            [.. WearsAhead.Of(job, before, bench)],
            [.. WorkCautions.Of(job)]
        );
    }

    private static bool IsOf(Machine machine, JobState job) =>
        job.Arrival?.Machine is { } other
        && (other.Id == machine.Id || (machine.Vin.Length > 0 && other.Vin == machine.Vin));
}
