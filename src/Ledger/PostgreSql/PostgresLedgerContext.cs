using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>The model in the group's store. The tables are those of one shop: its connections see its own part under their plain names.</summary>
public sealed class PostgresLedgerContext(DbContextOptions<PostgresLedgerContext> options) : LedgerContext(options)
{
    private NpgsqlConnection Connection => (NpgsqlConnection)Database.GetDbConnection();

    /// <inheritdoc />
    public override IDbContextTransaction BeginWriting()
    {
        var transaction = Database.BeginTransaction();
        Turn.Take(Connection, Turn.Ledger);
        return transaction;
    }

    /// <inheritdoc />
    public override void Keep(IDbContextTransaction written) => Turn.Keep(Connection, written.Commit);

    internal static PostgresLedgerContext Through(NpgsqlDataSource source) =>
        new(new DbContextOptionsBuilder<PostgresLedgerContext>().UseNpgsql(source).Options);

    /// <summary>Over an open connection, which stays open.</summary>
    internal static PostgresLedgerContext Over(DbConnection connection) =>
        new(new DbContextOptionsBuilder<PostgresLedgerContext>().UseNpgsql(connection).Options);
}
