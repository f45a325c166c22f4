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

    private static readonly ColorScheme[] Schemes = [ColorScheme.Light, ColorScheme.Dark];

    /// <summary>One way through all screens for everything that is looked at: coming to a screen takes longer than looking at it.</summary>
    [Fact]
    public async Task Axe_finds_nothing_on_any_screen_and_every_target_is_large_enough()
    {
        var found = await Walk(async page =>
        {
            List<string> here = [];
            foreach (var scheme in Schemes)
                here.AddRange((await OfAxe(page, scheme)).Select(f => $"{scheme}: {f}"));
            return [.. here, .. await At360(page)];
        });
        Assert.Empty(found);
    }

    /// <summary>
    /// What is cut on the narrowest phone or with text twice as large, for people to look at, for what cuts on purpose is told from what does not by the eye:
    /// <c>dotnet test --project tests/Browser.Tests -c Release --filter-trait for=looking</c>.
    /// </summary>
    [Fact]
    [Trait("for", "looking")]
    public async Task Nothing_is_cut_where_there_is_least_room()
    {
        var found = await Walk(async page =>
            [
                .. await Narrow.Breaks(page),
                .. (await Narrow.BreaksWithLargeText(page)).Select(f => $"text twice as large: {f}"),
            ]
        );
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    /// <summary>What is found on each screen, with the screen's name.</summary>
    private async Task<List<string>> Walk(Func<IPage, Task<IReadOnlyList<string>>> look)
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        await using var device = await chromium.Device(sound: SoundFile.Plucked(88.5));
        await shop.Post(InstrumentJob.Tightened);
        var hand = await device.Open(shop);
        List<string> found = [];
        foreach (var (name, open) in Screens.Wanted)
        {
            await open(hand);
            found.AddRange((await look(hand.Page)).Select(f => $"{name}: {f}"));
        }
        return found;
    }

    private static async Task<IEnumerable<string>> OfAxe(IPage page, ColorScheme scheme)
    {
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        var result = await page.RunAxe(Rules);
        return result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help}: {n.Html}"));
    }

    /// <summary>Our rule: 56 px at the bench, 44 px elsewhere (WCAG 2.5.5 asks for 44), and nothing wider than the narrowest phone.</summary>
    private static async Task<IEnumerable<string>> At360(IPage page)
    {
        var before = page.ViewportSize!;
        await page.SetViewportSizeAsync(Narrow.Phone, Narrow.Tall);
        string[] found = [.. await TooSmall(page), .. await Narrow.Wider(page)];
        await page.SetViewportSizeAsync(before.Width, before.Height);
        return found;
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
