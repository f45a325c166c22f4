using System.Globalization;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Client.Machines;

/// <summary>What the jobs on this device say of one machine over time.</summary>
internal static class MachineVisits
{
    private const string DistancePoint = "distance";

    /// <summary>Its jobs, oldest first.</summary>
    public static IReadOnlyList<JobState> Of(Machine machine, IEnumerable<JobState> jobs) =>
        [.. jobs.Where(j => j.Arrival?.Machine.Id == machine.Id).OrderBy(j => j.Arrival!.At, StringComparer.Ordinal)];

    /// <summary>The distance of the shop's file and those read in its jobs.</summary>
    public static IReadOnlyList<DistanceSeen> Distances(Machine machine, IEnumerable<JobState> visits)
    {
        List<DistanceOnDay> all = [];
        if (machine is { LastDistanceKilometres: { } last, LastDistanceOn: { } on })
            all.Add(new(on, last));
        foreach (var visit in visits)
            if (Day(visit.Arrival!.At) is { } day && Kilometres(visit) is { } read)
                all.Add(new(day, read));
        return DistanceHistory.Of(all);
    }

    /// <summary>What the odometer showed in a job; null when it was not read.</summary>
    public static double? Kilometres(JobState visit) =>
        visit.Points.FirstOrDefault(p => p.Point.Id == DistancePoint)?.Readings is { Count: > 0 } readings
            ? RawValue.In(readings[^1].Raw[0], UnitTable.Named("km"), out _)
            : null;

    /// <summary>Every point that was measured, with its readings over the visits.</summary>
    public static IReadOnlyList<PointOverTime> Points(IReadOnlyList<JobState> visits) =>
        [
            .. visits
                .SelectMany(v => v.Points.SelectMany(p => p.Readings, (p, r) => (Visit: v, Point: p, Reading: r)))
                .Where(x => x.Reading.Opinion.Value is not null && x.Point.Point.Id != DistancePoint)
                .GroupBy(x => x.Point.Point.Id)
                .Select(g => new PointOverTime(
                    g.Last().Point.Point.Title,
                    g.Last().Point.Figure,
                    [
                        .. g.Select(x => new ReadingOverTime(
                            x.Reading.Entry.At[..Math.Min(10, x.Reading.Entry.At.Length)],
                            Kilometres(x.Visit),
                            x.Reading.Opinion
                        )),
                    ]
                )),
        ];

    private static DateOnly? Day(string at) =>
        at.Length >= 10
        && DateOnly.TryParseExact(at[..10], "yyyy-MM-dd", CultureInfo.InvariantCulture, default, out var day)
            ? day
            : null;
}

/// <summary>One point over the visits, its figure as it is in the latest.</summary>
internal sealed record PointOverTime(string Title, Figure? Figure, IReadOnlyList<ReadingOverTime> Readings);

/// <summary>One reading: the day, the distance of its visit, the verdict.</summary>
internal sealed record ReadingOverTime(string Day, double? Kilometres, Opinion Opinion);
