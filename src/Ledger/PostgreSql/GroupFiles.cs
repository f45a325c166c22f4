using System.Data.Common;
using System.Security.Cryptography;

namespace Witnessmark.Ledger.PostgreSql;

/// <summary>What a shop alone has as files: photographs by their hash, and secrets, sealed by whoever brings them.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions.</exception>
public sealed class GroupFiles
{
    private readonly KeptRows kept;

    internal GroupFiles(KeptRows kept) => this.kept = kept;

    /// <summary>A photograph's bytes; null when the shop does not have it.</summary>
    public byte[]? Photograph(string sha256) =>
        kept.Look(c => c.Rows("SELECT bytes FROM photograph WHERE sha256 = $1", Bytes, sha256)).SingleOrDefault();

    /// <summary>Keeps a photograph; false when it was there.</summary>
    public bool Put(string sha256, byte[] photograph) =>
        kept.Change(c =>
            c.Change(
                "INSERT INTO photograph (sha256, bytes) VALUES ($1, $2) ON CONFLICT DO NOTHING",
                sha256,
                photograph
            )
        ) == 1;

    /// <summary>Names of photographs whose bytes have another hash, and how many photographs there are.</summary>
    public (int Count, IReadOnlyList<string> Changed) CheckPhotographs() =>
        kept.Look(c =>
        {
            var names = c.Rows("SELECT sha256 FROM photograph ORDER BY sha256", row => row.GetString(0));
            string[] changed =
            [
                .. names.Where(name =>
                    HashOf(c.Rows("SELECT bytes FROM photograph WHERE sha256 = $1", Bytes, name)[0]) != name
                ),
            ];
            return (names.Count, (IReadOnlyList<string>)changed);
        });

    /// <summary>The log book of that name; null when there is none.</summary>
    public string? LogBook(string name) => kept.Look(c => LogBook(c, name));

    /// <summary>Changes the log book of a name; nobody else does meanwhile.</summary>
    public void ChangeLogBook(string name, Func<string?, string> change) =>
        kept.Change(c =>
            c.Change(
                "INSERT INTO log_book (name, book) VALUES ($1, $2) ON CONFLICT (name) DO UPDATE SET book = excluded.book",
                name,
                change(LogBook(c, name))
            )
        );

    /// <summary>A secret as it was sealed; null when there is none of that name.</summary>
    public byte[]? Secret(string name) =>
        kept.Look(c => c.Rows("SELECT sealed FROM sealed_secret WHERE name = $1", Bytes, name)).SingleOrDefault();

    /// <summary>Keeps a sealed secret unless there is one of that name; the one that is kept.</summary>
    public byte[] SecretOr(string name, byte[] made) =>
        kept.Change(c =>
        {
            c.Change("INSERT INTO sealed_secret (name, sealed) VALUES ($1, $2) ON CONFLICT DO NOTHING", name, made);
            return c.Rows("SELECT sealed FROM sealed_secret WHERE name = $1", Bytes, name).Single();
        });

    private static string? LogBook(DbConnection connection, string name) =>
        connection.Rows("SELECT book FROM log_book WHERE name = $1", row => row.GetString(0), name).SingleOrDefault();

    internal static string HashOf(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static byte[] Bytes(DbDataReader row) => row.GetFieldValue<byte[]>(0);
}
