using Witnessmark.Ledger.Sqlite;
using Witnessmark.OwnShop;

namespace Witnessmark.Backups;

/// <summary>The files of a data folder that are worth keeping: all but what SQLite, a running server or a write in progress keeps beside them.</summary>
internal static class BackupFiles
{
    private static readonly string[] Passing = ["-wal", "-shm", "-journal", ".new", ".first", ".lock"];

    /// <summary>Their names with <c>/</c>, the ledger first.</summary>
    public static IReadOnlyList<string> Of(string data) =>
        [
            .. Directory
                .EnumerateFiles(data, "*", SearchOption.AllDirectories)
                .Select(f => Path.GetRelativePath(data, f).Replace('\\', '/'))
                .Where(IsKept)
                .OrderBy(n => n != SqliteLedger.FileName)
                .ThenBy(n => n, StringComparer.Ordinal),
        ];

    // a demo that was put away is no part of the shop
    private static bool IsKept(string name) =>
        !name.StartsWith(DemoPutAway.Prefix, StringComparison.Ordinal)
        && !Passing.Any(end => name.EndsWith(end, StringComparison.Ordinal));
}
