using System.Data.Common;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Ledger.Campaigns;

/// <summary>
/// The first import: into a file beside, that takes the store's name when it is whole. Nobody can read it before, so that it
/// needs no write-ahead log, through which every page would be written twice.
/// </summary>
internal static class FirstImport
{
    private const string Beside = ".first";
    private const string Lock = ".lock";

    /// <exception cref="LedgerUnavailable">Another import runs or was quicker, or the disk is full.</exception>
    public static ImportTotals Run(string path, Func<string, KeptFile> file, Func<DbConnection, ImportTotals> import)
    {
        using var alone = Alone(path);
        if (File.Exists(path))
            throw new LedgerUnavailable($"{path} was made by another import meanwhile. Import the list again.");
        var beside = file(path + Beside);
        beside.Prepare(CampaignSchema.Steps, journal: "DELETE"); // what a power cut left there is rolled back by this
        var totals = beside.Change(import);
        TakeName(path);
        return totals;
    }

    /// <summary>Held until the file has its name: a second import would write on into a file that is being renamed.</summary>
    private static FileStream Alone(string path)
    {
        try
        {
            OwnFolder.Make(Path.GetDirectoryName(Path.GetFullPath(path))!);
            return new(path + Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException held)
        {
            throw new LedgerUnavailable($"Another import is running in this folder: {held.Message}", held);
        }
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
}
