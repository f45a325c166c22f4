using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Timers of what drains, settles and cools: they run on whatever happens to the page.</summary>
public sealed class TimerTests(Published published, Chromium chromium)
{
    private static readonly Regex NineMinutes = new(@"9:5\d");

    [Fact]
    public async Task A_timer_runs_on_through_reload_and_stands_on_every_screen()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(NineMinutes);
        await hand.Page.ReloadAsync();
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(NineMinutes);
        foreach (var path in (string[])["", "machines", "jobs/412", "jobs/412/bench/chain-slack", "timers"])
        {
            await hand.Open(path);
            await Assertions.Expect(Strip(hand)).ToContainTextAsync("Drain plug");
        }
    }

    [Fact]
    public async Task Two_run_at_once_and_each_ends_by_one_tap()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
        await hand.Point("oil-settle");
        await hand.Page.Locator(".timer-offers .btn").First.ClickAsync();
        await Assertions.Expect(Strip(hand).Locator(".timer")).ToHaveCountAsync(2);
        await hand.Open("timers");
        await hand.Tap("End it");
        await Assertions.Expect(Strip(hand).Locator(".timer")).ToHaveCountAsync(1);
        await hand.Page.ReloadAsync();
        await Assertions.Expect(Strip(hand).Locator(".timer")).ToHaveCountAsync(1);
        await hand.Tap("End it");
        await Assertions.Expect(Strip(hand)).ToHaveCountAsync(0);
    }

    [Theory]
    [InlineData("drain-plug", 390, 844)]
    [InlineData("chain-slack", 390, 844)] // with the strip of the first point above it
    [InlineData("chain-slack", 1440, 900)]
    public async Task While_timers_run_what_saves_stays_on_the_screen(string point, int width, int height)
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(width, height);
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
        await hand.Point(point);
        await Assertions.Expect(Strip(hand)).ToBeVisibleAsync();
        var foot = (await hand.Page.Locator(".dock .foot").BoundingBoxAsync())!;
        Assert.True(foot.Y + foot.Height <= height, $"The keys end at {foot.Y + foot.Height} px.");
    }

    [Fact]
    public async Task When_it_is_over_title_and_strip_say_so_until_it_is_ended()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
        await Started(hand, "drain-plug", secondsAgo: 660);
        await hand.Page.ReloadAsync();
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(new Regex(@"over 1:\d\d"));
        await Assertions.Expect(hand.Page).ToHaveTitleAsync(new Regex("^Over · "));
        await hand.Open("timers");
        await hand.Tap("From the start");
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(new Regex(@"9:5\d"));
        await Assertions.Expect(hand.Page).Not.ToHaveTitleAsync(new Regex("Over"));
    }

    // three tones each time, where somebody wants them; on a page that nobody has touched a browser makes no sound
    [Theory]
    [InlineData("On", 6)]
    [InlineData("Off", 0)]
    public async Task When_it_is_over_it_sounds_where_that_is_wanted(string wanted, int tones)
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        await device.Context.AddInitScriptAsync(
            """
            window.tones = 0;
            const start = OscillatorNode.prototype.start;
            OscillatorNode.prototype.start = function (...at) { window.tones++; return start.apply(this, at); };
            """
        );
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(NineMinutes);
        await Started(hand, "drain-plug", secondsAgo: 580);
        await hand.Open("timers");
        await hand.Page.ReloadAsync();
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = wanted, Exact = true }).ClickAsync();
        await Assertions.Expect(hand.Page).ToHaveTitleAsync(new Regex("^Over · "));
        Assert.Equal(tones, await hand.Page.EvaluateAsync<int>("() => window.tones"));
    }

    [Fact]
    public async Task A_clock_that_was_set_back_is_said_and_moves_no_timer()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(NineMinutes);
        // .NET in the browser asks Date.now for the clock and performance.now for the counter
        await hand.Page.EvaluateAsync("() => { const now = Date.now; Date.now = () => now() - 3600000; }");
        await hand.Page.GetByRole(AriaRole.Link, new() { NameRegex = new("1 timer") }).ClickAsync();
        await Assertions
            .Expect(
                hand.Page.GetByText(new Regex(@"The clock of this device was set back by (1:00:0\d|59:5\d)\.")).First
            )
            .ToBeVisibleAsync();
        await Assertions.Expect(Strip(hand)).ToContainTextAsync(new Regex(@"9:[345]\d"));
        await hand.Page.WaitForTimeoutAsync(2000); // until the moved timer is kept
        await Started(hand, "drain-plug", secondsAgo: -7200); // an hour ahead: this page's clock is an hour behind
        await hand.Page.ReloadAsync();
        await hand.Sees("It was started later than this device's clock says now");
    }

    private static ILocator Strip(BenchHand hand) => hand.Page.Locator(".timer-strip");

    /// <summary>As if it had been started so long ago.</summary>
    private static async Task Started(BenchHand hand, string point, int secondsAgo) =>
        await hand.Page.EvaluateAsync(
            """
            async ([key, ago]) => {
              const asked = (r) => new Promise((done, failed) => { r.onsuccess = () => done(r.result); r.onerror = failed; });
              const database = await asked(indexedDB.open("witnessmark"));
              const read = () => asked(database.transaction("facts").objectStore("facts").get(key));
              for (let i = 0; i < 50 && !(await read()); i++) await new Promise((go) => setTimeout(go, 100));
              const timer = JSON.parse(await read());
              timer.started = new Date(Date.now() - ago * 1000).toISOString().replace("Z", "0000+00:00");
              await asked(database.transaction("facts", "readwrite").objectStore("facts").put(JSON.stringify(timer), key));
              database.close();
            }
            """,
            new object[] { $"timer {BenchHand.DemoJob}/{point}", secondsAgo }
        );
}
