using System.Data.Common;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>A statement on the group's store. The connection itself prepares what it runs often (<see cref="GroupConnection"/>).</summary>
internal sealed class GroupPrepared : Prepared
{
    private readonly NpgsqlCommand command;

    public GroupPrepared(NpgsqlConnection connection, string sql, int values)
    {
        command = new(sql, connection);
        for (var i = 0; i < values; i++)
            command.Parameters.Add(new NpgsqlParameter());
    }

    public override int Change(params ReadOnlySpan<object?> values) => With(values).ExecuteNonQuery();

    public override long? Number(params ReadOnlySpan<object?> values) => With(values).ExecuteScalar() as long?;

    public override DbDataReader Rows(params ReadOnlySpan<object?> values) => With(values).ExecuteReader();

    public override void Dispose() => command.Dispose();

    private NpgsqlCommand With(ReadOnlySpan<object?> values)
    {
        for (var i = 0; i < values.Length; i++)
            command.Parameters[i].Value = Kept(values[i]);
        return command;
    }

    // a number in both databases: what SQLite has instead of truth
    private static object Kept(object? value) =>
        value switch
        {
            null => DBNull.Value,
            bool yes => yes ? 1L : 0L,
            int number => (long)number, // one size, whatever was sent first
            _ => value,
        };
}
