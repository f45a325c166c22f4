using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Nothing on any screen shuts anybody out, in light and in dark; text contrast is 7:1.</summary>
public sealed class ReadableByAllTests(Published published, Chromium chromium)
{
    // WCAG 2.2 A and AA as axe-core tests them, and 1.4.6 (contrast 7:1, AAA)
    private static readonly AxeRunOptions Rules = new()
    {
        Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true } },
    };

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Axe_finds_nothing_on_any_screen(ColorScheme scheme)
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        await using var device = await chromium.Device(scheme: scheme);
        var hand = await device.Open(shop);
        List<string> found = [];
        foreach (var (name, open) in Screens.All)
        {
            await open(hand);
            var result = await hand.Page.RunAxe(Rules);
            found.AddRange(
                result.Violations.SelectMany(v => v.Nodes.Select(n => $"{name}: {v.Id}: {v.Help}: {n.Html}"))
            );
        }
        Assert.Empty(found);
    }

    // our rule: 56 px at the bench, 44 px elsewhere (WCAG 2.5.5 asks for 44)
    [Fact]
    public async Task Every_target_is_large_enough_and_nothing_is_wider_than_360_px()
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        await using var device = await chromium.Device(width: 360, height: 780);
        var hand = await device.Open(shop);
        List<string> small = [];
        foreach (var (name, open) in Screens.All)
        {
            await open(hand);
            small.AddRange((await TooSmall(hand.Page)).Select(s => $"{name}: {s}"));
            if (await hand.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") is > 360 and var wide)
                small.Add($"{name}: {wide} px wide");
        }
        Assert.Empty(small);
    }

    private static async Task<string[]> TooSmall(IPage page) =>
        await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll("a, button, input, select, textarea, summary")]
              .filter((e) => e.checkVisibility({ visibilityProperty: true }))
              .map((e) => [e, e.getBoundingClientRect(), e.closest(".dock") ? 56 : 44])
              .filter(([, box, least]) => box.height > 0 && (box.height < least - 0.5 || box.width < 44))
              .map(([e, box]) => `${e.tagName} "${e.textContent.trim().slice(0, 30)}" ${Math.round(box.width)} x ${Math.round(box.height)}`)
            """
        );
}
