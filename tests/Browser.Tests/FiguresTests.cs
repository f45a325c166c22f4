using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Figures are found by typing, changed with our own keypad, and keep their history.</summary>
public sealed class FiguresTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task A_figure_is_found_changed_and_compared_and_the_open_job_keeps_its_own()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("figures");
        await hand.Page.Locator("#find").FillAsync("slack");
        await hand.Page.Locator(".lines a").First.ClickAsync();
        await hand.Page.Locator("#change").ClickAsync();
        await hand.Type("15");
        await hand.Page.Locator("#why").FillAsync("second edition");
        await hand.Page.Locator("#also").FillAsync("");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("15 – 32 mm");
        await hand.Sees("second edition");

        await hand.Open("compare/fell-640");
        await Assertions.Expect(hand.Page.Locator(".compared tbody tr")).ToHaveCountAsync(1);
        await hand.Sees("range 15 to 32 mm");

        await hand.Point("chain-slack");
        await hand.Sees("13 – 32 mm"); // the job was opened under the revision before
    }

    [Fact]
    public async Task What_contradicts_what_is_printed_beside_it_is_told_and_nothing_is_changed()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("figures/fell-640/chain.slack");
        await hand.Page.Locator("#change").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#missing")).ToHaveTextAsync("Say why it changes.");
        await hand.Type("18");
        await hand.Page.Locator("#why").FillAsync("as printed");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("look again which one is misprinted");
        Assert.Equal("as printed", await hand.Page.Locator("#why").InputValueAsync());
        await hand.Open("figures/fell-640/chain.slack");
        await hand.Sees("13 – 32 mm");
    }

    [Fact]
    public async Task Without_the_shop_nothing_is_changed_and_it_is_said()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Open("figures/fell-640/chain.slack");
        await hand.Page.Locator("#change").ClickAsync();
        await shop.Stop();
        await hand.Page.Locator("#why").FillAsync("second edition");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("Nothing was changed.");
    }
}
