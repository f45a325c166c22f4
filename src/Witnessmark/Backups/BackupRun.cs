using System.Security.Cryptography;
using Witnessmark.Bench.Jobs;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;
using Witnessmark.Serve;

namespace Witnessmark.Backups;

/// <summary>Writes a backup of a data folder, also while it is served. It has its name only when it was opened and found whole.</summary>
public static class BackupRun
{
    private const string Unfinished = ".unfinished";

    /// <summary>The folder of the finished backup and its record.</summary>
    /// <exception cref="IOException">A disk is full or a file cannot be read; nothing is left that looks like a backup.</exception>
    /// <exception cref="BrokenBackup">What was written is not whole: the data folder itself is broken.</exception>
    public static (string Folder, BackupRecord Record) Write(string data, string into, DateTimeOffset at)
    {
        var folder = Path.Combine(Path.GetFullPath(into), $"witnessmark-{at.UtcDateTime:yyyy-MM-dd'T'HHmmss'Z'}");
        if (IsWithin(folder, data))
            throw new IOException(
                $"{into} lies in the data folder: each backup would hold all before it, and goes with the same disk. Name another folder."
            );
        if (Directory.Exists(folder))
            throw new IOException($"{folder} is there already.");
        var half = folder + Unfinished;
        try
        {
            var record = Copy(data, half, at);
            if (BackupCheck.Of(half) is { Count: > 0 } faults)
                throw new BrokenBackup(faults);
            Directory.Move(half, folder);
            return (folder, record);
        }
        finally
        {
            if (Directory.Exists(half))
                Directory.Delete(half, recursive: true);
        }
    }

    private static bool IsWithin(string folder, string data) =>
        folder.StartsWith(
            Path.GetFullPath(data).TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar,
            StringComparison.Ordinal
        );

    private static BackupRecord Copy(string data, string half, DateTimeOffset at)
    {
        // The ledger first: a photograph that an entry names was there before the entry, or comes again from its device.
        var names = BackupFiles.Of(data);
        foreach (var name in names)
            Copy(Path.Combine(data, name), Path.Combine(half, name));
        var shop = WorkbenchFiles.Read(new DataFolder(data).Workbench()).Bench?.Workshop.Id;
        var entries = SqliteLedger.Check(half).Entries;
        var record = new BackupRecord(BackupRecord.Form, at, shop, entries, [.. names.Select(n => Described(half, n))]);
        Put(Path.Combine(half, BackupRecord.FileName), record.Text());
        return record;
    }

    private static void Copy(string from, string to)
    {
        OwnFolder.Make(Path.GetDirectoryName(to)!);
        if (SqliteCopy.IsOne(from))
        {
            SqliteCopy.Write(from, to);
            return;
        }
        File.Copy(from, to); // with its rights: the shop's key is nobody else's to read
        using var written = new FileStream(to, FileMode.Open, FileAccess.ReadWrite);
        written.Flush(flushToDisk: true);
    }

    private static void Put(string path, string text)
    {
        using var file = new FileStream(path, FileMode.CreateNew);
        file.Write(System.Text.Encoding.UTF8.GetBytes(text));
        file.Flush(flushToDisk: true);
    }

    internal static BackupFile Described(string folder, string name)
    {
        using var file = File.OpenRead(Path.Combine(folder, name));
        return new(name, file.Length, Convert.ToHexStringLower(SHA256.HashData(file)));
    }
}

/// <summary>What was copied is not whole, a sentence for each fault.</summary>
public sealed class BrokenBackup(IReadOnlyList<string> faults) : IOException(string.Join(" ", faults))
{
    /// <summary>The faults.</summary>
    public IReadOnlyList<string> Faults => faults;
}
