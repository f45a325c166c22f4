using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Witnessmark.Paper.LogBook;

/// <summary>A workshop's public key: a point on the curve P-256.</summary>
/// <remarks><b>Source.</b> RFC 7517 (JWK) and RFC 7518, 6.2.1: <c>kty</c>, <c>crv</c>, <c>x</c>, <c>y</c> in base64url; id by RFC 7638.</remarks>
/// <param name="X">32 bytes, base64url.</param>
/// <param name="Y">32 bytes, base64url.</param>
public sealed record PublicKey(string X, string Y)
{
    /// <summary>Its thumbprint: SHA-256 of its needed members in canonical JSON, base64url.</summary>
    public string Thumbprint { get; } =
        Base64Url.EncodeToString(
            SHA256.HashData(Encoding.UTF8.GetBytes($$"""{"crv":"P-256","kty":"EC","x":"{{X}}","y":"{{Y}}"}"""))
        );

    /// <summary>The id that signatures carry: the first 16 letters of the thumbprint, 96 bits.</summary>
    public string Id => Thumbprint[..16];

    /// <summary>Reads a JWK.</summary>
    /// <exception cref="FormatException">It is no key of this kind.</exception>
    public static PublicKey Read(JsonElement jwk)
    {
        if (Text("kty") != "EC" || Text("crv") != "P-256")
            throw new FormatException("It is not a public key of the curve P-256 (kty \"EC\", crv \"P-256\").");
        var key = new PublicKey(Text("x") ?? "", Text("y") ?? "");
        using var usable = key.Open();
        return key;

        string? Text(string name) =>
            jwk.ValueKind == JsonValueKind.Object
            && jwk.TryGetProperty(name, out var value)
            && value.ValueKind == JsonValueKind.String
                ? value.GetString()
                : null;
    }

    /// <summary>Whether bytes were signed with the key that belongs to this.</summary>
    public bool Verifies(byte[] signed, byte[] signature)
    {
        using var key = Open();
        return key.VerifyData(signed, signature, HashAlgorithmName.SHA256);
    }

    /// <summary>The members of its JWK.</summary>
    public void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("crv", "P-256");
        json.WriteString("kty", "EC");
        json.WriteString("x", X);
        json.WriteString("y", Y);
        json.WriteEndObject();
    }

    private ECDsa Open()
    {
        try
        {
            var point = new ECPoint { X = Base64Url.DecodeFromChars(X), Y = Base64Url.DecodeFromChars(Y) };
            return ECDsa.Create(new ECParameters { Curve = ECCurve.NamedCurves.nistP256, Q = point });
        }
        catch (Exception wrong)
            when (wrong is CryptographicException or FormatException or PlatformNotSupportedException)
        {
            throw new FormatException($"The key is no point on the curve P-256: {wrong.Message}", wrong);
        }
    }
}
