using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Doors;

/// <summary>What a lead's browser holds for some minutes after the passphrase was shown again: the moment, bound to the session by the shop's key.</summary>
public static class ShownAgain
{
    /// <summary>For so long a passphrase that was shown is good for what an open session is not enough for. Common practice, no source.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(5);

    /// <summary>For one session.</summary>
    public static string Make(byte[] key, DateTimeOffset now, string session)
    {
        var at = now.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture);
        return $"{at}.{Code(key, at, session)}";
    }

    /// <summary>When it was shown; null when this is none of the shop for this session.</summary>
    public static DateTimeOffset? At(string? shown, byte[] key, string session) =>
        shown?.Split('.') is [var at, var code]
        && CryptographicOperations.FixedTimeEquals(
            Encoding.UTF8.GetBytes(code),
            Encoding.UTF8.GetBytes(Code(key, at, session))
        )
            ? DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(at, CultureInfo.InvariantCulture))
            : null;

    private static string Code(byte[] key, string at, string session) =>
        Base64Url.EncodeToString(
            HMACSHA256.HashData(key, Encoding.UTF8.GetBytes($"witnessmark shown 1\n{at}\n{session}"))
        );
}
