using System.Text;

namespace Witnessmark.Tests.Fuzz;

/// <summary>Spoils bytes as a broken line, a broken program or a hostile hand would; the same seed spoils the same way.</summary>
internal sealed class Mutations(int seed)
{
    private static readonly byte[][] Nasty =
    [
        .. new[]
        {
            "\"\\ud83d\"", // half a surrogate pair
            "NaN",
            "-0",
            "1e999",
            "99999999999999999999999999",
            "null",
            "{}",
            "[[[[[[[[[[[[[[[[",
            "\"\"",
            "\u0000",
            "\u202e", // turns the direction of writing
            "'; DROP TABLE entries; --",
            "../../shop.toml",
            "\r\n\t\t\t",
        }.Select(Encoding.UTF8.GetBytes),
        [0xFF, 0xFE],
        [0xC3],
        [0xED, 0xA0, 0x80], // a surrogate written in UTF-8
    ];

    private readonly Random chance = new(seed);

    /// <summary>The same bytes, changed in one to four places.</summary>
    public byte[] Of(byte[] whole)
    {
        var spoilt = whole;
        for (var changes = chance.Next(1, 5); changes > 0; changes--)
            spoilt = Once(spoilt);
        return spoilt;
    }

    private byte[] Once(byte[] whole)
    {
        var from = chance.Next(whole.Length + 1);
        var length = Math.Min(whole.Length - from, chance.Next(1, 40));
        var (before, piece, after) = (whole[..from], whole[from..(from + length)], whole[(from + length)..]);
        return chance.Next(7) switch
        {
            0 => [.. before, .. after],
            1 => [.. before, .. piece, .. piece, .. after],
            2 => [.. before, .. Any(Nasty), .. after],
            3 => [.. before, .. Any(Nasty), .. piece, .. after],
            4 => [.. before, .. Bits(piece), .. after],
            5 => before, // cut short
            _ => [.. before, .. Drawn(length), .. after],
        };
    }

    private byte[] Bits(byte[] piece)
    {
        byte[] changed = [.. piece];
        if (changed.Length > 0)
            changed[chance.Next(changed.Length)] ^= (byte)(1 << chance.Next(8));
        return changed;
    }

    private byte[] Drawn(int length)
    {
        var drawn = new byte[length];
        chance.NextBytes(drawn);
        return drawn;
    }

    private byte[] Any(byte[][] among) => among[chance.Next(among.Length)];
}
