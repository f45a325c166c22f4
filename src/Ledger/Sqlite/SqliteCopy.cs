using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace Witnessmark.Ledger.Sqlite;

/// <summary>Copies of SQLite files that stand still by themselves, whoever writes to the original meanwhile.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions but <see cref="IsOne"/>: a file cannot be read or written.</exception>
public static class SqliteCopy
{
    private static readonly byte[] Head = [.. "SQLite format 3\0"u8];

    /// <summary>Whether a file is an SQLite file. SQLite documentation, Database File Format, 1.3.1: the magic header string.</summary>
    public static bool IsOne(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var head = new byte[Head.Length];
        return file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) == head.Length
            && head.AsSpan().SequenceEqual(Head);
    }

    /// <summary>Writes a file as it stands at one moment to another, through to the disk.</summary>
    public static void Write(string from, string to) =>
        Do(
            to,
            () =>
            {
                using (var original = Opened(from, SqliteOpenMode.ReadWrite))
                using (var copy = Opened(to, SqliteOpenMode.ReadWriteCreate))
                {
                    original.BackupDatabase(copy);
                    copy.Run("PRAGMA journal_mode = DELETE"); // one file, readable from a medium that nobody can write to
                }
                using var written = new FileStream(to, FileMode.Open, FileAccess.ReadWrite);
                written.Flush(flushToDisk: true);
                return true;
            }
        );

    /// <summary>What SQLite itself finds wrong with a file, or null.</summary>
    public static string? Fault(string path) =>
        Do(
            path,
            () =>
            {
                using var connection = Opened(path, SqliteOpenMode.ReadOnly);
                using var command = connection.CreateCommand();
                command.CommandText = "PRAGMA integrity_check(3)";
                using var rows = command.ExecuteReader();
                List<string> said = [];
                while (rows.Read())
                    said.Add(rows.GetString(0));
                return said is ["ok"] ? null : string.Join("; ", said);
            }
        );

    private static SqliteConnection Opened(string path, SqliteOpenMode mode)
    {
        var text = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            Mode = mode,
            Pooling = false,
        };
        var connection = new SqliteConnection(text.ConnectionString);
        connection.Open();
        return connection;
    }

    private static T Do<T>(string path, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (DbException broken)
        {
            throw new LedgerUnavailable($"{path}: {broken.Message}", broken);
        }
    }
}
