using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>One statement, prepared once and run with many values: <c>$1</c>, <c>$2</c> and so on.</summary>
/// <remarks>
/// What is run for each row of a long file binds straight to SQLite: with the parameters of ADO.NET a second import of a list took a
/// quarter longer (measured once). It runs inside a transaction that has the lock already, so that nothing has to be waited for. What reads rows
/// is a command like any other.
/// </remarks>
internal sealed class Prepared : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly SqliteTransaction transaction;
    private readonly string sql;
    private readonly sqlite3_stmt statement;
    private readonly int[] places;
    private SqliteCommand? reading;

    public Prepared(SqliteConnection connection, SqliteTransaction transaction, string sql, int values)
    {
        (this.connection, this.transaction, this.sql) = (connection, transaction, sql);
        Demand(raw.sqlite3_prepare_v2(connection.Handle, sql, out statement));
        places = [.. Enumerable.Range(1, values).Select(i => raw.sqlite3_bind_parameter_index(statement, $"${i}"))];
    }

    /// <summary>Runs it; how many rows it changed.</summary>
    public int Change(params ReadOnlySpan<object?> values)
    {
        Step(values);
        Demand(raw.sqlite3_reset(statement));
        return raw.sqlite3_changes(connection.Handle);
    }

    /// <summary>The number that it answers, or null.</summary>
    public long? Number(params ReadOnlySpan<object?> values)
    {
        long? number =
            Step(values) == raw.SQLITE_ROW && raw.sqlite3_column_type(statement, 0) != raw.SQLITE_NULL
                ? raw.sqlite3_column_int64(statement, 0)
                : null;
        Demand(raw.sqlite3_reset(statement));
        return number;
    }

    /// <summary>Runs it; the first row is read by the caller, who closes the reader.</summary>
    public SqliteDataReader Rows(params ReadOnlySpan<object?> values)
    {
        reading ??= Command();
        for (var i = 0; i < values.Length; i++)
            reading.Parameters[i].Value = values[i] ?? DBNull.Value;
        return reading.ExecuteReader();
    }

    public void Dispose()
    {
        statement.Dispose();
        reading?.Dispose();
    }

    private SqliteCommand Command()
    {
        var command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        for (var i = 1; i <= places.Length; i++)
            command.Parameters.Add(new SqliteParameter { ParameterName = $"${i}" });
        command.Prepare();
        return command;
    }

    private int Step(ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
            Demand(Bind(places[i], values[i]));
        var said = raw.sqlite3_step(statement);
        if (said is raw.SQLITE_ROW or raw.SQLITE_DONE)
            return said;
        raw.sqlite3_reset(statement);
        Demand(said);
        return said;
    }

    private int Bind(int place, object? value) =>
        value switch
        {
            null => raw.sqlite3_bind_null(statement, place),
            string text => raw.sqlite3_bind_text(statement, place, text),
            byte[] bytes => raw.sqlite3_bind_blob(statement, place, bytes),
            long number => raw.sqlite3_bind_int64(statement, place, number),
            int number => raw.sqlite3_bind_int64(statement, place, number),
            bool yes => raw.sqlite3_bind_int(statement, place, yes ? 1 : 0),
            double number => raw.sqlite3_bind_double(statement, place, number),
            _ => throw new ArgumentException($"SQLite keeps no {value.GetType()}.", nameof(value)),
        };

    private void Demand(int said) => SqliteException.ThrowExceptionForRC(said, connection.Handle);
}
