using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Two tabs of one device of which one stands still, or is of a newer version: nothing is lost, and the screen says what to do.</summary>
public sealed class SecondTabTests(Published published, Chromium chromium)
{
    // a program whose store has the next form
    private const string Newer = """
        const open = IDBFactory.prototype.open;
        IDBFactory.prototype.open = function (name, version) {
          return open.call(this, name, name === "witnessmark" ? version + 1 : version);
        };
        """;

    [Fact]
    public async Task A_tab_that_stands_still_and_one_of_a_newer_version_hold_nothing_up()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        var before = (await shop.EntryIds()).Count;
        var frozen = await FreezeWhileItSends(device, hand);
        var second = new BenchHand(await device.Context.NewPageAsync(), shop.Address);
        await GetsThrough(second);
        await frozen.SendAsync("Page.setWebLifecycleState", new() { ["state"] = "active" });
        await hand.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
        await hand.SeesSaved(2, 2);

        await hand.Page.CloseAsync();

        await Superseded(device, shop, second);
        await Blocked(device, shop);
        var ids = await shop.EntryIds();
        Assert.Equal(before + 3, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(0, await shop.Verify());
    }

    /// <summary>The tab sends, and so holds the lock; then the browser lets it stand still.</summary>
    private static async Task<ICDPSession> FreezeWhileItSends(BrowserDevice device, BenchHand hand)
    {
        var sends = new TaskCompletionSource();
        await hand.Page.RouteAsync(
            "**/api/entries",
            route =>
            {
                sends.TrySetResult(); // never answered
                return Task.CompletedTask;
            }
        );
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 0);
        await sends.Task.WaitAsync(TimeSpan.FromSeconds(60));
        var session = await device.Context.NewCDPSessionAsync(hand.Page);
        await session.SendAsync("Page.enable");
        await session.SendAsync("Page.setWebLifecycleState", new() { ["state"] = "frozen" });
        return session;
    }

    private static async Task GetsThrough(BenchHand second)
    {
        await second.Point("chain-slack");
        await second.Note("beside one that stands still");
        await second.SeesSaved(2, 0); // saved here at once, and held up by the other
        Assert.Contains("witnessmark", await Locks(second)); // so that the trial tries what it should
        // a minute later
        await second.Page.EvaluateAsync(
            "() => { const right = Date.now; Date.now = () => right() + 60_000; dispatchEvent(new Event('online')); }"
        );
        await second.SeesSaved(2, 2);
    }

    private async Task Superseded(BrowserDevice device, RunningShop shop, BenchHand hand)
    {
        await hand.Tap("Read again");
        await hand.Type("60");
        await hand.Page.Locator(".foot .primary").ClickAsync();
        await hand.Type("40");
        var newer = await device.Context.NewPageAsync();
        await newer.AddInitScriptAsync(Newer);
        var fresh = new BenchHand(newer, shop.Address);
        await fresh.Point("chain-slack");
        await fresh.SeesVerdict("Outside by 18 mm");
        await hand.Page.BringToFrontAsync();
        await hand.Save();
        await hand.Sees("A newer version of the program runs in another tab: it was not saved");
        await hand.Page.AddInitScriptAsync(Newer);
        await hand.Page.Locator("#load-again").ClickAsync();
        await hand.Tap("Read again");
        await hand.Save(); // both numbers stand where they were typed
        await hand.SeesVerdict("Inside");
        await hand.SeesSaved(3, 3);
        await newer.CloseAsync();
    }

    /// <summary>A tab that does not let go, as one that stands still: the newer one says so, and goes on when it is closed.</summary>
    private static async Task Blocked(BrowserDevice device, RunningShop shop)
    {
        var holds = device.Context.Pages[0];
        await holds.EvaluateAsync("() => { IDBDatabase.prototype.close = () => {}; }");
        var newest = await device.Context.NewPageAsync();
        await newest.AddInitScriptAsync(Newer.Replace("+ 1", "+ 2", StringComparison.Ordinal));
        var hand = new BenchHand(newest, shop.Address);
        await newest.GotoAsync(shop.Address);
        await hand.Sees("Another tab holds this device's entries");
        await holds.CloseAsync();
        await hand.Point("chain-slack");
        await hand.SeesVerdict("Inside");
        await hand.SeesSaved(3, 3);
    }

    private static Task<string> Locks(BenchHand hand) =>
        hand.Page.EvaluateAsync<string>(
            "async () => (await navigator.locks.query()).held.map((lock) => lock.name).join()"
        );
}
