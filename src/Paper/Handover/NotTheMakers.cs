using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>Points that were judged by a figure of the workshop or of common practice, and who vouches for it where somebody's safety hangs on the point.</summary>
public static class NotTheMakers
{
    internal static Sentence Heading => $"Judged by neither maker, law nor standard";

    internal static void Write(Pages pages, JobState state) => LineList.Write(pages, Heading, Of(state));

    /// <summary>A sentence for each point of safety, and whether a name is missing in it; then one for all others.</summary>
    public static IEnumerable<(Sentence Line, bool Loud)> Of(JobState state)
    {
        var points = state.Points.Where(p => p is { Figure.Origin.Binding: false, Readings.Count: > 0 }).ToList();
        foreach (var point in points.Where(p => p.NeedsVouching))
            yield return ((Sentence)$"{By(point)}. {Who(point)}", point.Vouched is null);
        var others = points.Where(p => !p.NeedsVouching).ToList();
        if (others.Count > 0)
            yield return (
                (Sentence)$"No points of safety, nobody has to vouch: {Sentence.List(others.Select(By), "; ")}.",
                false
            );
    }

    private static Sentence By(PointState point) =>
        $"{point.Point.Title}: {PointWords.Limit(point)}, {PointWords.Origin(point)}";

    private static Sentence Who(PointState point) =>
        point.Vouched is { } vouched
            ? (Sentence)$"{vouched.Name} vouches for it."
            : (Sentence)$"Nobody has vouched for it.";
}
