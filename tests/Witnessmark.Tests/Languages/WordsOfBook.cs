using Witnessmark.Bench.Jobs;

namespace Witnessmark.Tests.Languages;

/// <summary>All texts of the shipped bench book, and of the tools that come with it, that people read.</summary>
internal static class WordsOfBook
{
    public static IEnumerable<string> All(Workbench bench) =>
        [
            .. bench.Book.Points.Values.SelectMany(OfPoint),
            .. bench.Book.Purposes.Keys,
            .. bench.Book.Purposes.Values.SelectMany(p => p).Select(p => p.Why),
            .. bench.Book.Reach.Values.SelectMany(r => (string[])[r.Name, r.Words]),
            .. bench.Book.FigureKeys.Values.Select(k => k.Words),
            .. bench.Sheets.SelectMany(s => s.Figures.Keys).Select(k => k.Split('.')[0]),
            // the usual tools, which a new shop is offered
            .. bench.Workshop.Instruments.Values.Select(i => i.Name),
            .. bench.Book.CommonPractice.Values.SelectMany(OfPractice),
        ];

    private static IEnumerable<string> OfPoint(Bench.Book.Point point) =>
        [
            point.Title,
            point.Caution ?? "",
            point.Reading.Words,
            point.Reading.Step ?? "",
            .. point.Reading.Places,
            .. point.Consumables.Select(c => c.What),
        ];

    private static IEnumerable<string> OfPractice(Bench.Book.CommonPractice practice) =>
        [practice.Words, practice.Figure.When ?? ""];
}
