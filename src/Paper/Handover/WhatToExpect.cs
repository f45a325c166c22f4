using Witnessmark.Bench.Expectations;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Handover;

/// <summary>What to expect: the next work by distance and date, how far wearing parts go, and what follows from this job's work.</summary>
internal static class WhatToExpect
{
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
            LineList.Write(pages, Heading, [(ExpectationWords.NoSchedule, false)]);
            return;
        }
        pages.Begin(Heading, 14);
        pages.InColumns([.. expected.Services.Select(s => One(s, expected))]);
        pages.End();
        if (ExpectationWords.NotRead(expected) is { } caution)
            pages.Row([Cell.Of(0, Pages.Width, (caution, Typeface.Aside))], 1.5, false);
    }

    private static IReadOnlyList<Cell> One(ServiceAhead service, Outlook expected) =>
        [
            Cell.RunIn(
                0,
                Pages.ColumnWidth,
                (Sentence.Of(service.Title), Typeface.Strong),
                (ExpectationWords.When(service, expected.Odometer), Typeface.Body),
                (ExpectationWords.AskedBy(service), Typeface.Aside)
            ),
        ];

    private static void Lines(Pages pages, Sentence heading, IReadOnlyList<(Sentence? Text, Typeface Face)> lines)
    {
        if (lines.Count == 0)
            return;
        pages.BeginWithin(heading, 14);
        foreach (var line in lines)
            pages.Row([Cell.Of(0, Pages.Width, line)], 1, false);
        pages.End();
    }
}
