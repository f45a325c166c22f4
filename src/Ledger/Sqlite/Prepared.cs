using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>One statement, prepared once and run with many values: <c>$1</c>, <c>$2</c> and so on.</summary>
internal sealed class Prepared : IDisposable
{
    private readonly SqliteCommand command;

    public Prepared(SqliteConnection connection, SqliteTransaction transaction, string sql, int values)
    {
        command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        for (var i = 1; i <= values; i++)
            command.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
        command.Prepare();
    }

    /// <summary>Runs it; how many rows it changed.</summary>
    public int Change(params ReadOnlySpan<object?> values)
    {
        Bind(values);
        return command.ExecuteNonQuery();
    }

    /// <summary>The number that it answers, or null.</summary>
    public long? Number(params ReadOnlySpan<object?> values)
    {
        Bind(values);
        return command.ExecuteScalar() as long?;
    }

    /// <summary>Runs it; the first row is read by the caller, who closes the reader.</summary>
    public SqliteDataReader Rows(params ReadOnlySpan<object?> values)
    {
        Bind(values);
        return command.ExecuteReader();
    }

    public void Dispose() => command.Dispose();

    private void Bind(ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
            command.Parameters[i].Value = values[i] ?? DBNull.Value;
    }
}
