using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Times;

namespace Witnessmark.Client.Jobs;

/// <summary>Points that follow one another in the same reach: the machine stays as it is.</summary>
public sealed record PointGroup(string Reach, IReadOnlyList<PointState> Points)
{
    /// <summary>Hands-on time of what is still to be done.</summary>
    public TimeSpan Left(PlanTimes times) =>
        Points.Where(IsOpen).Aggregate(TimeSpan.Zero, (sum, p) => sum + times.Hands(p.Point));

    public static IReadOnlyList<PointGroup> Of(IReadOnlyList<PointState> points)
    {
        List<PointGroup> groups = [];
        foreach (var point in points)
        {
            var reach =
                point.Point.Reach.Count == 0
                    ? JobWords.Anywhere
                    : JobWords.Capital(string.Join(", ", point.Point.Reach.Select(r => Known(r))));
            if (groups.Count > 0 && groups[^1].Reach == reach)
                groups[^1] = groups[^1] with { Points = [.. groups[^1].Points, point] };
            else
                groups.Add(new(reach, [point]));
        }
        return groups;
    }

    public static bool IsOpen(PointState point) => point.Marked is null && point.Left is null;
}
