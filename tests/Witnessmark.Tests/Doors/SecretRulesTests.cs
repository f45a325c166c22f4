using Witnessmark.Doors;

namespace Witnessmark.Tests.Doors;

public sealed class SecretRulesTests
{
    [Theory]
    [InlineData("480913")]
    [InlineData("001972")]
    public void Digits_that_nobody_tries_first_are_taken(string pin) =>
        Assert.Null(SecretRules.Refuses(pin, Role.Technician, "Bram Okello"));

    // the first six: from memory, the ones most often found in published lists of six-digit secrets
    [Theory]
    [InlineData("123456")]
    [InlineData("654321")]
    [InlineData("111111")]
    [InlineData("123123")]
    [InlineData("121212")]
    [InlineData("112233")]
    [InlineData("890123")]
    [InlineData("135791")]
    [InlineData("12345")]
    [InlineData("1234567")]
    [InlineData("48091a")]
    [InlineData("٤٨٠٩١٣")]
    [InlineData("")]
    public void Others_are_not(string pin) => Assert.NotNull(SecretRules.Refuses(pin, Role.Technician, "Bram Okello"));

    // NIST SP 800-63B-4, 3.1.1.2: at least 15 characters, at least 64 taken, all printing characters and spaces
    [Theory]
    [InlineData("nine grey herons", true)]
    [InlineData("fourteen chars", false)]
    [InlineData("aaaaaaaaaaaaaaaaaaaa", false)]
    [InlineData("fünf Reiher am Wehr — früh", true)]
    [InlineData("ines tallowines", true)]
    public void A_passphrase_of_a_lead_has_fifteen_characters(string phrase, bool taken) =>
        Assert.Equal(taken, SecretRules.Refuses(phrase, Role.Lead, "Ines Tallow") is null);

    [Fact]
    public void Only_ones_name_is_none() =>
        Assert.NotNull(SecretRules.Refuses("Bartholomew Inglethorpe", Role.Lead, "Bartholomew Inglethorpe"));

    [Fact]
    public void Sixty_four_characters_are_taken_and_very_long_ones_are_not()
    {
        var words = string.Concat(Enumerable.Repeat("heron weir ", 40));
        Assert.Null(SecretRules.Refuses(words[..64], Role.Lead, "Ines Tallow"));
        Assert.NotNull(SecretRules.Refuses(words[..201], Role.Lead, "Ines Tallow"));
    }

    // the hash's own header says how it was made: version 1, HMAC-SHA-512 (2), iterations
    [Fact]
    public void The_hash_takes_as_many_rounds_as_ASVS_asks_for()
    {
        var hash = Convert.FromBase64String(SecretHash.Of("Ines Tallow", "nine grey herons"));
        Assert.Equal(1, hash[0]);
        Assert.Equal(2u, System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(1)));
        // OWASP ASVS 5.0, appendix C.5.2: PBKDF2-HMAC-SHA-512, 210,000 iterations
        Assert.True(System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(5)) >= 210_000);
    }
}
