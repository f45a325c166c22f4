using System.Text;
using Witnessmark.Ledger.Campaigns;
using static Witnessmark.Ledger.Tests.Campaigns.RecallLines;

namespace Witnessmark.Ledger.Tests.Campaigns;

/// <summary>Imports that do not come to their end, and stores that cannot be used.</summary>
public class BrokenImportTests
{
    [Fact]
    public void A_cancelled_import_leaves_everything_as_it_was()
    {
        using var kept = new Kept();
        kept.Import(Row());
        var before = kept.Dump();
        using var cancel = new CancellationTokenSource();
        var file = Encoding.Latin1.GetBytes(string.Join('\n', Lines(1, 10_000)));
        Assert.ThrowsAny<OperationCanceledException>(() =>
            kept.Import(
                file,
                cancel.Token,
                progress =>
                {
                    if (progress.Rows > 5000)
                        cancel.Cancel();
                }
            )
        );
        Assert.Equal(before, kept.Dump());
        Assert.Equal(1, Assert.Single(kept.Store.Lists()).Rows);
        Assert.True(kept.Import(file).New > 5000);
    }

    [Fact]
    public void An_import_that_breaks_leaves_everything_as_it_was()
    {
        using var kept = new Kept();
        kept.Import(Row());
        using var torn = new TornStream(Encoding.Latin1.GetBytes(Row("26X-005") + "\n"));
        Assert.Throws<IOException>(() => kept.Store.ImportPublic(torn, "recalls.txt", Kept.Noon, _ => { }));
        Assert.Single(kept.Dump());
    }

    [Fact]
    public void Progress_ends_at_the_whole_file()
    {
        using var kept = new Kept();
        List<ImportProgress> said = [];
        var file = Encoding.Latin1.GetBytes(string.Join('\n', Lines(2, 9000)));
        kept.Import(file, progress: said.Add);
        Assert.Equal(new(9000, file.Length, file.Length), said[^1]);
        Assert.True(said.Count >= 4);
        Assert.Equal(said.OrderBy(p => p.Bytes), said);
    }

    [Fact]
    public void A_newer_form_is_refused_and_left_alone()
    {
        using var kept = new Kept();
        kept.Import(Row());
        kept.Sql("PRAGMA user_version = 3");
        Assert.Contains(
            "newer Witnessmark (form 3, this one knows up to 2)",
            Assert.Throws<LedgerUnavailable>(() => kept.Store).Message
        );
        Assert.Single(kept.Dump());
    }

    [Fact]
    public void A_file_that_is_no_store_is_said_to_be_none()
    {
        using var kept = new Kept();
        File.WriteAllText(Path.Combine(kept.Folder, CampaignStore.FileName), new string('x', 5000));
        Assert.Throws<LedgerUnavailable>(() => kept.Store);
    }

    /// <summary>Fails after its bytes, as a network share that went away.</summary>
    private sealed class TornStream(byte[] bytes) : MemoryStream(bytes)
    {
        public override int Read(byte[] buffer, int offset, int count) =>
            Position < Length ? base.Read(buffer, offset, count) : throw new IOException("gone");
    }
}
