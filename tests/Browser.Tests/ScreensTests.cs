namespace Witnessmark.Browser.Tests;

/// <summary>Any choice of screens can be walked.</summary>
public class ScreensTests
{
    [Theory]
    [InlineData("today, settings", "today, settings")]
    [InlineData("settings,today", "today, settings")]
    [InlineData("figure-change,own-tools", "own-shop, own-tools, figure, figure-change")]
    public void A_screen_is_come_to_over_those_that_its_way_goes_on_from(string wanted, string walked)
    {
        Assert.Equal(walked, string.Join(", ", Screens.WithWays(Screens.Wanted(wanted)).Select(s => s.Name)));
    }

    [Fact]
    public void Nothing_named_is_all_of_them_and_each_has_a_name_of_its_own()
    {
        Assert.Equal(Screens.All, Screens.WithWays(Screens.Wanted("")));
        Assert.Equal(Screens.All.Count, Screens.All.Select(s => s.Name).Distinct().Count());
    }

    [Fact]
    public void A_name_that_no_screen_has_is_said_with_those_that_there_are()
    {
        var refused = Assert.Throws<ArgumentException>(() => Screens.Wanted("today,own-tool"));
        Assert.StartsWith("No screen is called own-tool. There are: today, own-shop, own-tools", refused.Message);
    }
}
