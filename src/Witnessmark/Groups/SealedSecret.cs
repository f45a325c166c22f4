using System.Security.Cryptography;
using System.Text;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Groups;

/// <summary>A secret as it lies in the store: sealed with a key that the store never sees, bound to its shop and its name.</summary>
/// <remarks><b>Source.</b> NIST SP 800-38D (AES in Galois/Counter Mode): 256-bit key, 96-bit nonce drawn by chance, 128-bit tag.</remarks>
public static class SealedSecret
{
    /// <summary>The name of what a shop signs with.</summary>
    public const string SigningKey = "signing key";

    /// <summary>Bytes of the key that seals.</summary>
    public const int KeyBytes = 32;

    private const int NonceBytes = 12;
    private const int TagBytes = 16;

    /// <summary>Nonce, tag, and what is sealed.</summary>
    public static byte[] Seal(byte[] key, ShopName shop, string name, string secret)
    {
        var plain = Encoding.UTF8.GetBytes(secret);
        var made = new byte[NonceBytes + TagBytes + plain.Length];
        RandomNumberGenerator.Fill(made.AsSpan(0, NonceBytes));
        using var aes = new AesGcm(key, TagBytes);
        aes.Encrypt(
            made.AsSpan(0, NonceBytes),
            plain,
            made.AsSpan(NonceBytes + TagBytes),
            made.AsSpan(NonceBytes, TagBytes),
            BoundTo(shop, name)
        );
        return made;
    }

    /// <summary>The secret.</summary>
    /// <exception cref="FormatException">The key is not the one that it was sealed with, or it was changed, or it is another shop's.</exception>
    public static string Open(byte[] key, ShopName shop, string name, byte[] kept)
    {
        try
        {
            var plain = new byte[kept.Length - NonceBytes - TagBytes];
            using var aes = new AesGcm(key, TagBytes);
            aes.Decrypt(
                kept.AsSpan(0, NonceBytes),
                kept.AsSpan(NonceBytes + TagBytes),
                kept.AsSpan(NonceBytes, TagBytes),
                plain,
                BoundTo(shop, name)
            );
            return Encoding.UTF8.GetString(plain);
        }
        catch (Exception wrong) when (wrong is CryptographicException or OverflowException or ArgumentException)
        {
            throw new FormatException(
                $"The {name} of the shop \"{shop}\" in the store is not opened by the key in this server's file. Put the right file back; a new key would be a stranger to everybody.",
                wrong
            );
        }
    }

    private static byte[] BoundTo(ShopName shop, string name) =>
        Encoding.UTF8.GetBytes($"witnessmark sealed 1\n{shop}\n{name}");
}
