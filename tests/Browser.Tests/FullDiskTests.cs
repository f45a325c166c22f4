using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The disk of the shop's computer is full: people are told, and nothing is lost.</summary>
public sealed class FullDiskTests(Published published, Chromium chromium)
{
    private const string Full = "The disk of the shop's computer is full.";

    [Fact]
    public async Task A_figure_that_the_disk_does_not_take_is_told_and_kept_when_there_is_room()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        shop.FullFor("fell-640");
        await hand.Open("figures/fell-640/chain.slack");
        await hand.Page.Locator("#change").ClickAsync();
        await hand.Type("15");
        await hand.Page.Locator("#also").FillAsync("");
        await hand.Page.Locator("#why").FillAsync("second edition");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees(Full);
        shop.RoomFor("fell-640");
        await hand.Page.Locator("#keep").ClickAsync(); // all of it stands where it was typed
        await hand.Sees("15 – 32 mm");
    }

    [Fact]
    public async Task Entries_wait_on_the_device_until_there_is_room()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Page.RouteAsync(
            "**/api/entries",
            route =>
                route.Request.Method == "POST"
                    ? route.FulfillAsync(
                        new()
                        {
                            Status = 507,
                            ContentType = "application/json",
                            Body = """{"error":"The shop's disk is full."}""",
                        }
                    )
                    : route.ContinueAsync()
        );
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 0);
        await hand.Open("device");
        await hand.Sees(Full);
        await hand.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
        await hand.SeesSaved(1, 1);
        await Assertions.Expect(hand.Page.GetByText(Full)).ToHaveCountAsync(0);
    }
}
