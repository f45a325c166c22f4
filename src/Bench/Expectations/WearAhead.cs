using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Visits;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Expectations;

/// <summary>How far a wearing part goes, as far as its readings tell.</summary>
/// <param name="Point">The part.</param>
/// <param name="Limit">Short: <c>≥ 1.5 mm</c>.</param>
/// <param name="Forecast">What is to be expected, or why nobody can say.</param>
public sealed record WearAhead(Point Point, Sentence Limit, PointForecast Forecast);

/// <summary>Forecasts of the parts that were read in this job, from this job's readings and those of the visits before it.</summary>
internal static class WearsAhead
{
    public static IEnumerable<WearAhead> Of(JobState job, IReadOnlyList<JobState> before, Workbench bench)
    {
        var visits = before
            .Append(job)
            .Select(j => Visit.Of(j.Job, [.. j.Entries]))
            .OfType<Visit>()
            .OrderBy(v => v.Arrival.At, StringComparer.Ordinal)
            .ThenBy(v => v.Job, StringComparer.Ordinal)
            .ToList();
        var distances = MachineVisits.Distances([], job.Arrival!.Machine, visits);
        foreach (var point in job.Points)
            if (point is { Current: not null, Figure: { } figure } && PointHistory.IsDrawn(point.Point))
            {
                var forecast = PointForecast.Of(PointHistory.Of(point.Point, visits, bench), distances);
                if (forecast.Tells || Wears(figure))
                    yield return new(point.Point, figure.Short, forecast);
            }
    }

    /// <summary>Whatever has a least thickness or depth wears: pads, discs, tread. Of the rest nobody expects a forecast.</summary>
    private static bool Wears(Figure figure) => figure is { Kind: FigureKind.Min, Unit.Dimension: Dimension.Length };
}
