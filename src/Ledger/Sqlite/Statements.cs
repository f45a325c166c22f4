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

    /// <summary>Runs it with values for <c>$1</c>, <c>$2</c> and so on; how many rows it changed.</summary>
    public static int Change(this SqliteConnection connection, string sql, params ReadOnlySpan<object?> values)
    {
        using var command = With(connection, sql, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>All rows that it answers.</summary>
    public static IReadOnlyList<T> Rows<T>(
        this SqliteConnection connection,
        string sql,
        Func<SqliteDataReader, T> read,
        params ReadOnlySpan<object?> values
    )
    {
        using var command = With(connection, sql, values);
        using var row = command.ExecuteReader();
        var rows = new List<T>();
        while (row.Read())
            rows.Add(read(row));
        return rows;
    }

    /// <summary>SQLite's own <c>user_version</c> of the file; 0 in a new one.</summary>
    public static int Version(this SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA user_version";
        return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    private static SqliteCommand With(SqliteConnection connection, string sql, ReadOnlySpan<object?> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        for (var i = 0; i < values.Length; i++)
            command.Parameters.AddWithValue($"${i + 1}", values[i] ?? DBNull.Value);
        return command;
    }
}
