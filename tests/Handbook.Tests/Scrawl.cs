namespace Witnessmark.Handbook.Tests;

/// <summary>Text as nobody should type it, the same on every run.</summary>
internal static class Scrawl
{
    private const int Longest = 300;

    /// <summary>Half of it random Unicode with halves of surrogate pairs, half of it good examples changed in a few places.</summary>
    public static IEnumerable<string> Of(int count, int seed, params string[] good)
    {
        var random = new Random(seed);
        for (var i = 0; i < count; i++)
            yield return i % 2 == 0 ? Noise(random) : Mutated(good[random.Next(good.Length)], random);
    }

    private static string Noise(Random random) =>
        new([.. Enumerable.Range(0, random.Next(Longest + 1)).Select(_ => AnyCharacter(random))]);

    private static string Mutated(string good, Random random)
    {
        var text = good;
        for (var changes = random.Next(1, 4); changes > 0; changes--)
        {
            var at = random.Next(text.Length + 1);
            text = random.Next(3) switch
            {
                0 when at < text.Length => text.Remove(at, 1),
                1 when at < text.Length => text[..at] + AnyCharacter(random) + text[(at + 1)..],
                _ => text.Insert(at, AnyCharacter(random).ToString()),
            };
        }
        return text;
    }

    private static char AnyCharacter(Random random) =>
        random.Next(4) switch
        {
            0 => (char)random.Next(0x10000),
            1 => "0123456789"[random.Next(10)],
            _ => (char)random.Next(0x20, 0x7f),
        };
}
