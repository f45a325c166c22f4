namespace Witnessmark.Handbook.Tests.Catalogue;

public class TyreCableAndVinRequestTests
{
    private static string Play(string min, string max) =>
        $$"""{"trials":[{"turns":0,"play":"9 mm"},{"turns":1,"play":"6 mm"}],"limit":{"min":"{{min}}","max":"{{max}}"},"playUncertainty":"0.3 mm"}""";

    private static string Tyre(int decade) => $$"""{"code":"1020","on":"2026-01-01","decade":{{decade}}}""";

    [Theory]
    [InlineData("4 mm", "4 mm")]
    [InlineData("4 mm", "2 mm")]
    public void A_limit_without_room_is_told(string min, string max) =>
        Assert.StartsWith("limit: min not below max", CaseFiles.Ask("cable-free-play", Play(min, max)).Malformed);

    [Fact]
    public void A_limit_with_room_is_aimed_at_in_the_middle() =>
        Assert.Equal(3, (double)CaseFiles.Ask("cable-free-play", Play("2 mm", "4 mm")).Outputs!["expected"]!["value"]!);

    [Theory]
    [InlineData(2010)]
    [InlineData(2030)]
    public void A_decade_that_the_code_denies_is_told(int decade) =>
        Assert.StartsWith($"decade: {decade} beside the year 2020", CaseFiles.Ask("tyre-date", Tyre(decade)).Malformed);

    [Theory]
    [InlineData("1020")]
    [InlineData("1029")]
    public void The_first_and_the_last_year_of_a_decade_belong_to_it(string code)
    {
        var given = $$"""{"code":"{{code}}","on":"2031-01-01","decade":2020}""";
        Assert.Null(CaseFiles.Ask("tyre-date", given).Malformed);
    }

    // 49 CFR 565.15 asks for the check digit in North America: there a digit that does not fit needs no excuse
    [Theory]
    [InlineData("northAmerica", false)]
    [InlineData("elsewhere", true)]
    public void The_region_decides_what_is_said_of_a_check_digit(string region, bool noted)
    {
        var reply = CaseFiles.Ask("vin", $$"""{"vin":"11111111211111111","region":"{{region}}"}""").Outputs!;
        Assert.False((bool)reply["checkDigitMatches"]!);
        Assert.Equal(noted, reply["note"] is not null);
    }
}
