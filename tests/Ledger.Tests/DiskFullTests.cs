using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Tests;

// sqlite3.h: 13 is SQLITE_FULL, 10 SQLITE_IOERR; POSIX.1-2017 errno.h: ENOSPC, 28 on Linux and macOS; Windows system error codes: 112
public sealed class DiskFullTests
{
    [Fact]
    public void Whoever_says_that_there_is_no_room_is_understood()
    {
        Assert.True(DiskFull.Is(new SqliteException("full", 13)));
        Assert.True(DiskFull.Is(new LedgerUnavailable("no", new SqliteException("full", 13))));
        Assert.True(DiskFull.Is(new IOException("no room", 28)));
        Assert.True(DiskFull.Is(new IOException("no room", unchecked((int)0x80070070))));
        Assert.False(DiskFull.Is(new SqliteException("broken", 10)));
        Assert.False(DiskFull.Is(new IOException("gone")));
    }
}
