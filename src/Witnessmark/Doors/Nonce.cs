using System.Buffers.Binary;
using System.Buffers.Text;
using System.Security.Cryptography;

namespace Witnessmark.Doors;

/// <summary>
/// A number that a device signs to show that it holds its key now. The shop knows its own again by a code over time and chance, so it keeps none
/// that was not used: nobody fills its disk by asking.
/// </summary>
public static class Nonce
{
    private const int Stamp = 8;
    private const int Chance = 16;
    private const int Length = Stamp + Chance + HMACSHA256.HashSizeInBytes;

    /// <summary>For so long it is good.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(2);

    /// <summary>A new one.</summary>
    public static string Make(byte[] key, DateTimeOffset now)
    {
        var bytes = new byte[Length];
        BinaryPrimitives.WriteInt64BigEndian(bytes, now.ToUnixTimeMilliseconds());
        RandomNumberGenerator.Fill(bytes.AsSpan(Stamp, Chance));
        HMACSHA256.HashData(key, bytes.AsSpan(0, Stamp + Chance), bytes.AsSpan(Stamp + Chance));
        return Base64Url.EncodeToString(bytes);
    }

    /// <summary>Until when it is good; null when it is not the shop's, or over.</summary>
    public static DateTimeOffset? Until(string nonce, byte[] key, DateTimeOffset now)
    {
        if (Coded.Bytes(nonce, Length) is not { } bytes)
            return null;
        var mine = HMACSHA256.HashData(key, bytes.AsSpan(0, Stamp + Chance));
        if (!CryptographicOperations.FixedTimeEquals(mine, bytes.AsSpan(Stamp + Chance)))
            return null;
        var made = DateTimeOffset.FromUnixTimeMilliseconds(BinaryPrimitives.ReadInt64BigEndian(bytes));
        return made <= now && now < made + Life ? made + Life : null;
    }
}
