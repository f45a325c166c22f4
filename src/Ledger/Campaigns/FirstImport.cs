using Microsoft.Data.Sqlite;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// The first import: into a file beside, that takes the store's name when it is whole. Nobody can read it before, so that it
/// needs no write-ahead log, through which every page would be written twice.
/// </summary>
internal static class FirstImport
{
    private const string Beside = ".first";

    /// <exception cref="LedgerUnavailable">Another import was quicker, or the disk is full.</exception>
    public static ImportTotals Run(
        string path,
        Func<string, KeptFile> file,
        Func<SqliteConnection, ImportTotals> import
    )
    {
        var beside = file(path + Beside);
        beside.Prepare(CampaignSchema.Steps, journal: "DELETE"); // what a power cut left there is rolled back by this
        var totals = beside.Do(connection =>
        {
            connection.Run("PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; COMMIT"); // one at a time
            return File.Exists(path) ? throw Overtaken(path) : import(connection);
        });
        TakeName(path);
        return totals;
    }

    private static void TakeName(string path)
    {
        try
        {
            File.Move(path + Beside, path);
        }
        catch (IOException broken)
        {
            throw new LedgerUnavailable($"{path}: the imported list cannot take its place: {broken.Message}", broken);
        }
    }

    private static LedgerUnavailable Overtaken(string path) =>
        new($"{path} was made by another import meanwhile. Import the list again.");
}
