using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;

namespace Witnessmark.Backups;

/// <summary>Brings a backup back into an empty data folder.</summary>
public static class RestoreRun
{
    /// <summary>What it brought back.</summary>
    /// <exception cref="FormatException">It is no backup.</exception>
    /// <exception cref="BrokenBackup">It is not whole; nothing was written.</exception>
    /// <exception cref="IOException">The data folder is served or not empty, or the disk is full.</exception>
    public static BackupRecord Run(string backup, string data, TimeProvider clock)
    {
        if (BackupCheck.Of(backup) is { Count: > 0 } faults)
            throw new BrokenBackup(faults);
        var record = BackupRecord.Of(backup);
        OwnFolder.Make(data);
        using var held = ServedFolder.Hold(data);
        if (BackupFiles.Of(data) is [var first, ..])
            throw new IOException(
                $"{data} is not empty (it has {first}). Nothing is overwritten: move it away first, or name another folder."
            );
        try
        {
            foreach (var file in record.Files)
                Copy(Path.Combine(backup, file.Name), Path.Combine(data, file.Name));
            RestoredLedger.Rename(data, clock);
            return record;
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            // half a shop must not be served: its ledger would still bear the old name, and no device would send again
            foreach (var file in record.Files.Where(f => File.Exists(Path.Combine(data, f.Name))))
                File.Delete(Path.Combine(data, file.Name));
            throw;
        }
    }

    private static void Copy(string from, string to)
    {
        OwnFolder.Make(Path.GetDirectoryName(to)!);
        File.Copy(from, to);
        File.SetAttributes(to, File.GetAttributes(to) & ~FileAttributes.ReadOnly); // from a medium that nobody can write to
        using var written = new FileStream(to, FileMode.Open, FileAccess.ReadWrite);
        written.Flush(flushToDisk: true);
    }
}
