using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Witnessmark.Doors;

/// <summary>
/// What the shop gives to somebody who showed again who they are, to stand in a release. The shop knows its own again without keeping it: a confirmation given
/// after a backup still holds when that backup is restored.
/// </summary>
public static class Confirmation
{
    /// <summary>For one person on one device and one job.</summary>
    public static string Make(byte[] key, DateTimeOffset now, string person, string device, string job)
    {
        var at = now.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture);
        return $"{at}.{Code(key, at, person, device, job)}";
    }

    /// <summary>Whether it is one of the shop for these.</summary>
    public static bool Fits(string confirmation, byte[] key, string person, string device, string job) =>
        confirmation.Split('.') is [var at, var code]
        && CryptographicOperations.FixedTimeEquals(
            Encoding.UTF8.GetBytes(code),
            Encoding.UTF8.GetBytes(Code(key, at, person, device, job))
        );

    private static string Code(byte[] key, params string[] parts) =>
        Base64Url.EncodeToString(
            HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(string.Join('\n', ["witnessmark release 1", .. parts])))
        );
}
