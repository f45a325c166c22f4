using System.Data.Common;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>A statement on an SQLite file.</summary>
/// <remarks>
/// What is run for each row of a long file binds straight to SQLite: with the parameters of ADO.NET a second import of a list took a
/// quarter longer (measured once). It runs inside a transaction that has the lock already, so that nothing has to be waited for. What reads rows
/// is a command like any other.
/// </remarks>
internal sealed class SqlitePrepared : Prepared
{
    private readonly SqliteConnection connection;
    private readonly string sql;
    private readonly sqlite3_stmt statement;
    private readonly int[] places;
    private SqliteCommand? reading;

    public SqlitePrepared(SqliteConnection connection, string sql, int values)
    {
        (this.connection, this.sql) = (connection, sql);
        Demand(raw.sqlite3_prepare_v2(connection.Handle, sql, out statement));
        places = [.. Enumerable.Range(1, values).Select(i => raw.sqlite3_bind_parameter_index(statement, $"${i}"))];
    }

    public override int Change(params ReadOnlySpan<object?> values)
    {
        Step(values);
        Demand(raw.sqlite3_reset(statement));
        return raw.sqlite3_changes(connection.Handle);
    }

    public override long? Number(params ReadOnlySpan<object?> values)
    {
        long? number =
            Step(values) == raw.SQLITE_ROW && raw.sqlite3_column_type(statement, 0) != raw.SQLITE_NULL
                ? raw.sqlite3_column_int64(statement, 0)
                : null;
        Demand(raw.sqlite3_reset(statement));
        return number;
    }

    public override DbDataReader Rows(params ReadOnlySpan<object?> values)
    {
        reading ??= Command();
        using (var now = connection.CreateCommand())
            reading.Transaction = now.Transaction; // it may outlast the one that it was made in
        for (var i = 0; i < values.Length; i++)
            reading.Parameters[i].Value = values[i] ?? DBNull.Value;
        return reading.ExecuteReader();
    }

    public override void Dispose()
    {
        statement.Dispose();
        reading?.Dispose();
    }

    private SqliteCommand Command()
    {
        var command = connection.CreateCommand();
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
