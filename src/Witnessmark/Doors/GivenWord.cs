using System.Buffers.Text;
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Doors;

/// <summary>
/// What the shop gives for a word to stand in an entry: the moment, bound by the shop's key to whose word it is, where, in which job and for what. The shop
/// knows its own again without keeping it.
/// </summary>
public static class GivenWord
{
    /// <summary>
    /// So long after it was given an entry may still bring it. It is written into the entry at once; a day lets a device that lost the shop on the way, or one
    /// that brings all anew to a restored backup of last night, still be believed. Common practice, no source.
    /// </summary>
    public static readonly TimeSpan Life = TimeSpan.FromDays(1);

    /// <summary>For one word in one job on one device.</summary>
    public static string Make(byte[] key, DateTimeOffset now, Word word, string device, string job)
    {
        var at = now.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture);
        return $"{at}.{Code(key, at, word, device, job)}";
    }

    /// <summary>Whether it is one of the shop for these, and not over.</summary>
    public static bool Fits(string given, byte[] key, DateTimeOffset now, Word word, string device, string job) =>
        given.Split('.') is [var at, var code]
        && CryptographicOperations.FixedTimeEquals(Bytes(code), Bytes(Code(key, at, word, device, job)))
        && now - DateTimeOffset.FromUnixTimeMilliseconds(long.Parse(at, CultureInfo.InvariantCulture)) <= Life;

    // as JSON: wherever a text ends, another list of texts gives other bytes
    private static string Code(byte[] key, string at, Word word, string device, string job) =>
        Base64Url.EncodeToString(
            HMACSHA256.HashData(
                key,
                JsonSerializer.SerializeToUtf8Bytes<string[]>([
                    "witnessmark word 1",
                    at,
                    word.Kind,
                    word.Name,
                    device,
                    job,
                    .. word.About,
                ])
            )
        );

    private static byte[] Bytes(string text) => System.Text.Encoding.UTF8.GetBytes(text);
}
