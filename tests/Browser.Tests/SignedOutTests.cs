namespace Witnessmark.Browser.Tests;

/// <summary>Somebody signs out without network and comes back two weeks later, with the question of <see cref="FaultTests"/>.</summary>
public sealed class SignedOutTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task Who_signs_out_without_network_and_comes_back_after_two_weeks_loses_nothing()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await device.Context.SetOfflineAsync(true);
        await hand.Note("before the holidays");
        await hand.SeesSaved(2, 1);
        await hand.Open("device");
        await hand.Page.Locator("#sign-out").ClickAsync();
        await hand.Sees("Signing in needs the shop");

        await hand.Page.AddInitScriptAsync(
            "{ const right = Date.now; Date.now = () => right() + 14 * 24 * 3600 * 1000; }"
        );
        await device.Context.ClearCookiesAsync(); // they ended with the browser
        await shop.Stop();
        await hand.Page.ReloadAsync();
        await hand.Sees("Signing in needs the shop");

        await shop.Start();
        await device.Context.SetOfflineAsync(false);
        await hand.Tap("Ask the shop again");
        await hand.Tap(BenchHand.Person);
        await hand.Page.Locator("#secret").FillAsync(DoorTests.Passphrase);
        await hand.Page.Locator("#send").ClickAsync();
        await hand.SeesSaved(2, 2);
        await hand.Point("chain-slack");
        await hand.SeesVerdict("Outside by 18 mm");
        await hand.Note("after the holidays");
        await hand.SeesSaved(3, 3);
        var (exit, says) = await shop.Verified();
        Assert.Equal(0, exit);
        Assert.Contains("; 0 set aside", says, StringComparison.Ordinal);
    }
}
