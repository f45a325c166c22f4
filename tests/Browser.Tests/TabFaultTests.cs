using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// What can happen to a tab and to the browser itself, one after the other, with the question of <see cref="FaultTests"/>: is everything that the screen
/// called saved at the shop, once, in its order?
/// </summary>
public sealed class TabFaultTests(Published published, Chromium chromium)
{
    private const string ToShop = "**/api/entries";

    // the transaction is kept from its end after number and fact were put: it neither stands nor is it given up
    private const string HoldWriting = """
        () => {
          const put = IDBObjectStore.prototype.put;
          IDBObjectStore.prototype.put = function (value, key) {
            const asked = put.call(this, value, key);
            if (key === "headHash") {
              const again = () => { this.get("headSeq").onsuccess = again; };
              again();
              globalThis.writes = true;
            }
            return asked;
          };
        }
        """;

    [Fact]
    public async Task Whatever_ends_a_tab_or_the_browser_what_was_called_saved_comes_once()
    {
        await using var shop = await RunningShop.Start(published);
        var before = 0;
        string profile;
        await using (var device = await chromium.Device(worker: true))
        {
            var hand = await device.Open(shop);
            before = (await shop.EntryIds()).Count;
            await hand.Point("chain-slack");
            await hand.Read("75", "25");
            await hand.SeesSaved(1, 1);
            hand = await TabDiesWhileItWrites(device, shop, hand);
            hand = await TabDiesWhenItSaidSaved(device, shop, hand);
            profile = await BrowserDiesWhileItSends(device, hand);
        }
        await using var again = await chromium.Device(profile: profile, worker: true);
        var after = new BenchHand(await again.Context.NewPageAsync(), shop.Address);
        await after.Point("chain-slack");
        await after.SeesSaved(4, 4);
        await after.Note("after all of it");
        await after.SeesSaved(5, 5);
        var ids = await shop.EntryIds();
        Assert.Equal(before + 5, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(0, await shop.Verify());
    }

    /// <summary>Neither number nor fact stands, and nobody was told so: the same is written once more.</summary>
    private static async Task<BenchHand> TabDiesWhileItWrites(BrowserDevice device, RunningShop shop, BenchHand hand)
    {
        await hand.Page.EvaluateAsync(HoldWriting);
        await hand.Tap("Note");
        await hand.Page.Locator("#words").FillAsync("while it writes");
        await hand.Save();
        await hand.Page.WaitForFunctionAsync("() => globalThis.writes === true");
        await Assertions.Expect(hand.Saved).ToContainTextAsync("Saved here 1");
        var next = await Crash(device, shop, hand);
        await next.SeesSaved(1, 1);
        await next.Note("while it writes");
        await next.SeesSaved(2, 2);
        return next;
    }

    private static async Task<BenchHand> TabDiesWhenItSaidSaved(BrowserDevice device, RunningShop shop, BenchHand hand)
    {
        await hand.Page.RouteAsync(ToShop, route => route.AbortAsync());
        await hand.Tap("Note");
        await hand.Page.Locator("#words").FillAsync("just saved");
        await hand.Save();
        await hand.Sees("Saved here 3");
        var next = await Crash(device, shop, hand);
        await next.SeesSaved(3, 3);
        return next;
    }

    /// <summary>The shop has the entry; the browser dies before it hears so.</summary>
    private static async Task<string> BrowserDiesWhileItSends(BrowserDevice device, BenchHand hand)
    {
        var sent = new TaskCompletionSource();
        await hand.Page.RouteAsync(
            ToShop,
            async route =>
            {
                if (route.Request.Method != "POST")
                {
                    await route.AbortAsync();
                    return;
                }
                await route.FetchAsync();
                sent.TrySetResult();
                // never answered
            }
        );
        await hand.Note("while it sends");
        await hand.SeesSaved(4, 3);
        await sent.Task.WaitAsync(TimeSpan.FromSeconds(60));
        return await device.Kill();
    }

    private static async Task<BenchHand> Crash(BrowserDevice device, RunningShop shop, BenchHand hand)
    {
        var crashed = new TaskCompletionSource();
        hand.Page.Crash += (_, _) => crashed.TrySetResult();
        var session = await device.Context.NewCDPSessionAsync(hand.Page);
        _ = session.SendAsync("Page.crash"); // is never answered
        await crashed.Task.WaitAsync(TimeSpan.FromSeconds(30));
        var next = new BenchHand(await device.Context.NewPageAsync(), shop.Address);
        await hand.Page.CloseAsync();
        await next.Point("chain-slack");
        return next;
    }
}
