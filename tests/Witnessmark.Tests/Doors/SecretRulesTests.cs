using Witnessmark.Doors;

namespace Witnessmark.Tests.Doors;

public sealed class SecretRulesTests
{
    private const string Shop = "Harrow Lane Motorcycles";

    [Theory]
    [InlineData("480913")]
    [InlineData("001972")]
    public void Digits_that_nobody_tries_first_are_taken(string pin) =>
        Assert.Null(SecretRules.Refuses(pin, Role.Technician, "Bram Okello", Shop));

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
    public void Others_are_not(string pin) =>
        Assert.NotNull(SecretRules.Refuses(pin, Role.Technician, "Bram Okello", Shop));

    // NIST SP 800-63B-4, 3.1.1.2: at least 15 characters, at least 64 taken, all printing characters and spaces
    [Theory]
    [InlineData("nine grey herons", true)]
    [InlineData("fourteen chars", false)]
    [InlineData("aaaaaaaaaaaaaaaaaaaa", false)]
    [InlineData("fünf Reiher am Wehr — früh", true)]
    [InlineData("ines tallowines", false)]
    public void A_passphrase_of_a_lead_has_fifteen_characters(string phrase, bool taken) =>
        Assert.Equal(taken, SecretRules.Refuses(phrase, Role.Lead, "Ines Tallow", Shop) is null);

    // own choice of what everybody knows and what a rule makes
    [Theory]
    [InlineData("correct horse battery staple")]
    [InlineData("Correct-Horse-Battery-Staple!")]
    [InlineData("qwertyuiopasdfgh")]
    [InlineData("1qaz2wsx3edc4rfv")]
    [InlineData("abcdefghijklmnop")]
    [InlineData("123456789012345")]
    [InlineData("Password Password 1")]
    [InlineData("witnessmark 2026!")]
    [InlineData("Ines Tallow Ines Tallow 2026")]
    [InlineData("heron heron heron heron")]
    public void What_everybody_knows_is_none(string phrase) =>
        Assert.NotNull(SecretRules.Refuses(phrase, Role.Lead, "Ines Tallow", Shop));

    [Theory]
    [InlineData("my password is a grey heron")]
    [InlineData("drei Reiher am Wehr")]
    [InlineData("workshop behind the old weir")]
    public void Words_of_ones_own_beside_a_common_one_are_taken(string phrase) =>
        Assert.Null(SecretRules.Refuses(phrase, Role.Lead, "Ines Tallow", Shop));

    [Fact]
    public void On_the_command_line_a_passphrase_is_read_key_by_key_without_being_shown()
    {
        var keys = new Queue<ConsoleKeyInfo>(
            "heronx\b weir\r".Select(c => new ConsoleKeyInfo(
                c,
                c == '\r' ? ConsoleKey.Enter
                    : c == '\b' ? ConsoleKey.Backspace
                    : ConsoleKey.A,
                false,
                false,
                false
            ))
        );
        Assert.Equal("heron weir", HiddenLine.Typed(keys.Dequeue));
    }

    [Theory]
    [InlineData("harrow lane motorcycles 2026")]
    [InlineData("Ines Tallow, Harrow Lane Motorcycles!")]
    public void The_shops_own_name_with_little_round_it_is_none(string phrase)
    {
        Assert.NotNull(SecretRules.Refuses(phrase, Role.Lead, "Ines Tallow", Shop));
        Assert.Null(SecretRules.Refuses(phrase + " nine grey herons", Role.Lead, "Ines Tallow", Shop));
    }

    [Fact]
    public void Only_ones_name_is_none() =>
        Assert.NotNull(SecretRules.Refuses("Bartholomew Inglethorpe", Role.Lead, "Bartholomew Inglethorpe", Shop));

    [Fact]
    public void Sixty_four_characters_are_taken_and_very_long_ones_are_not()
    {
        var words = string.Concat(Enumerable.Repeat("heron weir ", 40));
        Assert.Null(SecretRules.Refuses(words[..64], Role.Lead, "Ines Tallow", Shop));
        Assert.NotNull(SecretRules.Refuses(words[..201], Role.Lead, "Ines Tallow", Shop));
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

    [Fact]
    public void A_weaker_hash_of_an_earlier_program_is_made_anew_when_its_secret_is_shown()
    {
        var weaker = new Microsoft.AspNetCore.Identity.PasswordHasher<string>(
            Microsoft.Extensions.Options.Options.Create(
                new Microsoft.AspNetCore.Identity.PasswordHasherOptions { IterationCount = 1000 }
            )
        ).HashPassword("Ines Tallow", "nine grey herons");
        Assert.Null(SecretHash.Fits("Ines Tallow", weaker, "ten grey herons"));
        var anew = SecretHash.Fits("Ines Tallow", weaker, "nine grey herons")!;
        Assert.NotEqual(weaker, anew);
        Assert.Equal(anew, SecretHash.Fits("Ines Tallow", anew, "nine grey herons"));
    }
}
