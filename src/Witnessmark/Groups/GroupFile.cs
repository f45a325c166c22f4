using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using Witnessmark.Keys;

namespace Witnessmark.Groups;

/// <summary>How a server gets to its shop in the store, and what opens that shop's sealed secrets. It is on no command line, where every user of the computer could read it.</summary>
/// <param name="Connection">A connection text of PostgreSQL.</param>
/// <param name="Key">What seals, in base64; null in the file of whoever only adds shops.</param>
public sealed record GroupFile(string Connection, string? Key)
{
    /// <summary>The variable that may hold the file's text in place of a file.</summary>
    public const string Variable = "WITNESSMARK_GROUP";

    private static readonly JsonSerializerOptions Form = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        DefaultIgnoreCondition = System.Text.Json.Serialization.JsonIgnoreCondition.WhenWritingNull,
    };

    /// <summary>What opens the shop's secrets.</summary>
    /// <exception cref="FormatException">There is none, or it is of another length.</exception>
    [System.Text.Json.Serialization.JsonIgnore]
    public byte[] OpensSecrets
    {
        get
        {
            var bytes = new byte[SealedSecret.KeyBytes];
            return Convert.TryFromBase64String(Key ?? "", bytes, out var count) && count == bytes.Length
                ? bytes
                : throw new FormatException(
                    $"The group's file has no \"key\" of {SealedSecret.KeyBytes} bytes in base64: take the one that witnessmark group add wrote for this shop."
                );
        }
    }

    /// <summary>A file for the servers of a shop.</summary>
    public static GroupFile New(string connection) =>
        new(connection, Convert.ToBase64String(RandomNumberGenerator.GetBytes(SealedSecret.KeyBytes)));

    /// <summary>Reads it.</summary>
    /// <param name="path">Its path; null: the variable holds its text.</param>
    /// <exception cref="FormatException">It is missing, no such file, or others may read it.</exception>
    public static GroupFile Read(string? path)
    {
        if (path is null)
            return Parse(
                Environment.GetEnvironmentVariable(Variable)
                    ?? throw new FormatException($"--group names no file, and {Variable} is not set."),
                Variable
            );
        if (!File.Exists(path))
            throw new FormatException($"There is no file {path}.");
        return SecretFile.IsOpenToOthers(path)
            ? throw new FormatException($"Others at this computer may read {path}, which holds a password: chmod 600.")
            : Parse(File.ReadAllText(path), path);
    }

    /// <summary>Writes it, for its owner alone.</summary>
    /// <exception cref="IOException">There is one already.</exception>
    public void Write(string path) =>
        SecretFile.Write(Path.GetFullPath(path), JsonSerializer.Serialize(this, Form) + "\n", over: false);

    private static GroupFile Parse(string text, string where)
    {
        try
        {
            return JsonSerializer.Deserialize<GroupFile>(text, Form) is { Connection: not null } file
                ? file
                : throw new FormatException($"{where} has no \"connection\".");
        }
        catch (JsonException wrong)
        {
            throw new FormatException($"{where} cannot be read: {wrong.Message}", wrong);
        }
    }
}
