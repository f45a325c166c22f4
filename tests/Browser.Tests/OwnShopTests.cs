using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>A shop of one's own in the demo's place, by three screens.</summary>
public sealed class OwnShopTests(Published published, Chromium chromium)
{
    private const string Lead = "Ada Brook";

    [Fact]
    public async Task Three_screens_put_the_own_shop_in_the_demo_s_place_and_a_job_is_opened_in_it()
    {
        await using var shop = await RunningShop.Start(published);
        await using var other = await chromium.Device();
        var bystander = await other.Open(shop);
        await bystander.Point("chain-slack");
        await bystander.Read("75", "25");
        await bystander.SeesSaved(1, 1);

        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("throttle-free-play");
        await hand.Read("3");
        await hand.SeesSaved(1, 1);
        await FillsShop(hand);
        await Assertions.Expect(hand.Page.Locator("#own-next")).ToBeDisabledAsync(); // nobody said who leads
        await hand.Page.Locator("#own-lead .choice").First.ClickAsync();
        await hand.Page.ReloadAsync(); // nothing is lost
        await Assertions.Expect(hand.Page.Locator("#own-name")).ToHaveValueAsync("Weir \"Cycles\"");
        await Next(hand);
        await FillsTools(hand);
        await Next(hand);
        await FillsMachine(hand);
        await hand.Page.Locator("#own-back").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#steel-rule-checked")).ToHaveValueAsync("2026-03-09");
        await Next(hand);
        await Next(hand);
        await Assertions.Expect(hand.Page.Locator("#own-do")).ToBeDisabledAsync();
        await hand.Page.Locator("#own-word").FillAsync("Begin");
        await hand.Page.Locator("#own-do").ClickAsync();

        await hand.Sees($"Weir \"Cycles\" · {Lead}");
        await hand.Sees("No job on this device yet.");
        await hand.SeesSaved(0, 0);
        await Assertions.Expect(hand.Page.Locator("#first-point")).ToHaveCountAsync(0);
        await hand.Open("arrival");
        await hand.Page.Locator("fieldset .choice").First.ClickAsync();
        await hand.Choose("handover");
        await hand.OpenJob();
        await hand.Sees("Weir 500");
        await hand.SeesSaved(1, 1);
        await hand.Page.ReloadAsync();
        await hand.Sees("Weir 500");
        Assert.Single(await shop.EntryIds());
        Assert.Equal(0, await shop.Verify());

        // what the other device still has of the demo is no entry of the new shop, and no job on that device
        await bystander.Page.GotoAsync(bystander.Address());
        await bystander.Tap(Lead);
        await bystander.Sees("Weir 500");
        Assert.Single(await shop.EntryIds());
        await Assertions.Expect(bystander.Page.GetByText("Fell 640")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task What_the_reader_of_the_files_would_refuse_is_said_before_anything_is_done()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await FillsShop(hand);
        await hand.Page.Locator("#own-lead .choice").First.ClickAsync();
        await hand.Page.Locator("#own-place").FillAsync("Britain");
        await Next(hand);
        await Next(hand);
        await hand.Page.Locator("#own-later").ClickAsync();
        await Next(hand);
        await Assertions.Expect(hand.Page.Locator("#own-wrong")).ToContainTextAsync("a code of ISO 3166");
        await Assertions.Expect(hand.Page.Locator("#own-do")).ToBeDisabledAsync();
        Assert.Single(await shop.EntryIds());
    }

    internal static async Task FillsShop(BenchHand hand)
    {
        await hand.Open("own-shop");
        await hand.Page.Locator("#own-name").FillAsync("Weir \"Cycles\"");
        await hand.Page.Locator("#own-people").FillAsync($"{Lead}\nBo Ley\n");
        await hand.Page.Locator("#own-place").FillAsync("gb");
    }

    internal static async Task FillsTools(BenchHand hand)
    {
        await hand.Page.Locator("#steel-rule-checked").FillAsync("2026-03-09");
        await hand.Page.Locator("#tool-torque-wrench-120").ClickAsync();
        await hand.Page.Locator("#torque-wrench-120-error").FillAsync("3 %");
    }

    internal static async Task FillsMachine(BenchHand hand)
    {
        await hand.Page.Locator("#own-machine").FillAsync("Weir 500");
        await hand.Page.Locator("#own-plate").FillAsync("WR 500");
        await hand.Page.Locator("#own-cylinders").FillAsync("1");
        // what has no answer yet, until nothing is asked any more
        var open = hand.Page.Locator("main fieldset.setting:not(:has([aria-pressed=true]))");
        while (await open.CountAsync() > 0)
            await open.First.Locator(".choice").First.ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#own-winch")).ToHaveCountAsync(0); // it is no quad
    }

    internal static async Task Next(BenchHand hand) => await hand.Page.Locator("#own-next").ClickAsync();
}
