using Witnessmark.Bench.Book;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Times;
using Witnessmark.Ledger;
using Witnessmark.Serve;

namespace Witnessmark.Times;

/// <summary>The times that a shop's ledger shows.</summary>
internal static class TimesOnDisk
{
    /// <summary>Learnt from every entry of the ledger of a shop; the book's where there is none.</summary>
    public static LearntTimes Learnt(ShopPlace shop, BenchBook book) =>
        shop.LedgerIfThere() is { } ledger ? Learnt(ledger, book) : LearntTimes.From(book, []);

    /// <summary>Learnt from every entry of a ledger.</summary>
    public static LearntTimes Learnt(ShopLedger ledger, BenchBook book) =>
        LearntTimes.From(book, ObservedTimes.Of(Entries(ledger), book));

    private static List<Entry> Entries(ShopLedger ledger)
    {
        List<Entry> entries = [];
        long order = 0;
        while (ledger.After(order) is { Entries.Count: > 0 } page)
        {
            entries.AddRange(page.Entries.Select(e => e.Entry));
            order = page.Entries[^1].Order;
        }
        return entries;
    }
}
