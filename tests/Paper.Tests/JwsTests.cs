using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Tests;

public sealed class JwsTests
{
    /// <summary>RFC 7515, A.3.1: the whole example.</summary>
    private const string Published =
        "eyJhbGciOiJFUzI1NiJ9.eyJpc3MiOiJqb2UiLA0KICJleHAiOjEzMDA4MTkzODAsDQogImh0dHA6Ly9leGFtcGxlLmNvbS9pc19yb290Ijp0cnVlfQ."
        + "DtEhU3ljbEg8L38VWAfUAqOyKAM6-Xx-F4GawxaepmXFCgfTjDxw5djxLa8ISlSApmWQxfKTUJqPP3-Kg6NU1Q";

    [Fact]
    public void The_published_example_verifies_and_says_what_it_says()
    {
        var jws = Jws.Read(Published);
        Assert.True(TestSeals.Harrow.Key.Verifies(jws.Signed, jws.Signature));
        Assert.Equal("joe", jws.Says("iss"));
        Assert.False(TestSeals.Quay.Key.Verifies(jws.Signed, jws.Signature));
    }

    [Fact]
    public void No_letter_of_it_can_be_changed()
    {
        for (var i = 0; i < Published.Length - 1; i++) // the last letter holds two bits that stand for nothing
        {
            var other = Published[..i] + (Published[i] == 'A' ? 'B' : 'A') + Published[(i + 1)..];
            Assert.False(Verifies(other), $"letter {i}");
        }
    }

    /// <summary>An independent program (jose-jwt) reads what is written here.</summary>
    [Fact]
    public void Another_program_verifies_what_is_signed_here()
    {
        var compact = TestSeals.Harrow.Signed(json => json.WriteString("head", "½ \" \\"));
        var key = new Jose.Jwk("P-256", TestSeals.Harrow.Key.X, TestSeals.Harrow.Key.Y, (string?)null);
        Assert.Equal("{\"head\":\"½ \\\" \\\\\"}", Jose.JWT.Decode(compact, key));
        Assert.Equal(TestSeals.Harrow.Key.Id, Jose.JWT.Headers(compact)["kid"]);
        Assert.Throws<Jose.IntegrityException>(() =>
            Jose.JWT.Decode(compact, new Jose.Jwk("P-256", TestSeals.Quay.Key.X, TestSeals.Quay.Key.Y, (string?)null))
        );
    }

    /// <summary>RFC 7638, 3: the needed members in the order of their names, without white space.</summary>
    [Fact]
    public void The_thumbprint_is_that_of_the_needed_members()
    {
        var key = TestSeals.Quay.Key;
        var members = $"{{\"crv\":\"P-256\",\"kty\":\"EC\",\"x\":\"{key.X}\",\"y\":\"{key.Y}\"}}";
        Assert.Equal(Base64Url.EncodeToString(SHA256.HashData(Encoding.UTF8.GetBytes(members))), key.Thumbprint);
        Assert.Equal(key.Thumbprint[..16], key.Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a.b")]
    [InlineData("a.b.c.d")]
    [InlineData("!!.e30.AA")]
    [InlineData("e30.e30.AA")] // no algorithm
    [InlineData("eyJhbGciOiJub25lIn0.e30.")] // {"alg":"none"}
    [InlineData("eyJhbGciOiJIUzI1NiJ9.e30.AA")] // {"alg":"HS256"}
    public void What_is_no_signature_of_this_kind_is_refused(string compact) =>
        Assert.Throws<FormatException>(() => Jws.Read(compact));

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("""{"kty":"RSA","n":"AA","e":"AQAB"}""")]
    [InlineData("""{"kty":"EC","crv":"P-384","x":"AA","y":"AA"}""")]
    [InlineData("""{"kty":"EC","crv":"P-256","x":"AA","y":"AA"}""")]
    [InlineData("""{"kty":"EC","crv":"P-256","x":"!","y":7}""")]
    public void What_is_no_key_of_this_kind_is_refused(string jwk)
    {
        using var document = JsonDocument.Parse(jwk);
        Assert.Throws<FormatException>(() => PublicKey.Read(document.RootElement));
    }

    private static bool Verifies(string compact)
    {
        try
        {
            var jws = Jws.Read(compact);
            return TestSeals.Harrow.Key.Verifies(jws.Signed, jws.Signature);
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
