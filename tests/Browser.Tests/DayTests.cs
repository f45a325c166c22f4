using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The day's board: the shop's plan, late ones with their reason, and changes by hand with and without the shop.</summary>
public sealed class DayTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task The_board_shows_the_plan_and_says_why_a_promise_is_missed()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("day");
        await hand.Sees("no plan is better");
        await hand.Page.Locator(".day-list a").First.ClickAsync();
        await hand.Page.Locator("#promised").FillAsync("2020-01-02T16:00");
        await hand.Page.Locator("#promised ~ button").First.ClickAsync();
        await hand.Sees("It was promised for Thu 2 Jan, 16:00, which has passed.");
        await hand.Open("day");
        await Assertions.Expect(hand.Page.Locator("#late-412")).ToContainTextAsync("which has passed");
    }

    [Fact]
    public async Task A_job_is_moved_by_taps_and_rules_are_said_where_it_breaks_one()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("day");
        await hand.Sees("no plan is better");
        await hand.Open("day/412");
        for (var i = 0; i < 24; i++)
            await hand.Tap("1 h later");
        await hand.Tap("Bram Okello");
        await Assertions.Expect(hand.Page.Locator("#place")).ToBeEnabledAsync();
        await hand.Tap("1 h earlier");
        await hand.Page.Locator("#place").ClickAsync();
        await hand.SeesSaved(1, 1);
        await hand.Open("day/412");
        await hand.Tap("Leave it to the plan");
        await hand.SeesSaved(2, 2);
        await Assertions.Expect(hand.Page.GetByText("Leave it to the plan")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Without_the_shop_the_last_plan_stays_and_takes_changes_by_hand()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await hand.Open("day");
        await hand.Sees("no plan is better");
        await device.Context.SetOfflineAsync(true);
        await shop.Stop();
        await hand.Open("day");
        await hand.Sees("This is the last plan, with what was changed here since.");
        await hand.Page.Locator(".day-list a").First.ClickAsync();
        for (var i = 0; i < 30; i++)
            await hand.Tap("1 h earlier");
        await hand.Sees("which has passed");
        await hand.Page.Locator("#place").ClickAsync();
        await hand.SeesSaved(1, 0);
    }
}
