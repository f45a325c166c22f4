using Witnessmark.Handbook.Identity;

namespace Witnessmark.Handbook.Tests.Identity;

public class VinTests
{
    private const string Sample = "1G4AH59H45G118341"; // 49 CFR 565.15, table VI

    [Theory]
    [InlineData("1G4AH59H45G11834")] // 16
    [InlineData("1G4AH59H45G1183411")] // 18
    [InlineData("1G4AH59H45G11834I")]
    [InlineData("1G4AH59H45G11834O")]
    [InlineData("1G4AH59H45G11834Q")]
    [InlineData("1G4AH59H45G11834-")]
    [InlineData("1G4AH59H45G11834１")] // a digit of another script
    [InlineData("")]
    public void What_is_not_well_formed_says_nothing(string vin) => Assert.Null(Vin.Read(vin));

    [Fact]
    public void Small_letters_are_read() => Assert.True(Vin.Read(Sample.ToLowerInvariant())!.CheckDigitMatches);

    [Theory]
    [InlineData(VinRegion.Elsewhere, true)]
    [InlineData(VinRegion.NorthAmerica, false)]
    public void A_check_digit_that_fails_is_a_note_only_outside_North_America(VinRegion region, bool noted)
    {
        var vin = Vin.Read("1G4AH59H55G118341", region)!;
        Assert.False(vin.CheckDigitMatches);
        Assert.Equal('4', vin.CheckDigit);
        Assert.Equal(noted, vin.Note is not null);
    }

    // 49 CFR 565.15, tables VII and (for 1980 to 2009) XIII
    [Theory]
    [InlineData('A', 1980)]
    [InlineData('H', 1987)]
    [InlineData('J', 1988)]
    [InlineData('N', 1992)]
    [InlineData('P', 1993)]
    [InlineData('T', 1996)]
    [InlineData('V', 1997)]
    [InlineData('Y', 2000)]
    [InlineData('1', 2001)]
    [InlineData('9', 2009)]
    public void Both_years_of_the_letter_are_given(char letter, int year) =>
        Assert.Equal([year, year + 30], Vin.Read(Sample[..9] + letter + Sample[10..])!.ModelYears);

    [Theory]
    [InlineData('U')]
    [InlineData('Z')]
    [InlineData('0')]
    public void Without_a_year_letter_there_is_no_year(char letter) =>
        Assert.Empty(Vin.Read(Sample[..9] + letter + Sample[10..])!.ModelYears);

    [Fact]
    public void A_nine_at_position_three_means_a_small_manufacturer()
    {
        var vin = Vin.Read("SA9AH59H45GX5Y341")!;
        Assert.True(vin.SmallManufacturer);
        Assert.Equal("SA9X5Y", vin.ManufacturerCode);
        Assert.Equal("1G4", Vin.Read(Sample)!.ManufacturerCode);
    }
}
