using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>Points that a second person read again without being shown the first reading, with what both read and whether they agree.</summary>
public static class SecondCheckList
{
    internal static Sentence Heading => $"Read again by a second person, who had not been shown the first reading";

    internal static void Write(Pages pages, JobState state) => LineList.Write(pages, Heading, Of(state));

    /// <summary>A sentence for each point that was read, and whether something is missing in it.</summary>
    public static IEnumerable<(Sentence Line, bool Loud)> Of(JobState state) =>
        state
            .Points.Where(p => p is { Second: not null, Readings.Count: > 0, Left: null })
            .Select(p => (Line(p), p.Second is not { Agrees: true }));

    private static Sentence Line(PointState point) =>
        point.Second is { First: { } first, Second: { } second, Agreement: { } agreement }
            ? (Sentence)
                $"{point.Point.Title}: {first.Entry.By} read {PointWords.Said(first)}, {second.Entry.By} read {PointWords.Said(second)}: {agreement.Words}."
            : (Sentence)$"{point.Point.Title}: a second person has still to read it.";
}
