using Witnessmark.Bench.Expectations;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What to expect: the next work by distance and date, how far wearing parts go, and what follows from this job's work.</summary>
internal static class WhatToExpect
{
    private const double WhenAt = 150;
    private const double WhoAt = 340;
    private const double Gutter = 8;
    private static Sentence Heading => $"What to expect";

    public static void Write(Pages pages, Outlook expected)
    {
        Services(pages, expected);
        var told = ExpectationWords.Told(expected).ToList();
        var rest = ExpectationWords.NotTold(expected).ToList();
        Lines(
            pages,
            $"How far wearing parts go, by this machine's own readings",
            [
                .. told.SelectMany(t =>
                    t.Cautions.Select(c => ((Sentence?)c, Typeface.Aside)).Prepend((t.Words, Typeface.Body))
                ),
                .. rest.Select(r => ((Sentence?)r, Typeface.Aside)),
            ]
        );
        Lines(
            pages,
            $"After this work",
            [.. expected.Cautions.Select(c => ((Sentence?)ExpectationWords.Of(c), Typeface.Body))]
        );
    }

    private static void Services(Pages pages, Outlook expected)
    {
        if (expected.Services.Count == 0)
        {
            Lines(pages, Heading, [(ExpectationWords.NoSchedule, Typeface.Body)]);
            return;
        }
        var rows = expected.Services.Select(s => Row(s, expected)).ToList();
        pages.Begin(Heading, pages.HeightOf(rows[0]), Columns());
        foreach (var row in rows)
            pages.Row(row, 2.5);
        pages.End();
        if (ExpectationWords.NotRead(expected) is { } caution)
            pages.Row([Cell.Of(0, Pages.Width, (caution, Typeface.Aside))], 1.5, false);
    }

    private static IReadOnlyList<Cell> Columns() =>
        [
            Cell.Of(0, WhenAt, ($"Next", Typeface.Aside)),
            Cell.Of(WhenAt, WhoAt - WhenAt, ($"When", Typeface.Aside)),
            Cell.Of(WhoAt, Pages.Width - WhoAt, ($"Asked for", Typeface.Aside)),
        ];

    private static IReadOnlyList<Cell> Row(ServiceAhead service, Outlook expected) =>
        [
            Cell.Of(0, WhenAt - Gutter, (Sentence.Of(service.Title), Typeface.Strong)),
            Cell.Of(
                WhenAt,
                WhoAt - WhenAt - Gutter,
                (ExpectationWords.When(service, expected.Odometer), Typeface.Body)
            ),
            Cell.Of(WhoAt, Pages.Width - WhoAt, (ExpectationWords.AskedBy(service), Typeface.Aside)),
        ];

    private static void Lines(Pages pages, Sentence heading, IReadOnlyList<(Sentence? Text, Typeface Face)> lines)
    {
        if (lines.Count == 0)
            return;
        pages.Begin(heading, 20);
        foreach (var line in lines)
            pages.Row([Cell.Of(0, Pages.Width, line)], 1.5, false);
        pages.End();
    }
}
