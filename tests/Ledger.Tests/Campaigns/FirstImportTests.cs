using System.Text;
using Witnessmark.Ledger.Campaigns;
using static Witnessmark.Ledger.Tests.Campaigns.RecallLines;

namespace Witnessmark.Ledger.Tests.Campaigns;

/// <summary>The first import writes beside the store's name and takes it at the end.</summary>
public class FirstImportTests
{
    [Fact]
    public void A_cancelled_first_import_leaves_no_store()
    {
        using var kept = new Kept();
        Cancelled(kept);
        Assert.Null(CampaignStore.OpenIfThere(kept.Folder));
        Assert.Equal(1, kept.Import(Row()).New); // nothing of the cancelled one is left
        Assert.Single(kept.Dump());
    }

    [Fact]
    public void While_it_runs_nothing_is_there_yet_and_nothing_is_made()
    {
        using var kept = new Kept();
        var seen = true;
        kept.Import(Many, progress: _ => seen = CampaignStore.OpenIfThere(kept.Folder) is not null);
        Assert.False(seen);
        Assert.NotNull(CampaignStore.OpenIfThere(kept.Folder));
        Assert.Equal([CampaignStore.FileName], Names(kept));
    }

    [Fact]
    public void Another_one_that_was_quicker_is_said_and_stays()
    {
        using var kept = new Kept();
        kept.Import(Row("26X-005")); // while this one waited for its turn
        var path = Path.Combine(kept.Folder, CampaignStore.FileName);
        var said = Assert.Throws<LedgerUnavailable>(() =>
            FirstImport.Run(
                path,
                p => new(p, foreignKeys: false, _ => { }),
                _ => throw new InvalidOperationException("it must not begin")
            )
        );
        Assert.Contains($"{CampaignStore.FileName} was made by another import", said.Message);
        Assert.Contains("26X-005", Assert.Single(kept.Dump()));
    }

    [Fact]
    public void While_one_runs_a_second_one_is_refused_at_once_and_does_not_harm_it()
    {
        using var kept = new Kept();
        LedgerUnavailable? said = null;
        kept.Import(
            Many,
            progress: _ =>
                said ??= Assert.Throws<LedgerUnavailable>(() => kept.Store.ImportOwn([], "own.toml", Kept.Noon))
        );
        Assert.Contains("Another import is running", said!.Message);
        Assert.Single(kept.Store.Lists());
    }

    [Fact]
    public void What_a_power_cut_left_beside_is_no_matter()
    {
        using var kept = new Kept();
        Cancelled(kept); // its tables are there, its rows are not
        Assert.Equal([$"{CampaignStore.FileName}.first"], Names(kept));
        kept.Import(Row());
        Assert.Single(kept.Store.Lists());
        Assert.Equal([CampaignStore.FileName], Names(kept));
    }

    [Fact]
    public void Once_it_is_there_others_can_read_while_one_writes()
    {
        using var kept = new Kept();
        kept.Import(Row());
        _ = kept.Store;
        Assert.Equal("wal", Assert.Single(kept.Query("PRAGMA journal_mode")));
        var seen = 0;
        kept.Import(Many, progress: _ => seen = kept.Store.Lists().Count);
        Assert.Equal(1, seen);
    }

    private static byte[] Many => Encoding.Latin1.GetBytes(string.Join('\n', Lines(3, 9000)));

    private static string[] Names(Kept kept) =>
        [
            .. Directory
                .GetFiles(kept.Folder)
                .Select(f => Path.GetFileName(f)!)
                .Where(name => name != $"{CampaignStore.FileName}.lock"),
        ];

    private static void Cancelled(Kept kept)
    {
        using var cancel = new CancellationTokenSource();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            kept.Import(Many, cancel.Token, progress => Stop(progress, cancel))
        );
    }

    private static void Stop(ImportProgress progress, CancellationTokenSource cancel)
    {
        if (progress.Rows > 5000)
            cancel.Cancel();
    }
}
