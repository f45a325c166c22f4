using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text.Json;
using Org.BouncyCastle.Asn1.Sec;
using Org.BouncyCastle.Crypto.Digests;
using Org.BouncyCastle.Crypto.Parameters;
using Org.BouncyCastle.Crypto.Signers;
using Org.BouncyCastle.Math;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Keys;

/// <summary>The workshop's private key. It never leaves the file that it stands in.</summary>
/// <remarks>
/// <para><b>Source.</b> RFC 7518, 6.2.2 (the file); RFC 6979, 3.2 (the nonce comes from key and message, so that the same record
/// gives the same signature); FIPS 186-5 (ECDSA, P-256).</para>
/// </remarks>
public sealed class ShopKey
{
    private const int Half = 32;
    private readonly ECPrivateKeyParameters secret;
    private readonly PublicKey shown;

    private ShopKey(byte[] d)
    {
        var curve = SecNamedCurves.GetByName("secp256r1");
        var domain = new ECDomainParameters(curve);
        secret = new(new BigInteger(1, d), domain);
        var point = domain.G.Multiply(secret.D).Normalize();
        shown = new(Encoded(point.AffineXCoord.GetEncoded()), Encoded(point.AffineYCoord.GetEncoded()));
    }

    /// <summary>What signs with it.</summary>
    public ShopSeal Seal => new(shown, Sign);

    /// <summary>The key of a file.</summary>
    /// <exception cref="FormatException">The file holds no private key of P-256, or one whose halves do not belong together.</exception>
    public static ShopKey Read(string text)
    {
        try
        {
            using var jwk = JsonDocument.Parse(text);
            var written = PublicKey.Read(jwk.RootElement);
            if (
                !jwk.RootElement.TryGetProperty("d", out var d)
                || Base64Url.DecodeFromChars(d.GetString()) is not { Length: Half } bytes
            )
                throw new FormatException("It holds no private key (\"d\", 32 bytes in base64url).");
            var key = new ShopKey(bytes);
            return key.shown == written
                ? key
                : throw new FormatException("Its private and its public part do not belong together.");
        }
        catch (Exception wrong) when (wrong is JsonException or InvalidOperationException)
        {
            throw new FormatException($"It is no key: {wrong.Message}", wrong);
        }
    }

    /// <summary>The text of a new file.</summary>
    /// <param name="chance">32 bytes drawn by chance, within 1 and the order of the curve.</param>
    public static string NewFile(byte[] chance)
    {
        var key = new ShopKey(chance);
        return $$"""{"crv":"P-256","d":"{{Encoded(chance)}}","kty":"EC","x":"{{key.shown.X}}","y":"{{key.shown.Y}}"}"""
            + "\n";
    }

    /// <summary>A private number for <see cref="NewFile"/>.</summary>
    public static byte[] Drawn()
    {
        using var fresh = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        return fresh.ExportParameters(includePrivateParameters: true).D!;
    }

    private byte[] Sign(byte[] message)
    {
        var signer = new ECDsaSigner(new HMacDsaKCalculator(new Sha256Digest()));
        signer.Init(true, secret);
        var parts = signer.GenerateSignature(SHA256.HashData(message));
        return [.. Padded(parts[0]), .. Padded(parts[1])];
    }

    private static byte[] Padded(BigInteger number)
    {
        var bytes = number.ToByteArrayUnsigned();
        return [.. new byte[Half - bytes.Length], .. bytes];
    }

    private static string Encoded(byte[] bytes) => Base64Url.EncodeToString(bytes);
}
