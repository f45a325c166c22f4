namespace Witnessmark.Bench.Searching;

/// <summary>
/// What of a list a few typed words mean. Every word has to stand somewhere in an entry. Entries in which all words begin a word go before
/// those in which one stands inside of a word; then those that are called so before those of which it is only told; then the list's order.
/// </summary>
public static class SearchRanking
{
    /// <summary>The best of those that have all words; none when no word is typed.</summary>
    public static SearchHits Of(string typed, IEnumerable<SearchEntry> entries, int most)
    {
        var words = SearchWord.Of(typed);
        if (words.Count == 0)
            return SearchHits.None;
        var found = entries
            .Select(e => (Entry: e, Rank: Rank(words, e)))
            .Where(f => f.Rank is not null)
            .OrderBy(f => f.Rank)
            .Select(f => f.Entry)
            .ToList();
        return new([.. found.Take(most)], found.Count);
    }

    // null: a word is missing
    private static (int Inside, int Told)? Rank(IReadOnlyList<SearchWord> words, SearchEntry entry)
    {
        var (inside, told) = (0, 0);
        foreach (var word in words)
        {
            var called = Best([word.In(entry.Title), .. entry.Numbers.Select(word.InNumber)]);
            var besides = Best([word.In(entry.Detail), word.In(entry.Also)]);
            if ((called, besides) is (Standing.Nowhere, Standing.Nowhere))
                return null;
            if (Best([called, besides]) == Standing.Inside)
                inside++;
            if (besides < called)
                told++;
        }
        return (inside, told);
    }

    private static Standing Best(IEnumerable<Standing> standings) => standings.Min();
}
