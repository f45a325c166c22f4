using System.Text;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Tests.Record;

// Source of the vectors: RFC 8785 and the test data of its reference repository (cyberphone/json-canonicalization,
// testdata/input and output). Where a vector holds fractions only its other members are taken, since fractions are refused here.
public class CanonicalJsonTests
{
    // structures.json, whole
    [Fact]
    public void Nested_objects_are_sorted_at_every_level() =>
        Assert.Equal(
            """{"":"empty","1":{"\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{}],"A":{},"a":{}}""",
            Of("""{"1":{"f":{"f":"hi","F":5},"\n":56.0},"10":{},"":"empty","a":{},"111":[{}],"A":{}}""")
        );

    // RFC 8785, 3.2.2, the example without its fractions; first bytes as the RFC prints them in hex
    [Fact]
    public void The_escapes_of_the_example()
    {
        var text = Of(
            """{"numbers":[6],"escaping":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/","other":[null,true,false]}"""
        );
        Assert.Equal("""{"escaping":"€$\u000f\nA'B\"\\\\\"/","numbers":[6],"other":[null,true,false]}""", text);
        Assert.StartsWith(
            "7b226573636170696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c22",
            Convert.ToHexStringLower(Encoding.UTF8.GetBytes(text))
        );
    }

    // RFC 8785, 3.2.3: UTF-16 code units, so U+1F602 (D83D DE02) stands before U+FB33 although its code point is greater
    [Fact]
    public void Names_are_sorted_by_their_UTF_16_code_units() =>
        Assert.Equal(
            "{\"\\r\":1,\"1\":2,\"\u0080\":3,\"ö\":4,\"€\":5,\"😂\":6,\"\ufb33\":7}",
            Of("""{"\u20ac":5,"\r":1,"\ufb33":7,"1":2,"\ud83d\ude02":6,"\u0080":3,"\u00f6":4}""")
        );

    // RFC 8785, 3.2.2.2: the two-character escapes where JSON has one, \u00xx in lower case for other controls, nothing else
    [Theory]
    [InlineData(@"""\u0008\u0009\u000a\u000c\u000d""", @"""\b\t\n\f\r""")]
    [InlineData(@"""\u0000\u001F""", @"""\u0000\u001f""")]
    [InlineData(@"""\u007f\u2028<>&+""", "\"\u007f\u2028<>&+\"")]
    [InlineData("[ 1 , 2 ]", "[1,2]")]
    [InlineData("-0", "0")]
    [InlineData("9007199254740992", "9007199254740992")]
    [InlineData("-9007199254740992", "-9007199254740992")]
    public void The_text_of(string json, string canonical) => Assert.Equal(canonical, Of(json));

    [Theory]
    [InlineData("4.5")]
    [InlineData("9007199254740993")]
    [InlineData("-9007199254740993")]
    [InlineData("1e30")]
    [InlineData("1e400")]
    [InlineData("1e-27")]
    [InlineData("""{"a":1,"a":1}""")]
    [InlineData("""{"a":1,"\u0061":1}""")]
    [InlineData(@"""\ud800""")]
    [InlineData("""{"\ude02":1}""")]
    public void Nothing_else_has_a_canonical_text(string json) => Assert.Throws<FormatException>(() => Of(json));

    private static string Of(string json) => CanonicalJson.Of(Made.Json(json));
}
