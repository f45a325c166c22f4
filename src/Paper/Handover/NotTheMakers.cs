using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>Points that were judged by a figure of the workshop or of common practice, and who vouches for it where somebody's safety hangs on the point.</summary>
public static class NotTheMakers
{
    internal static Sentence Heading => $"Judged by a figure that is not the maker's, the law's or a standard's";

    internal static void Write(Pages pages, JobState state) => LineList.Write(pages, Heading, Of(state));

    /// <summary>A sentence for each point, safety first, and whether a name is missing in it.</summary>
    public static IEnumerable<(Sentence Line, bool Loud)> Of(JobState state) =>
        state
            .Points.Where(p => p is { Figure.Origin.Binding: false, Readings.Count: > 0 })
            .OrderByDescending(p => p.NeedsVouching)
            .Select(p =>
                ((Sentence)$"{p.Point.Title}: {PointWords.Limit(p)}, {PointWords.Origin(p)}. {Who(p)}", IsMissing(p))
            );

    private static Sentence Who(PointState point) =>
        !point.NeedsVouching ? (Sentence)$"No safety point; nobody has to vouch for it."
        : point.Vouched is { } vouched ? (Sentence)$"{vouched.Name} vouches for it."
        : (Sentence)$"Nobody has vouched for it.";

    private static bool IsMissing(PointState point) => point is { NeedsVouching: true, Vouched: null };
}
