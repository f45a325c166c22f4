using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Searching;
using Witnessmark.Client.Figures;

namespace Witnessmark.Client.Searching;

/// <summary>The figures of all sheets, each sheet as it stands now, as the search finds them.</summary>
internal sealed class SearchFigures(Workbench bench)
{
    public IEnumerable<SearchEntry> All() =>
        bench.Sheets.Select(s => s.Id).Distinct().Select(id => bench.Newest(id)!).SelectMany(Of);

    private IEnumerable<SearchEntry> Of(FigureSheet sheet) =>
        sheet
            .Figures.Values.Select(f => new SearchEntry(
                SearchKind.Figure,
                $"{FiguresPage.Titles(bench.Book, sheet, f)}: {Known(f.Short)}",
                $"{sheet.Name} {FiguresWords.Years(sheet)}",
                $"figures/{sheet.Id}/{Uri.EscapeDataString(f.Key)}"
            )
            {
                Also = $"{f.Key} {f.When}",
            })
            .Prepend(
                new(
                    SearchKind.Figure,
                    sheet.Name,
                    $"{FiguresWords.Sheets}, {FiguresWords.Years(sheet)}",
                    $"figures/{sheet.Id}"
                )
            );
}
