using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>Every connection writes through to the disk before a commit returns.</summary>
/// <remarks><b>Source.</b> SQLite documentation, PRAGMA synchronous: in WAL mode only FULL keeps a commit over a loss of power.</remarks>
internal sealed class DurableConnection : DbConnectionInterceptor
{
    /// <inheritdoc />
    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Set(connection);

    /// <inheritdoc />
    public override Task ConnectionOpenedAsync(
        DbConnection connection,
        ConnectionEndEventData eventData,
        CancellationToken cancellationToken = default
    )
    {
        Set(connection);
        return Task.CompletedTask;
    }

    private static void Set(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;";
        command.ExecuteNonQuery();
    }
}
