using System.Runtime.CompilerServices;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The phone's inclination, set through the browser's own tools. What is expected: reversal of a level, and the worked example of oil-tilt.</summary>
public sealed class InclinationTests(Published published, Chromium chromium)
{
    // A surface of 0.4° under a phone that shows 0.7° too much: 1.1° and, turned, 0.3°. Then 2.7° are 2° to the left; on a stick
    // 60 mm to the left with marks 22 mm apart that is 0.095 too much (docs/handbook/oil-tilt.md by hand).
    [Fact]
    public async Task The_machine_leans_by_what_is_left_without_the_phones_own_error()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(whole: true);
        var hand = await device.Open(shop);
        await Begins(hand, "oil-level");
        await Lies(hand, 1.1, "Second:");
        await Lies(hand, 0.3, "Third:");
        await Assertions
            .Expect(hand.Page.Locator("#zero"))
            .ToHaveTextAsync("Its own error: 0.7°, the surface leaned 0.4°.");
        await Lies(hand, 2.7, null);
        await Assertions.Expect(hand.Page.Locator("#lean")).ToContainTextAsync("It leans to its left: 2");
        await hand.Says("How far the lean falsifies the level").ClickAsync();
        await hand.Page.Locator("#offset").FillAsync("60");
        await hand.Page.Locator("#stick-left").ClickAsync();
        await hand.Page.Locator("#marks").FillAsync("22");
        await Assertions.Expect(hand.Page.Locator("#falsified")).ToContainTextAsync("0.1 of the distance");
        await hand.Tap("Back");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeVisibleAsync(); // the level itself is read as ever
    }

    // 0.6° down, with the upper end forward lower, is 100 · tan 0.6° = 1.047 %; browsers tell tenths of a degree
    [Fact]
    public async Task The_lamp_points_down_by_the_tangent_of_the_angle()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(whole: true);
        var hand = await device.Open(shop);
        await Begins(hand, "headlamp-aim");
        await Lies(hand, 1.1, "Second:");
        await Lies(hand, 0.3, "Third:");
        await Lies(hand, 0.1, null);
        await Assertions.Expect(hand.Page.Locator("#aim")).ToContainTextAsync("1.05 ± ");
        await hand.Page.Locator("#take-aim").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#told-by")).ToHaveTextAsync("This device's inclination");
        await hand.Save();
        await Assertions.Expect(hand.Verdict).ToContainTextAsync("1.05 ± ");
    }

    [Fact]
    public async Task A_device_that_feels_nothing_says_so_within_a_moment()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(whole: true);
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "oil-level");
        await hand.Page.Locator("#incline-here").ClickAsync();
        await hand.Page.Locator("#feel").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("#no-inclination"))
            .ToHaveTextAsync("This device tells no inclination. Or use a spirit level.", new() { Timeout = 5_000 });
    }

    [Fact]
    public async Task A_phone_that_asks_first_and_is_refused_says_so()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(whole: true);
        await device.Context.AddInitScriptAsync("DeviceOrientationEvent.requestPermission = async () => 'denied'");
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "headlamp-aim");
        await hand.Page.Locator("#incline-here").ClickAsync();
        await hand.Page.Locator("#feel").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("#no-inclination"))
            .ToContainTextAsync("The inclination was refused.");
    }

    internal static async Task Begins(BenchHand hand, string point)
    {
        await InstrumentJob.At(hand, point);
        await hand.Page.Locator("#incline-here").ClickAsync();
        await Feels(hand.Page, 0);
        await hand.Page.Locator("#feel").ClickAsync();
        await hand.Page.Locator("#still").WaitForAsync();
    }

    /// <summary>Lays the phone down so, and waits for what is asked next.</summary>
    internal static async Task Lies(BenchHand hand, double degrees, string? next)
    {
        await Feels(hand.Page, degrees);
        await hand.Page.Locator("#still").ClickAsync();
        if (next is not null)
            await Assertions.Expect(hand.Page.Locator("#what-now")).ToContainTextAsync(next);
    }

    // whoever set the sensor first has to set it again: a second session is refused
    private static readonly ConditionalWeakTable<IPage, Task<ICDPSession>> Tools = [];

    private static async Task Feels(IPage page, double beta)
    {
        var tools = await Tools.GetValue(page, p => p.Context.NewCDPSessionAsync(p));
        await tools.SendAsync(
            "DeviceOrientation.setDeviceOrientationOverride",
            new()
            {
                ["alpha"] = 0,
                ["beta"] = beta,
                ["gamma"] = 0,
            }
        );
    }
}
