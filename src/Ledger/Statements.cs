using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger;

/// <summary>Single statements on an open connection, in words that both databases understand.</summary>
internal static class Statements
{
    /// <summary>Runs it; what it answers is not asked for.</summary>
    public static void Run(this DbConnection connection, string sql) => connection.Change(sql);

    /// <summary>Runs it with values for <c>$1</c>, <c>$2</c> and so on; how many rows it changed.</summary>
    public static int Change(this DbConnection connection, string sql, params ReadOnlySpan<object?> values)
    {
        using var command = With(connection, sql, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>All rows that it answers.</summary>
    public static IReadOnlyList<T> Rows<T>(
        this DbConnection connection,
        string sql,
        Func<DbDataReader, T> read,
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

    /// <summary>Gives a command its values for <c>$1</c>, <c>$2</c> and so on.</summary>
    public static void With(this DbCommand command, ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
        {
            var value = command.CreateParameter();
            if (command is SqliteCommand)
                value.ParameterName = $"${i + 1}"; // PostgreSQL knows them by their place
            value.Value = values[i] is int number ? (long)number : values[i] ?? DBNull.Value; // one size: a prepared statement knows no other
            command.Parameters.Add(value);
        }
    }

    private static DbCommand With(DbConnection connection, string sql, ReadOnlySpan<object?> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        command.With(values);
        return command;
    }
}
