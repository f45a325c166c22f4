using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>Fasteners: the torque demanded, the wrench's setting, the wrench and the day of its last check.</summary>
internal static class TightenedTable
{
    private const double FastenerAt = 19;
    private const double TorqueAt = 166;
    private const double SetAt = 262;
    private const double ToolAt = 336;
    private const double Gutter = 8;

    public static void Write(Pages pages, JobState state)
    {
        var rows = state.Points.Where(p => p.IsTightened()).Select(Row).ToList();
        if (rows.Count == 0)
            return;
        pages.Begin($"Tightened", pages.HeightOf(rows[0]), Columns());
        foreach (var row in rows)
            pages.Row(row, 2);
        pages.End();
    }

    private static IReadOnlyList<Cell> Columns() =>
        [
            Cell.Of(FastenerAt, TorqueAt - FastenerAt, ($"Fastener", Typeface.Aside)),
            Cell.Of(TorqueAt, SetAt - TorqueAt, ($"Torque", Typeface.Aside)),
            Cell.Of(SetAt, ToolAt - SetAt, ($"Set", Typeface.Aside)),
            Cell.Of(ToolAt, Pages.Width - ToolAt, ($"Tool", Typeface.Aside)),
        ];

    private static IReadOnlyList<Cell> Row(PointState point) =>
        [
            SheetHead.Stripe(point.Stripe, 0),
            Cell.Of(
                FastenerAt,
                TorqueAt - FastenerAt - Gutter,
                (Sentence.Of(point.Point.Title), Typeface.Strong),
                (Did(point), Typeface.Aside)
            ),
            Cell.Of(
                TorqueAt,
                SetAt - TorqueAt - Gutter,
                (Cell.Whole(PointWords.Limit(point)), Typeface.Body),
                (PointWords.Origin(point), Typeface.Aside)
            ),
            Cell.Of(
                SetAt,
                ToolAt - SetAt - Gutter,
                (Cell.Whole(PointWords.LeftAt(point)), Typeface.Strong),
                (PointWords.Remark(point), Typeface.Aside)
            ),
            Cell.Of(ToolAt, Pages.Width - ToolAt, (Tool(point.Readings.LastOrDefault()?.Instrument), Typeface.Body)),
        ];

    /// <summary>Corrections in order.</summary>
    internal static Sentence Did(PointState point) => Sentence.List(point.Corrections.Select(c => c.Words), "; ");

    internal static Sentence Tool(ShopInstrument? tool) =>
        tool is null ? (Sentence)$"no tool recorded"
        : tool.Checked is { } day ? (Sentence)$"{tool.Name}, checked {SheetHead.Day(day)}"
        : (Sentence)$"{tool.Name}, no check on record";
}
