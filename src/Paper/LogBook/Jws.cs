using System.Buffers.Text;
using System.Text;
using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Paper.LogBook;

/// <summary>A signed JSON object in compact form: header, content and signature in base64url, with dots between.</summary>
/// <remarks><b>Source.</b> RFC 7515 (JWS), 3.1 and 5; RFC 7518, 3.4: ES256. Header and content are canonical JSON (RFC 8785).</remarks>
/// <param name="KeyId">Which key signed it, as the header says.</param>
/// <param name="Content">What was signed.</param>
/// <param name="Signed">The bytes that were signed.</param>
/// <param name="Signature">R and S.</param>
public sealed record Jws(string KeyId, JsonElement Content, byte[] Signed, byte[] Signature)
{
    private const string Algorithm = "ES256";

    /// <summary>Signs an object.</summary>
    internal static string Of(JsonElement content, ShopSeal seal)
    {
        var header = LogBookFile.Value(json =>
        {
            json.WriteString("alg", Algorithm);
            json.WriteString("kid", seal.Key.Id);
        });
        var signed = $"{Encoded(header)}.{Encoded(content)}";
        return $"{signed}.{Base64Url.EncodeToString(seal.Sign(Encoding.ASCII.GetBytes(signed)))}";
    }

    /// <summary>Reads the compact form.</summary>
    /// <exception cref="FormatException">It is none, or signed in another way than ES256.</exception>
    public static Jws Read(string compact)
    {
        var parts = compact.Split('.');
        if (parts.Length != 3)
            throw new FormatException("A signature has three parts with dots between.");
        try
        {
            var header = Decoded(parts[0]);
            if (TextOf(header, "alg") != Algorithm)
                throw new FormatException($"The signature is not {Algorithm}.");
            return new(
                TextOf(header, "kid") ?? "",
                Decoded(parts[1]),
                Encoding.ASCII.GetBytes($"{parts[0]}.{parts[1]}"),
                Base64Url.DecodeFromChars(parts[2])
            );
        }
        catch (JsonException broken)
        {
            throw new FormatException($"The signature's parts are not JSON: {broken.Message}", broken);
        }
    }

    private static string Encoded(JsonElement json) =>
        Base64Url.EncodeToString(Encoding.UTF8.GetBytes(CanonicalJson.Of(json)));

    private static JsonElement Decoded(string part)
    {
        using var document = JsonDocument.Parse(Base64Url.DecodeFromChars(part));
        return document.RootElement.Clone();
    }

    /// <summary>A text of what was signed, or null.</summary>
    public string? Says(string name) => TextOf(Content, name);

    private static string? TextOf(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object
        && json.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.String
            ? value.GetString()
            : null;
}
