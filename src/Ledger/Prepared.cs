using System.Data.Common;
using Microsoft.Data.Sqlite;
using Npgsql;
using Witnessmark.Ledger.PostgreSql;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger;

/// <summary>One statement, made ready once and run with many values: <c>$1</c>, <c>$2</c> and so on. It is worded so that both databases understand it.</summary>
internal abstract class Prepared : IDisposable
{
    /// <summary>On an open connection, within its transaction.</summary>
    /// <param name="connection">To either database.</param>
    /// <param name="sql">The statement.</param>
    /// <param name="values">How many values it takes.</param>
    public static Prepared On(DbConnection connection, string sql, int values) =>
        connection is SqliteConnection file
            ? new SqlitePrepared(file, sql, values)
            : new GroupPrepared((NpgsqlConnection)connection, sql, values);

    /// <summary>Runs it; how many rows it changed.</summary>
    public abstract int Change(params ReadOnlySpan<object?> values);

    /// <summary>The number that it answers, or null.</summary>
    public abstract long? Number(params ReadOnlySpan<object?> values);

    /// <summary>Runs it; the first row is read by the caller, who closes the reader.</summary>
    public abstract DbDataReader Rows(params ReadOnlySpan<object?> values);

    /// <inheritdoc />
    public abstract void Dispose();
}
