using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Tests.Campaigns;

public class OwnListFileTests
{
    private const string List = """
        [[campaigns]]
        number = "TW-31"
        make = "Tarnmoor"
        model = "Fell 640"
        year-from = 2023
        year-to = 2024
        component = "Side stand switch"
        defect = "It sticks."
        consequence = "The engine stops."
        remedy = "Replace it."
        vins = ["GZ0FE64C8RH000400 to GZ0FE64C8RH000499"]
        built-from = 2024-01-15
        built-to = 2024-03-29
        do-not-ride = true

        """;

    [Fact]
    public void Each_year_is_a_record()
    {
        var (campaigns, mistakes) = Read(List);
        Assert.Empty(mistakes);
        Assert.Equal([2023, 2024], campaigns.Select(c => c.Year));
        Assert.All(
            campaigns,
            c => Assert.Equal((CampaignSource.Own, "TW-31", "Side stand switch"), (c.Source, c.Number, c.Component))
        );
        var says = campaigns[0].Says;
        Assert.Equal((true, null), (says.DoNotRide, says.ParkOutside));
        Assert.Equal((new DateOnly(2024, 1, 15), new DateOnly(2024, 3, 29)), (says.BuiltFrom, says.BuiltTo));
        Assert.Equal("GZ0FE64C8RH000400 to GZ0FE64C8RH000499", Assert.Single(says.Vins));
    }

    [Fact]
    public void One_year_needs_no_end() =>
        Assert.Equal(2023, Assert.Single(Read(List.Replace("year-to = 2024\n", "")).Campaigns).Year);

    [Theory]
    [InlineData("number = \"TW-31\"", "number = \"--\"", 2, 10, "\"--\"")]
    [InlineData("make = \"Tarnmoor\"\n", "", 1, 3, "\"make\" is missing")]
    [InlineData("model = \"Fell 640\"", "modl = \"Fell 640\"", 4, 1, "unknown key \"modl\"")]
    [InlineData("year-to = 2024", "year-to = 2022", 6, 11, "the years are swapped")]
    [InlineData("year-from = 2023", "year-from = 1884", 5, 13, "the number 1884")]
    [InlineData("built-to = 2024-03-29", "built-to = 2024-01-14", 13, 12, "the days are swapped")]
    [InlineData("GZ0FE64C8RH000499", "GZ0FE64C8RH000399", 11, 9, "the ends are swapped")]
    [InlineData("do-not-ride = true", "do-not-ride = \"yes\"", 14, 15, "the text \"yes\"")]
    [InlineData("remedy = \"Replace it.\"", "remedy = \"\"", 10, 10, "empty text")]
    public void A_mistake_is_told_with_its_place_and_nothing_is_taken(
        string old,
        string now,
        int line,
        int column,
        string found
    )
    {
        var (campaigns, mistakes) = Read(List.Replace(old, now));
        Assert.Empty(campaigns);
        Assert.Contains(
            mistakes,
            m => (m.File, m.Line, m.Column) == ("own.toml", line, column) && m.Found.Contains(found)
        );
    }

    [Fact]
    public void The_same_campaign_twice_is_told_at_the_second()
    {
        var (campaigns, mistakes) = Read(
            List + List.Replace("year-from = 2023", "year-from = 2024").Replace("Fell 640", "FELL-640")
        );
        Assert.Empty(campaigns);
        var mistake = Assert.Single(mistakes);
        Assert.Equal(16, mistake.Line);
        Assert.Contains("\"TW-31\" for Tarnmoor FELL-640 2024 a second time", mistake.Found);
    }

    [Fact]
    public void Nothing_and_what_is_no_TOML()
    {
        Assert.Equal("no campaign", Assert.Single(Read("").Mistakes).Found);
        Assert.NotEmpty(Read("[[campaigns").Mistakes);
    }

    private static (IReadOnlyList<Campaign> Campaigns, IReadOnlyList<Mistake> Mistakes) Read(string text) =>
        OwnListFile.Read(new("own.toml", text.ReplaceLineEndings("\n")));
}
