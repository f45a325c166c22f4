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
    [InlineData("ſG4AH59H45G118341")] // the long s, whose capital is S
    [InlineData("1G4AH59H45G11834i")]
    [InlineData("1G4AH59H45G11834o")]
    [InlineData("1G4AH59H45G11834q")]
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

    public static IEnumerable<TheoryDataRow<string, string, string>> Years =>
        PublishedRows
            .Of("vin-model-years.csv")
            .Select(r => new TheoryDataRow<string, string, string>(r[0], r[1], r[2]));

    // 49 CFR 565.15, table VII, and 565.25, table XIII, row by row
    [Theory]
    [MemberData(nameof(Years))]
    public void Years_of_every_row_of_the_tables(string letter, string first, string second)
    {
        Assert.Equal([int.Parse(first), int.Parse(second)], Vin.Read(Sample[..9] + letter + Sample[10..])!.ModelYears);
        Assert.Equal(30, int.Parse(second) - int.Parse(first));
    }

    [Fact]
    public void Every_year_from_1980_to_2039_has_one_letter() =>
        Assert.Equal(
            Enumerable.Range(1980, 60),
            PublishedRows.Of("vin-model-years.csv").SelectMany(r => r.Cells[1..]).Select(int.Parse).Order()
        );

    // 49 CFR 565.15, table VI: value times weight at each position of the regulation's own sample, sum 411
    [Fact]
    public void The_products_of_the_regulations_sample()
    {
        var values = PublishedRows.Of("vin-characters.csv").ToDictionary(r => r[0], r => int.Parse(r[1]));
        var weights = PublishedRows.Of("vin-weights.csv").Select(r => int.Parse(r[1])).ToArray();
        var sample = PublishedRows.ForTests("vin/sample.csv");
        Assert.Equal(Sample, string.Concat(sample.Select(r => r[1])));
        Assert.All(sample, (r, i) => Assert.Equal(int.Parse(r[2]), values[r[1]] * weights[i]));
        Assert.Equal(411, sample.Sum(r => int.Parse(r[2])));
    }

    public static IEnumerable<TheoryDataRow<string, string, string>> CheckDigits =>
        PublishedRows
            .ForTests("vin/check-digits.csv")
            .Select(r => new TheoryDataRow<string, string, string>(r[0], r[1], r[2]));

    // 49 CFR 565.15, table V. Zeros but for the last character, whose weight is 2, and the one before, whose weight is 3
    [Theory]
    [MemberData(nameof(CheckDigits))]
    public void Check_digit_of_every_remainder(string remainder, string printed, string digit)
    {
        var wanted = int.Parse(remainder);
        Assert.Equal(PublishedRows.Number(printed), wanted / 11.0, 0.003);
        var (threes, twos) = (0, 0);
        while ((threes * 3 + twos * 2) % 11 != wanted)
            (threes, twos) = twos < 9 ? (threes, twos + 1) : (threes + 1, 0);
        Assert.Equal(digit[0], Vin.Read($"000000000000000{threes}{twos}")!.CheckDigit);
    }

    // Oracle: the letters count in three runs of the alphabet, written without a table (49 CFR 565.15, table III)
    [Fact]
    public void Values_of_the_letters()
    {
        foreach (var letter in "ABCDEFGHJKLMNPRSTUVWXYZ")
        {
            var value = letter switch
            {
                <= 'H' => letter - 'A' + 1,
                <= 'R' => letter - 'J' + 1,
                _ => letter - 'S' + 2,
            };
            Assert.Equal("0123456789X"[value * 2 % 11], Vin.Read("0000000000000000" + letter)!.CheckDigit);
        }
    }

    // One character changed to one of another value is always seen, whatever its weight: 11 is prime
    [Fact]
    public void A_single_wrong_character_is_seen()
    {
        for (var i = 0; i < Sample.Length; i++)
            if (i != 8)
                Assert.False(
                    Vin.Read(Sample[..i] + (Sample[i] == '2' ? '3' : '2') + Sample[(i + 1)..])!.CheckDigitMatches
                );
    }

    // Random Unicode and good numbers spoiled: not well formed, or whole
    [Fact]
    public void Whatever_is_typed_is_read_or_not_well_formed()
    {
        var read = 0;
        foreach (var text in Scrawl.Of(20_000, 565, Sample, "1M8GDM9AXKP042788", "sa9ah59h45gx5y341"))
        {
            if (Vin.Read(text) is not { } vin)
                continue;
            read++;
            Assert.Matches("^[0-9A-HJ-NPR-Za-hj-npr-z]{17}$", text);
            Assert.True(vin.ModelYears.Count is 0 or 2);
            Assert.Equal(vin.SmallManufacturer ? 6 : 3, vin.ManufacturerCode.Length);
        }
        Assert.InRange(read, 100, 10_000);
    }

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
