using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>A reading's verdict stands on the screen before the store has taken it, and says so; what it says is what will stand there.</summary>
public sealed class VerdictAtOnceTests(Published published, Chromium chromium)
{
    // a transaction ends when nothing is asked in it any more (W3C Indexed Database API 3.0, 2.7.1): asked over and over, it waits for letGo
    private const string StoreWaits = """
        () => {
          const add = IDBObjectStore.prototype.add;
          IDBObjectStore.prototype.add = function (value) {
            const added = add.call(this, value);
            const ask = () => { if (!window.letGo) this.get("none").onsuccess = ask; };
            ask();
            return added;
          };
        }
        """;

    private const string Remembers = """
        () => {
          window.atOnce = [];
          new MutationObserver(() => {
            const said = document.querySelector(".at-once .verdict strong")?.textContent;
            const here = `${document.querySelector("h1").textContent}: ${said}`;
            if (said && window.atOnce.at(-1) !== here) window.atOnce.push(here);
          }).observe(document.body, { childList: true, subtree: true });
        }
        """;

    [Fact]
    public async Task It_is_there_while_the_store_still_writes_and_says_that_it_is_being_saved()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await Saves(hand);

        var atOnce = hand.Page.Locator(".at-once");
        await Assertions.Expect(atOnce.Locator("strong")).ToHaveTextAsync("Outside by 18 mm");
        await Assertions.Expect(atOnce).ToContainTextAsync("Being saved");
        await Assertions.Expect(hand.Verdict).ToHaveCountAsync(0);
        await hand.SeesSaved(0, 0);

        await IsSaved(hand);
        await hand.SeesVerdict("Outside by 18 mm");
        await Assertions.Expect(atOnce).ToHaveCountAsync(0);
        await hand.SeesSaved(1, 1);
    }

    [Fact]
    public async Task What_is_opened_meanwhile_gets_nothing_of_it()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Type("75");
        await hand.Page.Locator(".foot .primary").ClickAsync();
        await hand.Type("25");
        // in one go: before anything is painted
        await hand.Page.EvaluateAsync(
            "to => { document.querySelector('#save').click(); Blazor.navigateTo(to); }",
            hand.Address($"jobs/{BenchHand.DemoJob}/bench/throttle-free-play")
        );
        await hand.SeesSaved(1, 1);
        await Assertions.Expect(hand.Page.Locator("h1")).ToHaveTextAsync("Throttle grip, free play");
        await Assertions.Expect(hand.Verdict).ToHaveCountAsync(0);
        await hand.Point("chain-slack");
        await hand.SeesVerdict("Outside by 18 mm");
    }

    [Fact]
    public async Task It_says_what_will_stand_there_whatever_the_kind_of_reading()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Page.EvaluateAsync(Remembers);
        List<string> stand = [];
        foreach (var (point, read) in Kinds)
        {
            await hand.Point(point);
            await read(hand);
            var said = await hand.Verdict.Locator("strong").InnerTextAsync();
            stand.Add($"{await hand.Page.Locator("h1").InnerTextAsync()}: {said}");
        }
        Assert.Equal(stand, await hand.Page.EvaluateAsync<string[]>("() => window.atOnce"));
    }

    private static readonly (string Point, Func<BenchHand, Task> Read)[] Kinds =
    [
        ("chain-slack", hand => hand.Read("75", "25")),
        ("throttle-free-play", hand => hand.Read("3.5")),
        ("rear-pads", hand => hand.Read("0.50", "3.30")),
        ("tyre-dates", hand => hand.Read("0125", "0116")),
        ("axle-alignment", hand => hand.Read("28.89", "29.80")),
        ("axle-nut", hand => hand.Read("80")),
        ("engine-warm-up", Done),
        ("coolant-level", Level),
        ("leaks", Seen),
    ];

    /// <summary>Reads the chain while the store waits.</summary>
    internal static async Task Saves(BenchHand hand)
    {
        await hand.Page.EvaluateAsync(StoreWaits);
        await hand.Read("75", "25");
        await hand.Page.Locator(".at-once").WaitForAsync();
    }

    /// <summary>The store goes on.</summary>
    internal static async Task IsSaved(BenchHand hand)
    {
        await hand.Page.EvaluateAsync("() => { window.letGo = true; }");
        await hand.Verdict.WaitForAsync();
    }

    private static Task Done(BenchHand hand) => hand.Tap("Done");

    private static async Task Level(BenchHand hand)
    {
        await hand.Page.Locator(".dipstick button").First.ClickAsync();
        await hand.Save();
    }

    private static async Task Seen(BenchHand hand)
    {
        foreach (var no in await hand.Page.Locator(".seen-ways .choice:last-child").AllAsync())
            await no.ClickAsync();
        await hand.Save();
    }
}
