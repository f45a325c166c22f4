using Witnessmark.Bench.Expectations;
using Witnessmark.Bench.Jobs;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Handover;

namespace Witnessmark.Paper.Record;

/// <summary>The tables of the record: measured, tightened, seen, and the schedule.</summary>
internal static class RecordTables
{
    public static void Measured(HtmlText page, JobState state) =>
        Table(
            page,
            $"What we found and what we left it at",
            [$"Point", $"Limit", $"Found", Sentence.Empty, $"Left at"],
            state.Points.Where(p => p.IsMeasured()),
            point =>
            {
                Head(page, point, PointWords.Done(point));
                Cell(page, $"Limit", PointWords.Limit(point), PointWords.Origin(point));
                Cell(page, $"Found", PointWords.Found(point));
                page.In(
                    "td",
                    () =>
                    {
                        if (RuleView.Of(point) is { } view)
                            page.Raw(SvgPen.Draw(RuleDrawing.Of(view, RuleSize.Row), page.Tongue));
                    },
                    "rule"
                );
                Cell(page, $"Left at", PointWords.LeftAt(point), PointWords.Remark(point), "left");
            }
        );

    public static void Tightened(HtmlText page, JobState state) =>
        Table(
            page,
            $"Tightened",
            [$"Fastener", $"Torque", $"Set", $"Tool"],
            state.Points.Where(p => p.IsTightened()),
            point =>
            {
                Head(page, point, TightenedTable.Did(point));
                Cell(page, $"Torque", PointWords.Limit(point), PointWords.Origin(point));
                Cell(page, $"Set", PointWords.LeftAt(point), PointWords.Remark(point), "left");
                Cell(page, $"Tool", TightenedTable.Tool(point.Readings.LastOrDefault()?.Instrument));
            }
        );

    public static void Seen(HtmlText page, JobState state) =>
        Table(
            page,
            $"Seen and done",
            [$"Point", $"What"],
            state.Points.Where(p => !p.IsMeasured() && !p.IsTightened()),
            point =>
            {
                Head(page, point, null);
                Cell(page, $"What", SeenList.Said(point));
            }
        );

    public static void Services(HtmlText page, Outlook expected) =>
        Table(
            page,
            $"What to expect",
            [$"Next", $"When", $"Asked for"],
            expected.Services,
            service =>
            {
                page.Raw("<td class=\"mark\"></td>");
                page.In("th scope=\"row\"", () => page.Said("p", Sentence.Of(service.Title)));
                Cell(page, $"When", ExpectationWords.When(service, expected.Odometer));
                Cell(page, $"Asked for", ExpectationWords.AskedBy(service));
            }
        );

    private static void Table<T>(
        HtmlText page,
        Sentence heading,
        Sentence[] columns,
        IEnumerable<T> rows,
        Action<T> write
    )
    {
        var all = rows.ToList();
        if (all.Count == 0)
            return;
        page.In(
            "section",
            () =>
            {
                page.Said("h2", heading);
                page.In(
                    "table",
                    () =>
                    {
                        page.Raw(
                            $"<thead><tr><td class=\"mark\"></td>{string.Concat(columns.Select(c => c.Length > 0 ? $"<th scope=\"col\">{HtmlText.Escaped(c.In(page.Tongue))}</th>" : "<td></td>"))}</tr></thead>"
                        );
                        page.In(
                            "tbody",
                            () =>
                            {
                                foreach (var row in all)
                                    page.In("tr", () => write(row));
                            }
                        );
                    }
                );
            }
        );
    }

    private static void Head(HtmlText page, PointState point, Sentence? done)
    {
        page.Raw($"<td class=\"mark\">{StripeDrawing.Svg(point.Stripe, tongue: page.Tongue)}</td>");
        page.In("th scope=\"row\"", () => page.Said("p", Sentence.Of(point.Point.Title)).Said("p", done, "soft"));
    }

    private static void Cell(
        HtmlText page,
        Sentence label,
        Sentence said,
        Sentence? aside = null,
        string? look = null
    ) =>
        page.In(
            $"td data-label=\"{HtmlText.Escaped(label.In(page.Tongue))}\"",
            () => page.Said("p", said, look).Said("p", aside, "soft")
        );
}
