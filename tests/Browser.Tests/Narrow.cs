using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What breaks where there is least room: the narrowest phone, and the largest text that a browser offers on one.</summary>
internal static class Narrow
{
    public const int Phone = 360;
    public const int Tall = 780;
    private const int UsualText = 16;

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
          .map((e) => `${e.tagName}.${e.className} cuts "${e.textContent.trim().slice(0, 40)}": ${e.scrollWidth} x ${e.scrollHeight} in ${e.clientWidth} x ${e.clientHeight}`)
        """;

    // what to read has to stand somewhere above the keys: a title in two lines and its figure
    private const string Crowded = """
        () => [...document.querySelectorAll(".bench-scroll")]
          .filter((e) => e.clientHeight < 100)
          .map((e) => `the words have ${e.clientHeight} px above the keys`)
        """;

    // the innermost that reach over the edge, where the page scrolls sideways
    private const string Wide = """
        () => {
          const room = document.documentElement.clientWidth;
          if (document.documentElement.scrollWidth <= room) return [];
          const over = [...document.querySelectorAll("body *")].filter((e) => e.getBoundingClientRect().right > room + 0.5 && !e.parentElement.closest(".scroll, pre"));
          return over
            .filter((e) => !over.some((other) => other !== e && e.contains(other)))
            .map((e) => `${e.tagName}.${e.className} "${e.textContent.trim().slice(0, 40)}" reaches to ${Math.round(e.getBoundingClientRect().right)} px`);
        }
        """;

    /// <summary>On the narrowest phone.</summary>
    public static Task<IReadOnlyList<string>> Breaks(IPage page) => On(page, Here);

    /// <summary>Looks at a page as it stands on the narrowest phone.</summary>
    public static async Task<T> On<T>(IPage page, Func<IPage, Task<T>> look)
    {
        var before = page.ViewportSize!;
        await page.SetViewportSizeAsync(Phone, Tall);
        var found = await look(page);
        await page.SetViewportSizeAsync(before.Width, before.Height);
        return found;
    }

    /// <summary>With the browser's text twice as large, as a person sets it there (WCAG 2.2, 1.4.4: without loss up to 200 %).</summary>
    public static async Task<IReadOnlyList<string>> BreaksWithLargeText(IPage page)
    {
        var devtools = await page.Context.NewCDPSessionAsync(page);
        await devtools.SendAsync("Page.setFontSizes", Sizes(2 * UsualText));
        var found = await Here(page);
        await devtools.SendAsync("Page.setFontSizes", Sizes(UsualText));
        await devtools.DetachAsync();
        return found;
    }

    private static Dictionary<string, object> Sizes(int text) =>
        new()
        {
            ["fontSizes"] = new Dictionary<string, object> { ["standard"] = text, ["fixed"] = text },
        };

    /// <summary>As the page stands now.</summary>
    public static async Task<IReadOnlyList<string>> Here(IPage page)
    {
        var cut = await page.EvaluateAsync<string[]>(Cut);
        return [.. cut, .. await page.EvaluateAsync<string[]>(Crowded), .. await Wider(page)];
    }

    /// <summary>What is wider than the page as it stands now.</summary>
    public static async Task<IReadOnlyList<string>> Wider(IPage page) => await page.EvaluateAsync<string[]>(Wide);
}
