using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The job of the chain, by taps on the published program.</summary>
public sealed class ChainJobTests(Published published, Chromium chromium)
{
    // 75 and 25 on the rule: 50 mm, the demo sheet allows 13 to 32 mm, so 18 mm too much. Two turns bring 60 and 40: 20 mm.
    // The law that these two trials teach is (50² − 20²)/2 = 1050 mm² a turn.
    [Fact]
    public async Task A_slack_chain_is_adjusted_read_again_and_marked()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "Fell 640" }).First.ClickAsync();
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "Chain slack, lower run" }).First.ClickAsync();

        await hand.Read("75", "25");
        await hand.SeesVerdict("Outside by 18 mm");
        await Assertions.Expect(hand.Page.Locator("#mark")).ToBeDisabledAsync();
        await Assertions.Expect(hand.Page.Locator("#readback")).ToContainTextAsync("Chain slack, lower run: 50");

        await hand.Page.Locator("#correct").ClickAsync();
        await hand.Type("2");
        await hand.Save();
        await hand.Sees("Corrected since");

        await hand.Read("60", "40");
        await hand.SeesVerdict("Inside");
        await Assertions.Expect(hand.Page.Locator(".fix")).ToContainTextAsync("1050");
        await hand.Mark();
    }

    [Fact]
    public async Task Tightening_the_axle_nut_asks_for_the_marked_slack_again()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Read("60", "40");
        await hand.Mark();

        await hand.Point("axle-nut");
        await hand.Tap("It clicked at 110 N·m");
        await hand.Save();
        await hand.SeesVerdict("Tightened");
        await hand.Mark();

        await hand.Point("chain-slack");
        await hand.Sees("Rear axle nut was tightened since: that moves it.");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task A_struck_reading_leaves_the_point_unread()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.Tap("Take back the last entry");
        await hand.Tap("Typed wrong");
        await hand.Save();
        await Assertions.Expect(hand.Page.Locator(".keypad")).ToBeVisibleAsync();
        await Assertions.Expect(hand.Verdict).ToHaveCountAsync(0);
        await hand.SeesSaved(2, 2);
    }

    // a calliper that types ends each value with Enter
    [Fact]
    public async Task Enter_moves_to_the_next_box_but_never_saves_and_never_marks()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Page.Keyboard.TypeAsync("60");
        await hand.Page.Keyboard.PressAsync("Enter");
        await hand.Page.Keyboard.TypeAsync("40");
        await hand.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeEnabledAsync();
        await hand.Page.Locator("#save").FocusAsync();
        await hand.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(hand.Verdict).ToHaveCountAsync(0);

        await hand.Page.Keyboard.PressAsync("Space");
        await hand.SeesVerdict("Inside");
        await hand.Page.Locator("#mark").FocusAsync();
        await hand.Page.Keyboard.PressAsync("Enter");
        await hand.SeesSaved(1, 1);
        await Assertions.Expect(hand.Page.Locator("#mark")).ToBeEnabledAsync();
    }
}
