using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>Whether the file that a connection has open is still the one of its name: what is written to another is in nobody's ledger.</summary>
/// <remarks>
/// <b>Source.</b> sqlite3.h, SQLITE_FCNTL_HAS_MOVED (20). Windows, where an open file can be neither moved nor replaced, does not know it and answers nothing.
/// </remarks>
internal static class MovedFile
{
    private const int HasMoved = 20;

    public static bool Is(SqliteConnection connection)
    {
        var moved = 0;
        _ = FileControl(connection.Handle!, null, HasMoved, ref moved);
        return moved != 0;
    }

    [DllImport("e_sqlite3", EntryPoint = "sqlite3_file_control", ExactSpelling = true)]
    private static extern int FileControl(sqlite3 connection, string? schema, int operation, ref int answer);
}
