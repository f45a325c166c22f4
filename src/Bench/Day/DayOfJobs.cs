using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Times;

namespace Witnessmark.Bench.Day;

/// <summary>The question that a shop's open jobs put to the day.</summary>
public static class DayOfJobs
{
    /// <summary>The question; or, when the shop does not say enough for one, what is missing.</summary>
    /// <param name="bench">The workshop.</param>
    /// <param name="jobs">All jobs; those that are released, or not opened, are passed over.</param>
    /// <param name="now">By the shop's clock.</param>
    /// <param name="learnt">How long work has been seen to take here, or null: the book's times.</param>
    public static (DayQuestion? Question, Sentence? Missing) Of(
        Workbench bench,
        IEnumerable<JobState> jobs,
        DateTime now,
        LearntTimes? learnt = null
    )
    {
        if (Frame(bench, now) is not { } frame)
            return (null, $"The workshop file says no opening hours. They stand under [hours] in shop.toml.");
        var open = jobs.Where(j => j is { Arrival: not null, Release: null })
            .OrderBy(j => j.Job, StringComparer.Ordinal)
            .ToList();
        var inHand = open.Select(j => (j.Job, Last: LastWork(j)))
            .Where(j => j.Last is not null)
            .GroupBy(j => j.Last!.By)
            .Select(of => of.MaxBy(j => j.Last!.At, StringComparer.Ordinal).Job)
            .ToHashSet(StringComparer.Ordinal);
        var asked = open.Select(j => Job(j, frame, bench, learnt, inHand.Contains(j.Job)))
            .Where(j => j.Steps.Count > 0);
        return (frame with { Jobs = [.. asked] }, null);
    }

    /// <summary>Hours, technicians and lifts without any job; null when the shop says no hours.</summary>
    public static DayQuestion? Frame(Workbench bench, DateTime now)
    {
        var (shop, today) = (bench.Workshop, DateOnly.FromDateTime(now));
        if (shop.Hours is not { } hours)
            return null;
        var open = hours.From(today);
        return new(
            now.Date,
            (int)now.TimeOfDay.TotalMinutes,
            open,
            [
                .. shop.Technicians.Select(t => new DayTechnician(
                    t.Name,
                    t.Skills,
                    t.Hours is null ? open : Spans.Common(open, t.Hours.From(today))
                )),
            ],
            shop.Lifts,
            []
        );
    }

    private static DayJob Job(JobState job, DayQuestion frame, Workbench bench, LearntTimes? learnt, bool inHand)
    {
        var points = StillOpen(job);
        var held = Held(job, frame, inHand);
        return new(
            job.Job,
            job.Arrival!.Machine.Name,
            JobWork.Of(points, bench.Book, new(learnt, held?.Technician)),
            job.Day.Promise is { } promise ? frame.Minute(promise.At) : null,
            job.Day.Parts is { } parts ? frame.Minute(parts.Arrive) : null,
            JobWork.Skills(points),
            held
        );
    }

    /// <summary>The points that are neither marked nor left, in the order of the plan.</summary>
    internal static IReadOnlyList<Book.Point> StillOpen(JobState job) =>
        [.. job.Points.Where(p => p.Marked is null && p.Left is null).Select(p => p.Point)];

    /// <summary>Whoever worked on it last goes on with it. A place by hand whose moment passed without work holds the technician only.</summary>
    private static Held? Held(JobState job, DayQuestion frame, bool inHand)
    {
        var known = frame.Technicians.FirstOrDefault(t => t.Name == LastWork(job)?.By);
        if (known is not null)
            return new(
                known.Name,
                inHand && known.Hours.Any(h => h.From <= frame.Now && frame.Now < h.To) ? frame.Now : null,
                Begun: true
            );
        return job.Day.Placed is { } placed
            ? new(placed.Technician, frame.Minute(placed.Start) is var at && at >= frame.Now ? at : null)
            : null;
    }

    private static Record.Entry? LastWork(JobState job) =>
        job
            .Points.SelectMany(p =>
                (Record.Entry?[])[.. p.Readings.Select(r => r.Entry), .. p.Corrections.Select(c => c.Entry), p.Marked]
            )
            .OfType<Record.Entry>()
            .MaxBy(e => e.At, StringComparer.Ordinal);
}
