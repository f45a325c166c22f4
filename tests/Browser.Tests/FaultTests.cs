using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// What goes wrong between a device and its shop, one after the other, always with the same question: is everything that the screen called saved at
/// the shop, once, in its order?
/// </summary>
public sealed class FaultTests(Published published, Chromium chromium)
{
    private static readonly string[] All = ["**/api/**"];
    private static readonly string[] Entries = ["**/api/entries"];

    [Fact]
    public async Task Whatever_happens_to_the_line_everything_comes_once_and_in_order()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        var before = (await shop.EntryIds()).Count;
        await Reads(hand);
        var chance = new Random(7);
        (string Name, string[] Paths, Func<IRoute, Task> Fault)[] faults =
        [
            ("the reply is lost after the shop committed", Entries, LoseReply),
            ("the request comes twice", Entries, Double),
            (
                "the shop's program is broken",
                All,
                route => Answer(route, 500, "application/json", """{"error":"A fault."}""")
            ),
            (
                "a hotel's page answers instead",
                All,
                route => Answer(route, 200, "text/html", "<h1>Welcome, please log in</h1>")
            ),
            ("a proxy finds it too much at once", Entries, TooMuch),
            ("the shop refuses", Entries, route => Answer(route, 400, "application/json", """{"error":"No."}""")),
            ("a third gets lost and the rest is slow", All, route => Slow(route, chance)),
        ];
        var written = 1;
        foreach (var (name, paths, fault) in faults)
        {
            foreach (var path in paths)
                await hand.Page.RouteAsync(path, fault);
            await hand.Note($"{name}, first");
            await hand.Note($"{name}, second");
            written += 2;
            await hand.Sees($"Saved here {written}");
            await hand.Page.WaitForTimeoutAsync(1_500); // a few tries
            await hand.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
            await hand.SeesSaved(written, written);
        }
        var ids = await shop.EntryIds();
        Assert.Equal(before + written, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(0, await shop.Verify());
    }

    [Fact]
    public async Task With_a_clock_that_is_wrong_by_years_entries_come_in_their_order()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await Reads(hand);
        var written = 1;
        var years = TimeSpan.FromDays(3653);
        foreach (
            var off in (TimeSpan[])
                [TimeSpan.FromSeconds(1), TimeSpan.FromHours(1), years, -years, TimeSpan.FromHours(-1)]
        )
        {
            await hand.Page.EvaluateAsync(
                "ms => { const right = Date.now; Date.now = () => right() + ms; }",
                off.TotalMilliseconds
            );
            await hand.Note($"off by {off}");
            await hand.SeesSaved(++written, written);
        }
        await hand.Page.EvaluateAsync("() => { Date.now = () => 5000; }"); // a clock that lost its battery: 1970
        await hand.Note("in 1970");
        await hand.SeesSaved(++written, written);
        Assert.Equal(0, await shop.Verify());
    }

    [Fact]
    public async Task Without_room_nothing_is_called_saved_and_nothing_that_was_typed_is_gone()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        // what a browser does whose store is full (W3C Indexed Database API 3.0, 5.4 and the exception of that name)
        await hand.Page.EvaluateAsync(
            """
            () => {
              const add = IDBObjectStore.prototype.add;
              IDBObjectStore.prototype.add = () => { throw new DOMException("full", "QuotaExceededError"); };
              globalThis.makeRoom = () => { IDBObjectStore.prototype.add = add; };
            }
            """
        );
        await hand.Type("75");
        await hand.Page.Locator(".foot .primary").ClickAsync();
        await hand.Type("25");
        await hand.Save();
        await hand.Sees("There is no room on this device: it was not saved");
        await hand.Page.EvaluateAsync("() => makeRoom()");
        await hand.Page.Locator("#back-to-it").ClickAsync();
        await hand.Save(); // both numbers stand where they were typed
        await hand.SeesVerdict("Outside by 18 mm");
        await hand.SeesSaved(1, 1);
    }

    [Fact]
    public async Task A_store_that_was_wiped_begins_a_new_chain_and_gets_the_job_back()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);
        await hand.Page.EvaluateAsync(
            "async () => { for (const { name } of await indexedDB.databases()) indexedDB.deleteDatabase(name); }"
        );
        await hand.Page.GotoAsync(shop.Address);
        await hand.Tap(BenchHand.Person);
        await hand.Point("chain-slack");
        await hand.SeesVerdict("Outside by 18 mm"); // from the shop
        await hand.SeesSaved(0, 0);
        await hand.Tap("Read again");
        await hand.Read("60", "40");
        await hand.SeesSaved(1, 1);
        Assert.Equal(0, await shop.Verify());
    }

    private static async Task Reads(BenchHand hand)
    {
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);
    }

    private static async Task LoseReply(IRoute route)
    {
        await route.FetchAsync();
        await route.AbortAsync();
    }

    private static async Task Double(IRoute route)
    {
        await route.FetchAsync();
        await route.FulfillAsync(new() { Response = await route.FetchAsync() });
    }

    private static async Task TooMuch(IRoute route)
    {
        if (route.Request.PostData is { } sent && sent.Split("\"seq\"").Length > 2)
            await Answer(route, 413, "text/plain", "Request Entity Too Large");
        else
            await route.ContinueAsync();
    }

    private static async Task Slow(IRoute route, Random chance)
    {
        if (chance.Next(3) == 0)
        {
            await route.AbortAsync();
            return;
        }
        await Task.Delay(400);
        await route.ContinueAsync();
    }

    private static Task Answer(IRoute route, int status, string type, string body) =>
        route.FulfillAsync(
            new()
            {
                Status = status,
                ContentType = type,
                Body = body,
            }
        );
}
