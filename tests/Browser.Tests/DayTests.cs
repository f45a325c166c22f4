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
        var soon = DateTime.Now.AddMinutes(20).ToString("yyyy-MM-ddTHH:mm");
        await hand.Page.Locator("#promised").FillAsync(soon);
        await hand.Page.Locator("#save-promise").ClickAsync();
        await hand.Open("day");
        await Assertions.Expect(hand.Page.Locator("#late-412")).ToContainTextAsync("Late by");
    }

    [Fact]
    public async Task A_moment_that_has_passed_cannot_be_promised()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("day");
        await hand.Sees("no plan is better");
        await hand.Open("day/412");
        await hand.Page.Locator("#promised").FillAsync("2020-01-02T16:00");
        await hand.Sees("This moment has passed. Promise a later one.");
        await Assertions.Expect(hand.Page.Locator("#save-promise")).ToBeDisabledAsync();
        await hand.Page.Locator("#promised").FillAsync("2090-01-02T16:00");
        await Assertions.Expect(hand.Page.Locator("#save-promise")).ToBeEnabledAsync();
    }

    [Fact]
    public async Task A_job_whose_kit_lacks_a_part_is_told_until_somebody_says_when_it_arrives()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Receive("stripe-paint", "1");
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("day");
        var lacks = hand.Page.Locator("#lacks-412");
        await Assertions.Expect(lacks.Locator("h2")).ToHaveTextAsync("Its kit is not whole: Fell 640 (412)");
        // one part a line, and the way to where it is said
        await Assertions.Expect(lacks.Locator("li")).Not.ToHaveCountAsync(1);
        await Assertions
            .Expect(lacks.Locator("li").Filter(new() { HasText = "Oil filter Fell 640" }))
            .ToHaveTextAsync("Oil filter Fell 640: None on record. Order it: 5 days.");
        await lacks.GetByRole(AriaRole.Link).ClickAsync();
        await hand.Page.WaitForURLAsync("**/day/412");
        await hand.Page.Locator("#parts").FillAsync("2090-01-02T16:00");
        await hand.Page.Locator("#parts ~ button").First.ClickAsync();
        await hand.Open("day");
        await Assertions.Expect(hand.Page.GetByText("Its kit is not whole")).ToHaveCountAsync(0);
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
        await using var device = await chromium.Device(worker: true);
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
