using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Findings;

/// <summary>What the shop's file says an hour costs.</summary>
public sealed class EstimatesTableTests
{
    private const string Rate = "rate = 78.00 # for one hour of hands-on work, before tax";

    [Fact]
    public void The_demo_shop_sets_its_terms()
    {
        var terms = DemoFiles.Bench.Workshop.Estimates!;
        Assert.Equal("78.00 EUR", terms.Rate.ToString());
        Assert.Equal("19", terms.Tax);
    }

    [Theory]
    [InlineData(Rate, "rate = 78", 7800)]
    [InlineData(Rate, "rate = \"78,5\"", 7850)]
    [InlineData(Rate, "rate = 0.07", 7)] // 0.07 has no exact binary form: its digits are taken from the file
    public void A_rate_is_read_to_the_cent(string old, string line, long cents)
    {
        var files = DemoFiles.All.Select(f => f.Name == "shop.toml" ? f with { Text = f.Text.Replace(old, line) } : f);
        Assert.Equal(cents, Witnessmark.Bench.Jobs.WorkbenchFiles.Read(files).Bench!.Workshop.Estimates!.Rate.Units);
    }

    [Fact]
    public void A_shop_without_it_has_none()
    {
        var files = DemoFiles.All.Select(f =>
            f.Name == "shop.toml"
                ? f with
                {
                    Text = f
                        .Text.Replace("[estimates]\ncurrency = \"EUR\"\n", "")
                        .Replace(Rate, "")
                        .Replace("tax = 19 # percent", ""),
                }
                : f
        );
        Assert.Null(Witnessmark.Bench.Jobs.WorkbenchFiles.Read(files).Bench!.Workshop.Estimates);
    }

    [Theory]
    [InlineData("currency = \"EUR\"", "currency = \"XAU\"", "\"XAU\" is no currency that is known here")]
    [InlineData("currency = \"EUR\"", "", "\"currency\" is missing")]
    [InlineData(Rate, "", "\"rate\" is missing")]
    [InlineData(Rate, "rate = 78.005", "\"78.005\" has 3 decimals; at most 2 are allowed here")]
    [InlineData(Rate, "rate = -78", "\"-78\" is no number")]
    [InlineData(Rate, "rate = nan", "\"nan\" is no number")]
    [InlineData(Rate, "rate = true", "true")]
    [InlineData("tax = 19 # percent", "", "\"tax\" is missing")]
    [InlineData("tax = 19 # percent", "tax = 100.001", "100.001 percent")]
    [InlineData("tax = 19 # percent", "vat = 19\ntax = 19", "unknown key \"vat\"")]
    public void A_mistake_says_what_is_wrong(string old, string line, string said)
    {
        var mistake = Assert.Single(DemoFiles.MistakesWith("shop.toml", old, line));
        Assert.Contains(said, mistake.ToString());
    }

    [Theory]
    [InlineData("tax = 100")]
    [InlineData("tax = 0")]
    [InlineData("tax = 7.7")]
    public void Every_percentage_up_to_a_hundred_is_a_tax(string line) =>
        Assert.Empty(DemoFiles.MistakesWith("shop.toml", "tax = 19 # percent", line));
}
