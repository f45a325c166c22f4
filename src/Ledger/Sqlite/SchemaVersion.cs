using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>By which step of its tables a file stands.</summary>
internal static class SchemaVersion
{
    /// <summary>SQLite's own <c>user_version</c> of the file; 0 in a new one.</summary>
    public static int Version(this SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA user_version";
        return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }
}
