using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>A finding from the bench to the owner's word, on a phone.</summary>
public sealed class FindingsTests(Published published, Chromium chromium)
{
    private const string Hose = "Rear brake hose is cracked at the banjo";

    // By hand: 64.90 + 40 min at 78.00 an hour = 116.90; with 19 % of it, 22.211, 139.11
    [Fact]
    public async Task What_is_found_is_estimated_declined_and_acknowledged()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("front-pads");
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "A finding" }).First.ClickAsync();
        await Finds(hand, Hose, "Before riding");
        await hand.Sees("Not decided yet.");
        await hand.Tap("Make an estimate");
        await hand.Page.Locator("#minutes").FillAsync("forty");
        await Assertions.Expect(hand.Page.Locator("#keep-estimate")).ToBeDisabledAsync();
        await Estimates(hand, "40", "Brake hose, rear", "64,90");
        await hand.Sees("139.11 EUR");

        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "the owner has not decided yet" }).ClickAsync();
        await hand.Tap("The owner's word");
        await hand.Page.Locator("#decline").ClickAsync();
        await hand.Sees("Riding the machine as it is can injure or kill.");
        await hand.Page.Locator("#decider").FillAsync("Nora Vance");
        await hand.Tap("Telephone");
        await Assertions.Expect(hand.Page.Locator("#keep-decision")).ToBeDisabledAsync();
        await hand.Page.Locator("#acknowledged").CheckAsync();
        await hand.Page.Locator("#keep-decision").ClickAsync();
        await hand.Sees("Nora Vance has acknowledged this.");
        await hand.SeesSaved(3, 3);
        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await Assertions.Expect(hand.Page.Locator(".holds").GetByText(Hose)).ToHaveCountAsync(0);
        using var http = new HttpClient();
        using var sheet = await http.GetAsync(
            $"{shop.Address}api/jobs/{BenchHand.DemoJob}/estimate.pdf",
            TestContext.Current.CancellationToken
        );
        Assert.True(sheet.IsSuccessStatusCode);
    }

    [Fact]
    public async Task A_signature_is_drawn_with_the_finger_without_the_shop_and_a_change_asks_once_more()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}/findings");
        await device.Context.SetOfflineAsync(true);
        await hand.Page.Locator("#add-finding").ClickAsync();
        await Finds(hand, "Rear tyre is hard", "By next service");
        await hand.Tap("The owner's word");
        await hand.Page.Locator("#approve").ClickAsync();
        await hand.Page.Locator("#decider").FillAsync("Nora Vance");
        await hand.Tap("Signature");
        await hand.Sees("The signature is missing.");
        var field = (await hand.Page.Locator(".signature").BoundingBoxAsync())!;
        await hand.Page.Mouse.MoveAsync(field.X + 20, field.Y + 60);
        await hand.Page.Mouse.DownAsync();
        for (var i = 1; i <= 20; i++)
            await hand.Page.Mouse.MoveAsync(field.X + 20 + 10 * i, field.Y + 60 - 30 * (i % 2));
        await hand.Page.Mouse.UpAsync();
        await hand.Page.Locator("#keep-decision").ClickAsync();
        await hand.Sees("Approved by Nora Vance, by signature on the screen.");
        await hand.Tap("Change the words");
        await Finds(hand, "Rear tyre is hard and cracked", "Before riding");
        await hand.Sees("It was changed after the owner decided. Ask once more.");
    }

    /// <summary>Writes it down where the form is open.</summary>
    internal static async Task Finds(BenchHand hand, string what, string urgency)
    {
        await hand.Page.Locator("#what").FillAsync(what);
        await hand.Tap(urgency);
        await hand.Page.Locator("#keep-finding").ClickAsync();
        await Assertions.Expect(hand.Page.GetByText(what).First).ToBeVisibleAsync(); // whatever the screen's language
        await Assertions.Expect(hand.Page.Locator("#keep-finding")).ToHaveCountAsync(0);
    }

    /// <summary>Fills the open estimate with work and one part.</summary>
    internal static async Task Estimates(BenchHand hand, string minutes, string part, string price)
    {
        await hand.Page.Locator("#minutes").FillAsync(minutes);
        await hand.Page.Locator("#item-0").FillAsync(part);
        await hand.Page.Locator("#price-0").FillAsync(price);
        await hand.Page.Locator("#keep-estimate").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#keep-estimate")).ToHaveCountAsync(0);
    }
}
