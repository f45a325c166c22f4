using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What was measured: limit, found, the rule, left at.</summary>
internal static class MeasuredTable
{
    private const double PointAt = 19;
    private const double LimitAt = 166;
    private const double FoundAt = 282;
    private const double RuleAt = 360;
    private const double LeftAt = 447;
    private const double Gutter = 8;

    public static void Write(Pages pages, JobState state)
    {
        var points = state.Points.Where(p => p.IsMeasured()).ToList();
        var origins = new SharedOrigins(points);
        var rows = points.Select(p => Row(p, origins)).ToList();
        if (rows.Count == 0)
            return;
        pages.Begin($"What we found and what we left it at", pages.HeightOf(rows[0]), Columns());
        foreach (var row in rows)
            pages.Row(row, 2);
        pages.End();
        origins.Write(pages);
    }

    private static IReadOnlyList<Cell> Columns() =>
        [
            Cell.Of(PointAt, LimitAt - PointAt, ($"Point", Typeface.Aside)),
            Cell.Of(LimitAt, FoundAt - LimitAt, ($"Limit", Typeface.Aside)),
            Cell.Of(FoundAt, RuleAt - FoundAt, ($"Found", Typeface.Aside)),
            Cell.Of(LeftAt, Pages.Width - LeftAt, ($"Left at", Typeface.Aside)),
        ];

    private static IReadOnlyList<Cell> Row(PointState point, SharedOrigins origins)
    {
        List<Cell> row =
        [
            SheetHead.Stripe(point.Stripe, 0),
            Cell.Of(
                PointAt,
                LimitAt - PointAt - Gutter,
                (Sentence.Of(point.Point.Title), Typeface.Strong),
                (PointWords.Done(point), Typeface.Aside)
            ),
            Cell.Of(
                LimitAt,
                FoundAt - LimitAt - Gutter,
                (Cell.Whole(PointWords.Limit(point)), Typeface.Body),
                (origins.Of(point), Typeface.Aside)
            ),
            Cell.Of(FoundAt, RuleAt - FoundAt - Gutter, (Cell.Whole(PointWords.Found(point)), Typeface.Body)),
            Cell.Of(
                LeftAt,
                Pages.Width - LeftAt,
                (Cell.Whole(PointWords.LeftAt(point)), Typeface.Strong),
                (PointWords.Remark(point), Typeface.Aside)
            ),
        ];
        if (RuleView.Of(point) is { } view)
            row.Add(Cell.Of(RuleAt, LeftAt - RuleAt - 8, RuleDrawing.Of(view, RuleSize.Row)));
        return row;
    }
}
