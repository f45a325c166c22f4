using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Record;

namespace Witnessmark.Ledger.Tests.PowerCut;

/// <summary>
/// The disk refuses the n-th write of the ledger, for each n. Source: own derivation; what SQLite is told by its VFS: sqlite3.h, SQLITE_FULL (13),
/// SQLITE_IOERR_WRITE (778) and SQLITE_IOERR_FSYNC (1034).
/// </summary>
[Collection(WatchedFiles.Name)] // one disk is watched at a time
public sealed class RefusedWriteTests
{
    private const int Full = 13;
    private const int WriteFails = 778;
    private const int SyncFails = 1034;
    private const int Most = 400;

    private static readonly IReadOnlyList<Entry> Chain = Made.Chain("bench", 12);

    [Theory]
    [InlineData(Full, true)] // until somebody makes room
    [InlineData(Full, false)] // another program gave room back at once
    [InlineData(WriteFails, false)]
    [InlineData(SyncFails, false)]
    public void Whichever_write_the_disk_refuses_nothing_is_acknowledged_that_is_not_kept(int code, bool forAll)
    {
        using var empty = new Shop();
        var said = new List<string>();
        for (var n = 1; ; n++)
        {
            Assert.True(n < Most, "It does not come to an end.");
            using var shop = new RefusingLedger(empty, n, code, forAll);
            shop.Take(Chain);
            said.AddRange(shop.Said);
            shop.MakeRoom();
            shop.Take(Chain); // all of it once more, as devices do
            Assert.Equal(Chain.Count, shop.Acknowledged);
            var faults = shop.Faults();
            Assert.True(faults.Count == 0, $"write {n} with {code}: {string.Join("; ", faults)}");
            if (shop.Refused == 0)
                break; // it needed no more writes than that
        }
        Assert.True(said.Count > 10, $"The ledger said no {said.Count} times: the test proves little.");
        Assert.All(said, s => Assert.StartsWith("The ledger cannot be used: ", s));
        if (code == Full)
            Assert.All(said, s => Assert.Equal("The ledger cannot be used: the disk that it lies on is full.", s));
    }
}
