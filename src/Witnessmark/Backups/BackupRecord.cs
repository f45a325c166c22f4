using System.Text.Encodings.Web;
using System.Text.Json;

namespace Witnessmark.Backups;

/// <summary>What a backup says of itself, in <c>backup.json</c>.</summary>
/// <param name="Backup">The form of this file: 1.</param>
/// <param name="At">When it was begun, UTC.</param>
/// <param name="Shop">Id of the workshop, where its file says one.</param>
/// <param name="Entries">How many entries its ledger has.</param>
/// <param name="Files">All its files but this one, in the order of their names.</param>
public sealed record BackupRecord(
    int Backup,
    DateTimeOffset At,
    string? Shop,
    int Entries,
    IReadOnlyList<BackupFile> Files
)
{
    /// <summary>Name of the file in the backup.</summary>
    public const string FileName = "backup.json";

    /// <summary>The form that this program writes, and the newest that it reads.</summary>
    public const int Form = 1;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>As JSON.</summary>
    public string Text() => JsonSerializer.Serialize(this, Options) + "\n";

    /// <summary>The record of a folder.</summary>
    /// <exception cref="FormatException">There is none, or it cannot be read.</exception>
    public static BackupRecord Of(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path))
            throw new FormatException($"{folder} is no whole backup: it has no {FileName}, which is written last.");
        try
        {
            var record = JsonSerializer.Deserialize<BackupRecord>(File.ReadAllText(path), Options);
            return record is { Files: not null, Backup: >= 1 and <= Form }
                ? record
                : throw new FormatException(
                    $"{path} is of form {record?.Backup}; this Witnessmark knows up to {Form}."
                );
        }
        catch (JsonException broken)
        {
            throw new FormatException($"{path} cannot be read: {broken.Message}", broken);
        }
    }
}

/// <summary>One file of a backup.</summary>
/// <param name="Name">Its path in the data folder, with <c>/</c>.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">Its hash, lower-case hex.</param>
public sealed record BackupFile(string Name, long Bytes, string Sha256);
