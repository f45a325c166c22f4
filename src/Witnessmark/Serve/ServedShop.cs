using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Toml;
using Witnessmark.Doors;
using Witnessmark.Ledger;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.LogBooks;
using Witnessmark.OwnShop;
using Witnessmark.Paper.LogBook;
using Witnessmark.Sheets;

namespace Witnessmark.Serve;

/// <summary>What the server serves: the files as they are, what they say, and the ledger.</summary>
public sealed class ServedShop
{
    private readonly DataFolder data;
    private readonly TimeProvider clock;
    private readonly Lock revising = new();
    private readonly Lazy<ShopSeal> seal;
    private volatile Shelf shelf;
    private DateTime peopleWritten;
    private long sheetSeen;

    /// <summary>Names of shops that lay in this folder before: their entries are no entries of this one.</summary>
    public IReadOnlyList<string> PutAway { get; }

    private ServedShop(DataFolder data, TimeProvider clock, Shelf shelf, ShopPlace place) =>
        (this.data, this.clock, this.shelf, Place, LogBooks, Door, seal, PutAway) = (
            data,
            clock,
            shelf,
            place,
            place.LogBooks,
            new(place.DoorIfThere, place.Door, People, clock),
            new(() => place.Key().Seal),
            place.IsOfGroup ? [] : PutAwayShops.Of(data.Path)
        );

    private static DateTime PeopleWritten(DataFolder data) => File.GetLastWriteTimeUtc(data.In("shop.toml"));

    /// <summary>Where it is all kept.</summary>
    public ShopPlace Place { get; }

    /// <summary>The files of the workbench.</summary>
    public IReadOnlyList<SourceText> Files => shelf.Files;

    /// <summary>What they say.</summary>
    public Workbench Bench => shelf.Bench;

    /// <summary>The entries.</summary>
    public ShopLedger Ledger => Place.Ledger;

    /// <summary>What it signs with.</summary>
    public ShopSeal Seal => seal.Value;

    /// <summary>Log books that came with machines.</summary>
    public LogBookShelf LogBooks { get; }

    /// <summary>Who may come in.</summary>
    public Door Door { get; }

    /// <summary>Opens the shop whose files are in a data folder, or says every mistake that keeps it closed.</summary>
    /// <exception cref="LedgerUnavailable">The ledger cannot be opened.</exception>
    public static ServedShop? Open(DataFolder data, Func<ShopPlace> place, TimeProvider clock, TextWriter mistakesTo)
    {
        var written = PeopleWritten(data);
        var files = data.Workbench();
        var (bench, mistakes) = WorkbenchFiles.Read(files);
        foreach (var mistake in mistakes)
            mistakesTo.WriteLine(mistake);
        if (bench is null)
            return null;
        var shop = new ServedShop(data, clock, new(files, bench), place()) { peopleWritten = written };
        shop.LookForFigures();
        return shop;
    }

    /// <summary>Figures that were set at another server of the group are here from now on.</summary>
    public void LookForFigures()
    {
        if (Place.Sheets?.Last() is { } last && last != Interlocked.Read(ref sheetSeen))
            lock (revising)
                LayOut(Place.Sheets.All());
    }

    /// <summary>Sets one figure of a sheet, which makes its next revision.</summary>
    /// <returns>The new revision, or why there is none.</returns>
    public (int? Revision, Sentence? Why) SetFigure(
        string sheet,
        int revision,
        FigureDraft draft,
        string by,
        string why
    )
    {
        (int?, Sentence?) done = default;
        lock (revising)
            if (Place.Sheets is { } kept)
            {
                // written and seen by nobody before the store has it
                kept.Add(all =>
                {
                    LayOut(all);
                    KeptSheet? made = null;
                    done = Revised(
                        sheet,
                        revision,
                        draft,
                        by,
                        why,
                        (_, next, number) => made = new(sheet, number, next.Text)
                    );
                    return made;
                });
                LayOut(kept.All());
            }
            else
                done = Revised(sheet, revision, draft, by, why, PutIntoFolder);
        return done;
    }

    private (int? Revision, Sentence? Why) Revised(
        string sheet,
        int revision,
        FigureDraft draft,
        string by,
        string why,
        Action<FigureSheet, SourceText, int> keep
    )
    {
        if (Bench.Newest(sheet) is not { } newest)
            return (null, $"The shop has no figure sheet \"{sheet}\".");
        if (newest.Revision != revision)
            return (
                null,
                $"Somebody else changed this sheet: it is at revision {newest.Revision} now. Look at it again."
            );
        var day = DateOnly.FromDateTime(clock.GetLocalNow().Date);
        var file = SheetFolder.Newest(Files, sheet)!;
        var (next, mistakes) = SheetRevision.Set(file, draft, by, day, why);
        if (next is null)
            return (null, Said(mistakes));
        if (WorkbenchFiles.Read(SheetShelf.With(Files, newest, next)) is (null, { } wrong))
            return (null, Said(wrong));
        keep(newest, next, newest.Revision + 1);
        return (newest.Revision + 1, null);
    }

    private void PutIntoFolder(FigureSheet before, SourceText next, int revision)
    {
        SheetFolder.Put(data, before, next);
        var files = SheetShelf.With(Files, before, next);
        shelf = new(files, WorkbenchFiles.Read(files).Bench!);
    }

    // files that have mistakes in them now stay as they were; what was seen is not asked for again
    private void LayOut(IReadOnlyList<KeptSheet> kept)
    {
        var files = KeptSheets.Over(data.Workbench(), kept);
        if (WorkbenchFiles.Read(files).Bench is { } bench)
            shelf = new(files, bench);
        Interlocked.Exchange(ref sheetSeen, kept.Count == 0 ? 0 : kept[^1].Number);
    }

    /// <summary>Who works here as the shop's file says now: whoever was taken off it is out at once. While the file has mistakes all stays as it was.</summary>
    private Workshop People()
    {
        if (PeopleWritten(data) is var written && written != peopleWritten && File.Exists(data.In("shop.toml")))
            lock (revising)
            {
                var files = KeptSheets.Over(data.Workbench(), Place.Sheets);
                if (WorkbenchFiles.Read(files).Bench is { } bench)
                    shelf = new(files, bench);
                peopleWritten = written;
            }
        return Bench.Workshop;
    }

    private static Sentence Said(IReadOnlyList<Mistake> mistakes) =>
        Sentence.Line(mistakes.Select(m => WrittenMistake.Of(m).Ended()));

    private sealed record Shelf(IReadOnlyList<SourceText> Files, Workbench Bench);
}
