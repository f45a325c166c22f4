using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>One SQLite file beside the ledger, opened for each piece of work and closed after it.</summary>
/// <param name="path">Of the file.</param>
/// <param name="foreignKeys">Whether references between its tables are watched.</param>
/// <param name="begin">Run on each connection before anything else.</param>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
internal sealed class KeptFile(string path, bool foreignKeys, Action<SqliteConnection> begin) : KeptRows
{
    /// <summary>Makes the file when it is not there, and brings its tables up to date.</summary>
    /// <param name="schema">The tables.</param>
    /// <param name="journal">SQLite's name of how it keeps its promise; WAL lets others read while one writes.</param>
    public void Prepare(SchemaSteps schema, string journal = "WAL")
    {
        OwnFolder.Make(Path.GetDirectoryName(Path.GetFullPath(path))!);
        Do(
            SqliteOpenMode.ReadWriteCreate,
            connection =>
            {
                SqliteLedger.Demand(connection.ServerVersion);
                schema.Demand(connection.Version()); // before anything is changed
                connection.Run($"PRAGMA journal_mode = {journal}");
                schema.BringUpToDate(connection);
                return true;
            }
        );
    }

    /// <inheritdoc />
    public override T Change<T>(Func<DbConnection, T> change) =>
        Do(connection =>
        {
            using var transaction = connection.BeginTransaction(deferred: false);
            var done = change(connection);
            transaction.Commit();
            return done;
        });

    /// <inheritdoc />
    public override T Look<T>(Func<DbConnection, T> look) => Do<T>(look);

    /// <summary>Does one piece of work.</summary>
    public T Do<T>(Func<SqliteConnection, T> work) => Do(SqliteOpenMode.ReadWrite, work);

    private T Do<T>(SqliteOpenMode mode, Func<SqliteConnection, T> work)
    {
        var connectionText = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            ForeignKeys = foreignKeys,
            Mode = mode,
            Pooling = false,
        }.ConnectionString;
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
