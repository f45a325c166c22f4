using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger;

/// <summary>Whether something failed because no room was left, whoever says so.</summary>
/// <remarks>
/// <b>Source.</b> sqlite3.h: SQLITE_FULL is 13; PostgreSQL 15 documentation, appendix A: 53100 disk_full; POSIX.1-2017, errno.h: ENOSPC, 28 on Linux and macOS; Windows
/// system error codes: ERROR_DISK_FULL, 112.
/// </remarks>
public static class DiskFull
{
    private const int Sqlite = 13;
    private const string PostgreSql = "53100";
    private const int NoSpace = 28;
    private const int WindowsDiskFull = unchecked((int)0x80070070);

    /// <summary>Whether it did.</summary>
    public static bool Is(Exception? broken) =>
        broken switch
        {
            null => false,
            SqliteException { SqliteErrorCode: Sqlite } => true,
            DbException { SqlState: PostgreSql } => true,
            IOException { HResult: NoSpace or WindowsDiskFull } => true,
            _ => Is(broken.InnerException),
        };
}
