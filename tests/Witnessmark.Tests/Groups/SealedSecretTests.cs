using Witnessmark.Groups;
using Witnessmark.Ledger.PostgreSql;

namespace Witnessmark.Tests.Groups;

// Source: own derivation; what authenticated encryption promises (NIST SP 800-38D).
public class SealedSecretTests
{
    private const string Secret = "{\"d\":\"…\"}";
    private const string Name = SealedSecret.SigningKey;
    private static readonly ShopName North = ShopName.Of("north");
    private static readonly byte[] Key = [.. Enumerable.Range(0, SealedSecret.KeyBytes).Select(i => (byte)i)];

    [Fact]
    public void It_opens_as_it_was_and_never_looks_the_same()
    {
        var once = SealedSecret.Seal(Key, North, Name, Secret);
        var again = SealedSecret.Seal(Key, North, Name, Secret);
        Assert.NotEqual(once, again);
        Assert.Equal(Secret, SealedSecret.Open(Key, North, Name, once));
        Assert.Equal(Secret, SealedSecret.Open(Key, North, Name, again));
    }

    [Fact]
    public void Another_key_another_shop_another_name_and_any_changed_byte_open_nothing()
    {
        var kept = SealedSecret.Seal(Key, North, Name, Secret);
        Assert.Throws<FormatException>(() => SealedSecret.Open(new byte[SealedSecret.KeyBytes], North, Name, kept));
        Assert.Throws<FormatException>(() => SealedSecret.Open(Key, ShopName.Of("south"), Name, kept));
        Assert.Throws<FormatException>(() => SealedSecret.Open(Key, North, "door key", kept));
        Assert.Throws<FormatException>(() => SealedSecret.Open(Key, North, Name, kept[..20]));
        for (var at = 0; at < kept.Length; at++)
        {
            byte[] changed = [.. kept];
            changed[at] ^= 1;
            Assert.Throws<FormatException>(() => SealedSecret.Open(Key, North, Name, changed));
        }
    }
}
