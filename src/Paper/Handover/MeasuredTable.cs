using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What was measured: limit, found, the rule, left at.</summary>
internal static class MeasuredTable
{
    private const double PointAt = 19;
    private const double LimitAt = 166;
    private const double FoundAt = 280;
    private const double RuleAt = 352;
    private const double LeftAt = 441;
    private const double Gutter = 8;

    public static void Write(Pages pages, JobState state)
    {
        var rows = state.Points.Where(p => p.IsMeasured()).Select(Row).ToList();
        if (rows.Count == 0)
            return;
        pages.Begin($"What we found and what we left it at", pages.HeightOf(rows[0]), Columns());
        foreach (var row in rows)
            pages.Row(row, 3.5);
        pages.End();
    }

    private static IReadOnlyList<Cell> Columns() =>
        [
            Cell.Of(PointAt, LimitAt - PointAt, ($"Point", Typeface.Aside)),
            Cell.Of(LimitAt, FoundAt - LimitAt, ($"Limit", Typeface.Aside)),
            Cell.Of(FoundAt, RuleAt - FoundAt, ($"Found", Typeface.Aside)),
            Cell.Of(LeftAt, Pages.Width - LeftAt, ($"Left at", Typeface.Aside)),
        ];

    private static IReadOnlyList<Cell> Row(PointState point)
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
                (PointWords.Origin(point), Typeface.Aside)
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
