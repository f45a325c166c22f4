using Witnessmark.Bench.OwnShop;
using Witnessmark.Serve;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.OwnShop;

/// <summary><c>docs/first-five-minutes.md</c>: its file is the one that is written.</summary>
public class FirstFiveMinutesPageTests
{
    private const string Fence = "```toml files\n";

    [Fact]
    public void The_file_that_it_shows_is_written_for_such_a_shop_and_reads_back()
    {
        using var folder = new TempFolder();
        DemoShop.Fill(new(folder.Path), AppContext.BaseDirectory);
        var shop = new NewShop("Weir Cycles", ["Ada Brook"], "Ada Brook")
        {
            Jurisdiction = "GB",
            Instruments =
            [
                new("steel-rule", "Steel rule 300 mm", "measure", "mm", "1 mm", "0.5 mm", 0)
                {
                    From = "0 mm",
                    To = "300 mm",
                    Checked = "2026-03-09",
                },
            ],
        };
        var (files, mistakes) = NewShopFiles.Of(shop, new DataFolder(folder.Path).Workbench(), ["harrow-lane"]);
        Assert.Empty(mistakes);
        Assert.Equal(Shown(), Assert.Single(files!).Text);
    }

    private static string Shown()
    {
        var page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Guides", "first-five-minutes.md"));
        var from = page.ReplaceLineEndings("\n").Split(Fence)[1];
        return from[..from.IndexOf("```", StringComparison.Ordinal)];
    }
}
