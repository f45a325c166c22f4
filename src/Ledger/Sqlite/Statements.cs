using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>Single statements on an open connection.</summary>
internal static class Statements
{
    /// <summary>Runs it; what it answers is not asked for.</summary>
    public static void Run(this SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    /// <summary>SQLite's own <c>user_version</c> of the file; 0 in a new one.</summary>
    public static int Version(this SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA user_version";
        return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }
}
