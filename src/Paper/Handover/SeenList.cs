using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What was looked at or done without a limit to measure by: two columns, a line each.</summary>
internal static class SeenList
{
    private const double Second = Pages.Width / 2 + 6;
    private const double Column = Pages.Width / 2 - 6;

    public static void Write(Pages pages, JobState state)
    {
        var points = state.Points.Where(p => !p.IsMeasured() && !p.IsTightened()).ToList();
        if (points.Count == 0)
            return;
        pages.Begin($"Seen and done", 20);
        // Read down the left column first: that is bench order.
        var half = (points.Count + 1) / 2;
        for (var i = 0; i < half; i++)
            pages.Row([.. Cells(points[i], 0), .. i + half < points.Count ? Cells(points[i + half], Second) : []], 2.5);
        pages.End();
    }

    private static IEnumerable<Cell> Cells(PointState point, double x) =>
        [
            SheetHead.Stripe(point.Stripe, x),
            Cell.Of(
                x + 19,
                Column - 19,
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
