using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What breaks where there is least room: the narrowest phone, and the largest text that a browser offers on one.</summary>
internal static class Narrow
{
    public const int Phone = 360;
    public const int Tall = 780;

    // what hides its overflow and has more than it shows; 2 px are what rounding makes of a line box. A caution is whole when it is opened, the
    // title of a timer on the timers' screen: both are a tap away on purpose
    private const string Cut = """
        () => [...document.querySelectorAll("body *")]
          .filter((e) => e.checkVisibility({ visibilityProperty: true }) && !e.closest("svg, .unseen, .caution summary, .timer-title") && e.textContent.trim())
          .filter((e) => {
            const style = getComputedStyle(e);
            const hides = (overflow) => overflow === "hidden" || overflow === "clip";
            return (hides(style.overflowX) && e.scrollWidth > e.clientWidth + 2 && e.clientWidth > 1)
              || (hides(style.overflowY) && e.scrollHeight > e.clientHeight + 2 && e.clientHeight > 1);
          })
          .map((e) => `${e.tagName}.${e.className} cuts "${e.textContent.trim().slice(0, 40)}"`)
        """;

    /// <summary>On the narrowest phone.</summary>
    public static async Task<IReadOnlyList<string>> Breaks(IPage page)
    {
        var before = page.ViewportSize!;
        await page.SetViewportSizeAsync(Phone, Tall);
        var found = await Here(page);
        await page.SetViewportSizeAsync(before.Width, before.Height);
        return found;
    }

    private static async Task<IReadOnlyList<string>> Here(IPage page)
    {
        var wide = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
        var cut = await page.EvaluateAsync<string[]>(Cut);
        return wide > Phone ? [.. cut, $"{wide} px wide"] : cut;
    }
}
