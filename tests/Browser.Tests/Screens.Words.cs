using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Where somebody shows the shop whose word it is, by the one who is signed in at the closed door.</summary>
public static partial class Screens
{
    private static async Task PlanWord(BenchHand hand)
    {
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        await hand.Tap("Drop: Front brake pads, lining");
        await hand.Page.Locator("#drop-why").FillAsync("Own");
        await Named(hand, ".plan-form fieldset");
        await hand.Page.Locator("#word").ScrollIntoViewIfNeededAsync();
    }

    private static async Task VouchWord(BenchHand hand)
    {
        await hand.Point("axle-alignment");
        if (await hand.Page.Locator("#verdict").CountAsync() == 0)
            await hand.Read("28.89", "29.80");
        await hand.Tap("Vouch for this figure");
        await Named(hand, ".bench-scroll fieldset");
        await hand.Page.Locator("#word").WaitForAsync();
    }

    /// <summary>Somebody who changed the program on the device: the shop does not know the word that stands in the entry.</summary>
    private static async Task NotCounting(BenchHand hand)
    {
        await PlanWord(hand);
        await hand.Page.RouteAsync(
            "**/api/door/word",
            route => route.FulfillAsync(new() { ContentType = "application/json", Body = """{"confirmed":"1.x"}""" }),
            new() { Times = 1 }
        );
        await hand.Page.Locator("#word #secret").FillAsync("Own");
        await hand.Page.Locator("#word #send").ClickAsync();
        await hand.Page.Locator("#not-counting").ScrollIntoViewIfNeededAsync();
    }

    private static Task Named(BenchHand hand, string among) =>
        hand.Page.Locator(among).GetByRole(AriaRole.Button, new() { Name = BenchHand.Person }).ClickAsync();
}
