using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>
/// The tables of one file as the steps by which they came to be. SQLite's own <c>user_version</c> counts those that were taken; a
/// file of an older program takes the steps that it lacks, all in one transaction.
/// </summary>
/// <param name="what">What the file keeps, as the start of a sentence: <c>The machines</c>.</param>
/// <param name="steps">In order; a step is never changed, another is added.</param>
internal sealed class SchemaSteps(string what, params string[] steps)
{
    /// <summary>Takes the steps that the file lacks.</summary>
    /// <exception cref="LedgerUnavailable">A newer program made the file.</exception>
    public void BringUpToDate(SqliteConnection connection)
    {
        Demand(connection.Version());
        if (connection.Version() == steps.Length)
            return;
        using var transaction = connection.BeginTransaction();
        for (var version = connection.Version(); version < steps.Length; version++) // another program may have been quicker
            connection.Run($"{steps[version]} PRAGMA user_version = {version + 1};");
        transaction.Commit();
    }

    /// <exception cref="LedgerUnavailable">The file is newer than this program.</exception>
    public void Demand(int version)
    {
        if (version > steps.Length)
            throw new LedgerUnavailable(
                $"{what} were kept by a newer Witnessmark (form {version}, this one knows up to {steps.Length}). Use that one."
            );
    }
}
