using System.Buffers.Text;
using System.Text;
using Witnessmark.Keys;

namespace Witnessmark.Tests.Keys;

public class ShopKeyTests
{
    /// <summary>RFC 6979, A.2.5: P-256 with SHA-256, messages "sample" and "test".</summary>
    [Theory]
    [InlineData(
        "sample",
        "EFD48B2AACB6A8FD1140DD9CD45E81D69D2C877B56AAF991C34D0EA84EAF3716",
        "F7CB1C942D657C41D436C7A1B6E29F65F3E900DBB9AFF4064DC4AB2F843ACDA8"
    )]
    [InlineData(
        "test",
        "F1ABB023518351CD71D881567B1EA663ED3EFCF6C5132B354F28D3B0B7D38367",
        "019F4113742A2B14BD25926B49C649155F267E60D3814B4C0CC84250E46F0083"
    )]
    public void It_signs_as_published(string message, string r, string s)
    {
        var secret = Convert.FromHexString("C9AFA9D845BA75166B5C215767B1D6934E50C3DB36E89B127B8A622B120F6721");
        var seal = ShopKey.Read(ShopKey.NewFile(secret)).Seal;
        Assert.Equal(
            Convert.FromHexString("60FED4BA255A9D31C961EB74C6356D68C049B8923B61FA6CE669622E60F29FB6"),
            Base64Url.DecodeFromChars(seal.Key.X)
        );
        var signature = seal.Sign(Encoding.ASCII.GetBytes(message));
        Assert.Equal(r + s, Convert.ToHexString(signature));
        Assert.True(seal.Key.Verifies(Encoding.ASCII.GetBytes(message), signature));
    }

    [Fact]
    public void Every_signature_of_a_drawn_key_has_64_bytes_and_verifies()
    {
        var seal = ShopKey.Read(ShopKey.NewFile(ShopKey.Drawn())).Seal;
        for (var i = 0; i < 600; i++) // one in 128 has a leading zero
        {
            var message = BitConverter.GetBytes(i);
            var signature = seal.Sign(message);
            Assert.Equal(64, signature.Length);
            Assert.True(seal.Key.Verifies(message, signature));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData(
        """{"crv":"P-256","kty":"EC","x":"f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU","y":"x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0"}"""
    )]
    [InlineData(
        """{"crv":"P-256","d":"AAAA","kty":"EC","x":"f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU","y":"x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0"}"""
    )]
    [InlineData(
        """{"crv":"P-256","d":"870MB6gfuTJ4HtUnUvYMyJpr5eUZNP4Bk43bVdj3eAE","kty":"EC","x":"f83OJ3D2xF1Bg8vub9tLe1gHMzV76e8Tus9uPHvRVEU","y":"x_FEzRu9m36HLN_tue659LNpXW6pCyStikYjKIWI5a0"}"""
    )]
    public void What_is_no_private_key_is_refused(string text) =>
        Assert.Throws<FormatException>(() => ShopKey.Read(text));
}
