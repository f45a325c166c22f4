using Witnessmark.Bench.Book;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Times;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Times;

/// <summary>The times that a shop's ledger shows.</summary>
internal static class TimesOnDisk
{
    /// <summary>Learnt from every entry of the ledger in a data folder; the book's where there is none.</summary>
    public static LearntTimes Learnt(string folder, BenchBook book) =>
        LearntTimes.From(book, ObservedTimes.Of(Entries(folder), book));

    private static List<Entry> Entries(string folder)
    {
        List<Entry> entries = [];
        if (!File.Exists(Path.Combine(folder, SqliteLedger.FileName)))
            return entries;
        var ledger = SqliteLedger.Open(folder, TimeProvider.System);
        long order = 0;
        while (ledger.After(order) is { Entries.Count: > 0 } page)
        {
            entries.AddRange(page.Entries.Select(e => e.Entry));
            order = page.Entries[^1].Order;
        }
        return entries;
    }
}
