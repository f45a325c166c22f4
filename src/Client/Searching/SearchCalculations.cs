using Witnessmark.Bench.Searching;
using Witnessmark.Client.Handbook;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Client.Searching;

/// <summary>The handbook's calculations, as the search finds them.</summary>
internal static class SearchCalculations
{
    public static IEnumerable<SearchEntry> All =>
        Calculations.All.Select(c => new SearchEntry(
            SearchKind.Calculation,
            HandbookWords.SpokenTitle(c.Name),
            c.Line,
            $"handbook/{c.Name}"
        )
        {
            Also = HandbookWords.Chapter(c.Group),
        });
}
