using System.Text.Json;

namespace Witnessmark.Paper.LogBook;

/// <summary>What a workshop signs with. The private key stays with whoever gives this.</summary>
/// <param name="Key">The public key.</param>
/// <param name="Sign">The signature of bytes: ECDSA with P-256 and SHA-256, R and S of 32 bytes each. The same bytes must give the same
/// signature (RFC 6979), so that the same record gives the same file.</param>
public sealed record ShopSeal(PublicKey Key, Func<byte[], byte[]> Sign)
{
    /// <summary>A JSON object with its signature, as a JWS in compact form.</summary>
    public string Signed(Action<Utf8JsonWriter> members) => Jws.Of(LogBookFile.Value(members), this);
}
