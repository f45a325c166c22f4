using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Nothing on any screen shuts anybody out, in light and in dark; text contrast is 7:1.</summary>
public sealed class ReadableByAllTests(Published published, Chromium chromium)
{
    // WCAG 2.2 A and AA as axe-core tests them, and 1.4.6 (contrast 7:1, AAA)
    private const string Rules = """{ rules: { "color-contrast-enhanced": { enabled: true } } }""";

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    /// <summary>One way through all screens for everything that is looked at: coming to a screen takes longer than looking at it.</summary>
    [Fact]
    public async Task On_every_screen_axe_finds_nothing_targets_are_large_enough_and_nothing_is_cut()
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        await using var device = await chromium.Device(sound: SoundFile.Plucked(88.5));
        await shop.Post(InstrumentJob.Tightened);
        var hand = await device.Open(shop);
        List<string> found = [];
        await Screens.Walk(
            hand,
            async screen => found.AddRange((await Look(hand.Page)).Select(f => $"{screen.Name}: {f}"))
        );
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    private static async Task<IReadOnlyList<string>> Look(IPage page)
    {
        List<string> found = [];
        found.AddRange((await OfAxe(page, ColorScheme.Dark)).Select(f => $"dark: {f}"));
        found.AddRange((await OfAxe(page, ColorScheme.Light)).Select(f => $"light: {f}"));
        found.AddRange(await TooSmall(page));
        found.AddRange(await Narrow.Breaks(page));
        found.AddRange((await Narrow.BreaksWithLargeText(page)).Select(f => $"text twice as large: {f}"));
        return found;
    }

    // put into the page once: the library's own way puts it there for each look and opens another page for the answer, which takes many times as long
    private static async Task<string[]> OfAxe(IPage page, ColorScheme scheme)
    {
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        if (!await page.EvaluateAsync<bool>("() => 'axe' in window"))
            await page.EvaluateAsync(Axe);
        return await page.EvaluateAsync<string[]>(
            $$"""
            async () => {
              const found = await axe.run(document, { resultTypes: ["violations"], iframes: false, ...{{Rules}} });
              return found.violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${v.help}: ${n.html}`));
            }
            """
        );
    }

    /// <summary>Our rule: 56 px at the bench, 44 px elsewhere (WCAG 2.5.5 asks for 44), on the narrowest phone.</summary>
    private static async Task<string[]> TooSmall(IPage page) => await Narrow.On(page, SmallTargets);

    private static async Task<string[]> SmallTargets(IPage page) =>
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
