using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What is on the shelf is found, received and counted; what is out of calibration is not offered.</summary>
public sealed class ShelfTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task What_came_and_what_was_counted_is_there_and_survives_a_lost_answer()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("shelf");
        await hand.Page.Locator("#find").FillAsync("drawer washer");
        await Assertions.Expect(hand.Page.Locator(".lines li")).ToHaveCountAsync(1);
        await hand.Page.Locator(".lines a").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#missing")).ToHaveTextAsync("Say what happened.");
        await hand.Tap("It came");
        await hand.Type("12");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("12 there");
        await hand.Sees("Recorded.");
        await hand.Tap("I counted");
        await hand.Type("9");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("9 there");
        await hand.Open("shelf");
        await Assertions
            .Expect(hand.Page.Locator(".lines a", new() { HasText = "Crush washer" }).First)
            .ToContainTextAsync("9");
    }

    [Fact]
    public async Task A_shim_has_its_measured_size_and_what_is_used_beyond_the_sums_asks_for_a_count()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("shelf/shim-9-48");
        await hand.Tap("Used on a job");
        await hand.Page.Locator("#job").SelectOptionAsync("412");
        await hand.Type("2.35");
        await hand.Page.Locator(".num").Nth(1).ClickAsync();
        await hand.Type("1");
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("2.35 mm: 0 there");
        await hand.Sees("Count what is there.");
    }

    [Fact]
    public async Task Without_the_shop_nothing_is_recorded_and_it_is_said()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Open("shelf/crush-washer-14");
        await hand.Tap("It came");
        await hand.Type("3");
        await shop.Stop();
        await hand.Page.Locator("#keep").ClickAsync();
        await hand.Sees("Nothing was recorded.");
        await Assertions.Expect(hand.Page.Locator(".num-value")).ToHaveTextAsync("3");
    }

    [Fact]
    public async Task A_wrench_out_of_calibration_is_not_offered_for_a_safety_point()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Sees("Old torque wrench 10 to 60 N·m had to be checked by 2025-02-12.");
        var offered = await hand.Page.Locator("select option").AllTextContentsAsync();
        Assert.Contains("Torque wrench 20 to 120 N·m", offered);
        Assert.DoesNotContain("Old torque wrench 10 to 60 N·m", offered);
    }
}
