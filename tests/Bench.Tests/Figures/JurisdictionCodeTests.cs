using Witnessmark.Bench.Figures;

namespace Witnessmark.Bench.Tests.Figures;

/// <summary>Codes of places whose law counts, against the country table of the IANA time zone database.</summary>
public class JurisdictionCodeTests
{
    private static readonly string[] Countries =
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "ReferenceData", "iso-3166", "iso3166.tab"))
            .Where(l => !l.StartsWith('#'))
            .Select(l => l.Split('\t')[0]),
    ];

    [Fact]
    public void Every_country_of_the_table_is_known_and_nothing_else_of_two_letters_but_the_European_Union()
    {
        Assert.Equal(249, Countries.Length); // ISO 3166-1, officially assigned
        const string letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";
        var known = letters
            .SelectMany(a => letters.Select(b => $"{a}{b}"))
            .Where(c => JurisdictionCode.Read(c).Why is null);
        Assert.Equal(Countries.Append("EU").Order(StringComparer.Ordinal), known);
    }

    // US-MD, GB-ENG, FR-75, AT-9: ISO 3166-2, from memory
    [Theory]
    [InlineData("GB", "GB")]
    [InlineData(" gb ", "GB")]
    [InlineData("us-md", "US-MD")]
    [InlineData("GB-ENG", "GB-ENG")]
    [InlineData("FR-75", "FR-75")]
    [InlineData("AT-9", "AT-9")]
    public void A_code_is_read_in_either_case(string written, string code) =>
        Assert.Equal((code, null), JurisdictionCode.Read(written));

    [Theory]
    [InlineData("")]
    [InlineData("G")]
    [InlineData("UK")]
    [InlineData("D ")]
    [InlineData("D E")]
    [InlineData("E -X")]
    [InlineData("AD AE")]
    [InlineData("DEU")]
    [InlineData("United Kingdom")]
    [InlineData("-MD")]
    public void What_is_no_code_is_refused_with_what_would_be_one(string written)
    {
        var (code, why) = JurisdictionCode.Read(written);
        Assert.Null(code);
        Assert.Equal(
            $"\"{written.Trim()}\" is no code of ISO 3166: two letters as GB, for a part of a country US-MD.",
            why
        );
    }

    [Theory]
    [InlineData("US-")]
    [InlineData("US-MARY")]
    [InlineData("US-M D")]
    [InlineData("US-MD-1")]
    [InlineData("US-Ä")]
    public void A_part_of_a_country_has_one_to_three_signs(string written)
    {
        var (code, why) = JurisdictionCode.Read(written);
        Assert.Null(code);
        Assert.Contains("after the hyphen", why);
    }
}
