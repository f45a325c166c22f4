using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>One SQLite file beside the ledger, opened for each piece of work and closed after it.</summary>
/// <param name="path">Of the file.</param>
/// <param name="foreignKeys">Whether references between its tables are watched.</param>
/// <param name="begin">Run on each connection before anything else.</param>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
internal sealed class KeptFile(string path, bool foreignKeys, Action<SqliteConnection> begin)
{
    private readonly string connectionText = new SqliteConnectionStringBuilder
    {
        DataSource = path,
        ForeignKeys = foreignKeys,
        Pooling = false,
    }.ConnectionString;

    /// <summary>Makes the file when it is not there, and brings its tables up to date.</summary>
    public void Prepare(SchemaSteps schema)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        Do(connection =>
        {
            SqliteLedger.Demand(connection.ServerVersion);
            schema.Demand(connection.Version()); // before anything is changed
            connection.Run("PRAGMA journal_mode = WAL");
            schema.BringUpToDate(connection);
            return true;
        });
    }

    /// <summary>Does one piece of work.</summary>
    public T Do<T>(Func<SqliteConnection, T> work)
    {
        try
        {
            using var connection = new SqliteConnection(connectionText);
            connection.Open();
            begin(connection);
            return work(connection);
        }
        catch (DbException broken)
        {
            throw new LedgerUnavailable($"{connectionText}: {broken.Message}", broken);
        }
    }
}
