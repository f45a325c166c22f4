using System.Data.Common;
using Npgsql;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>Rows of one kind of one shop in the group's store.</summary>
/// <param name="source">The way there.</param>
/// <param name="turn">Whose turn it is to change them, among the shop's servers.</param>
internal sealed class GroupRows(NpgsqlDataSource source, string turn) : KeptRows
{
    /// <inheritdoc />
    public override T Change<T>(Func<DbConnection, T> change) =>
        Do(connection =>
        {
            using var transaction = connection.BeginTransaction();
            Turn.Take(connection, turn);
            var done = change(connection);
            Turn.Keep(connection, transaction.Commit);
            return done;
        });

    /// <inheritdoc />
    public override T Look<T>(Func<DbConnection, T> look) => Do(look);

    private T Do<T>(Func<NpgsqlConnection, T> work)
    {
        try
        {
            using var connection = source.OpenConnection();
            return work(connection);
        }
        catch (DbException broken)
        {
            throw new LedgerUnavailable($"The store cannot be used: {broken.GetBaseException().Message}", broken);
        }
    }
}
