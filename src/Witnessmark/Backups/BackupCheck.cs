using Witnessmark.Bench.Photographs;
using Witnessmark.Ledger;
using Witnessmark.Ledger.Sqlite;

namespace Witnessmark.Backups;

/// <summary>Whether a backup is whole: every file as it was written, every database sound, every chain of the ledger, every photograph.</summary>
public static class BackupCheck
{
    /// <summary>A sentence for each fault; empty: whole.</summary>
    /// <exception cref="FormatException">It is no backup.</exception>
    /// <exception cref="LedgerUnavailable">Its ledger cannot be read.</exception>
    public static IReadOnlyList<string> Of(string folder)
    {
        var record = BackupRecord.Of(folder);
        string[] changed =
        [
            .. record.Files.Select(f => Fault(folder, f)).OfType<string>(),
            .. Strangers(folder, record),
        ];
        return changed.Length > 0 ? changed : [.. OfContent(folder, record)];
    }

    private static string? Fault(string folder, BackupFile file)
    {
        if (!IsInside(folder, file.Name))
            return $"{file.Name} would lie outside of the backup.";
        return !File.Exists(Path.Combine(folder, file.Name)) ? $"{file.Name} is missing."
            : BackupRun.Described(folder, file.Name) != file ? $"{file.Name} was changed after it was written."
            : null;
    }

    /// <summary>A record that was tampered with could name a file anywhere.</summary>
    private static bool IsInside(string folder, string name) =>
        Path.GetFullPath(Path.Combine(folder, name))
            .StartsWith(Path.GetFullPath(folder) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    private static IEnumerable<string> Strangers(string folder, BackupRecord record) =>
        BackupFiles
            .Of(folder)
            .Except([.. record.Files.Select(f => f.Name), BackupRecord.FileName])
            .Select(name => $"{name} does not belong to the backup.");

    private static IEnumerable<string> OfContent(string folder, BackupRecord record) =>
        [
            .. record.Files.Select(f => OfDatabase(folder, f.Name)).OfType<string>(),
            .. SqliteLedger.Check(folder).Faults,
            .. record.Files.Select(OfPhotograph).OfType<string>(),
        ];

    private static string? OfDatabase(string folder, string name) =>
        SqliteCopy.IsOne(Path.Combine(folder, name)) && SqliteCopy.Fault(Path.Combine(folder, name)) is { } fault
            ? $"{name}: {fault}"
            : null;

    private static string? OfPhotograph(BackupFile file) =>
        IsAnother(file) ? $"{file.Name} is another picture than its name says." : null;

    /// <summary>Whether it is a photograph with another hash than its name.</summary>
    internal static bool IsAnother(BackupFile file) =>
        file.Name.StartsWith("photographs/", StringComparison.Ordinal)
        && Picture.IsHash(Path.GetFileNameWithoutExtension(file.Name))
        && Path.GetFileNameWithoutExtension(file.Name) != file.Sha256;
}
