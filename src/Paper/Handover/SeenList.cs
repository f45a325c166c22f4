using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What was looked at or done without a limit to measure by: in two columns.</summary>
internal static class SeenList
{
    public static void Write(Pages pages, JobState state)
    {
        var points = state.Points.Where(p => !p.IsMeasured() && !p.IsTightened()).ToList();
        if (points.Count == 0)
            return;
        pages.Begin($"Seen and done", 14);
        pages.InColumns([.. points.Select(Cells)]);
        pages.End();
    }

    private static IReadOnlyList<Cell> Cells(PointState point) =>
        [
            SheetHead.Stripe(point.Stripe, 0),
            Cell.RunIn(
                19,
                Pages.ColumnWidth - 19,
                (Sentence.Of(point.Point.Title), Typeface.Strong),
                (Said(point), Typeface.Aside)
            ),
        ];

    internal static Sentence Said(PointState point)
    {
        Sentence?[] parts =
        [
            What(point),
            PointWords.Remark(point),
            point.Figure is null ? null : (Sentence)$"limit {PointWords.Limit(point)}, {PointWords.Origin(point)}",
            .. point.Corrections.Select(c => c.Words),
        ];
        return Sentence.List(parts.OfType<Sentence>().Where(p => p.Length > 0), "; ");
    }

    /// <summary>Things seen and right are one word; anything else is written out.</summary>
    private static Sentence What(PointState point) =>
        point.Point.Reading.Kind is ReadingKind.Seen && point.Current?.Raw.All(r => r == "yes") == true
            ? point.Point.Reading.Places is { Count: > 0 } things
                ? Sentence.List(things)
                : (Sentence)$"seen, right"
            : PointWords.LeftAt(point);
}
