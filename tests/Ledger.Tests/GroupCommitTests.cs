namespace Witnessmark.Ledger.Tests;

public class GroupCommitTests
{
    [Fact]
    public async Task What_waits_is_written_together_in_the_order_in_which_it_came()
    {
        using var first = new ManualResetEventSlim();
        List<string[]> written = [];
        var commit = new GroupCommit<Batch>(batches =>
        {
            if (written.Count == 0)
                first.Wait(TestContext.Current.CancellationToken);
            lock (written)
                written.Add([.. batches.Select(b => b.Device)]);
            return [.. batches.Select(b => new Receipt(b.Device, 1, []))];
        });
        var all = Enumerable.Range(0, 9).Select(n => commit.Take(Of($"{n}"))).ToList();
        first.Set();
        var receipts = await Task.WhenAll(all);
        Assert.Equal(Enumerable.Range(0, 9).Select(n => $"{n}"), receipts.Select(r => r.Ledger));
        Assert.Equal(receipts.Select(r => r.Ledger), written.SelectMany(w => w));
        Assert.InRange(written.Count, 1, 2);
    }

    [Fact]
    public async Task One_that_cannot_be_written_takes_no_other_along()
    {
        using var first = new ManualResetEventSlim();
        var commit = new GroupCommit<Batch>(batches =>
        {
            first.Wait(TestContext.Current.CancellationToken);
            return batches.Any(b => b.Device == "bad")
                ? throw new LedgerUnavailable("no")
                : [.. batches.Select(b => new Receipt(b.Device, 1, []))];
        });
        var (before, bad, after) = (commit.Take(Of("before")), commit.Take(Of("bad")), commit.Take(Of("after")));
        first.Set();
        Assert.Equal("before", (await before).Ledger);
        Assert.Equal("after", (await after).Ledger);
        await Assert.ThrowsAsync<LedgerUnavailable>(() => bad);
        Assert.Equal("later", (await commit.Take(Of("later"))).Ledger); // and the writer goes on
    }

    private static Batch Of(string device) => new(device, 1, []);
}
