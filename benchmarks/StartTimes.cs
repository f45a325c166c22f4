using System.Diagnostics;
using Microsoft.Playwright;

namespace Witnessmark.Benchmarks;

/// <summary>
/// From opening the page to the first screen that can be used: in a browser that was never here, with the server on this computer, bar 5 s; and where the program is kept and
/// there is no network, bar 2 s, to the jobs as they were seen last, of which one can be tapped, and to the program itself.
/// </summary>
internal static class StartTimes
{
    private const int Times = 5;
    private const int Ready = 3000; // ms: a browser that was just started is busy with itself
    private const string Program = "main:not(.starting) h1";

    public static async Task Print()
    {
        await using var program = await PublishedProgram.Start();
        using var playwright = await Playwright.CreateAsync();
        var chromium = BrowserTimes.Chromium;
        List<double> cold = [],
            jobs = [],
            warm = [];
        for (var i = 0; i < Times; i++)
        {
            var profile = Directory.CreateTempSubdirectory("witnessmark-start-").FullName;
            await using (var device = await Open(playwright, chromium, profile))
                cold.Add((await Started(device.Pages[0], Program)).Last);
            await using (var device = await Open(playwright, chromium, profile))
            {
                await Keep(device.Pages[0]);
                await device.SetOfflineAsync(true);
                var (first, last) = await Started(device.Pages[0], Program, "main.last a");
                jobs.Add(first);
                warm.Add(last);
            }
            Directory.Delete(profile, recursive: true);
        }
        Console.WriteLine($"start, {Times} times{"", 17} least ms  median ms   worst ms   bar ms");
        Line("never here, to the program", cold, 5000);
        Line("kept, no network, to the jobs", jobs, 2000);
        Line("... to the program", warm, null);
    }

    private static async Task<IBrowserContext> Open(IPlaywright playwright, string chromium, string profile) =>
        await playwright.Chromium.LaunchPersistentContextAsync(
            profile,
            new() { ExecutablePath = chromium, Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"] }
        );

    // somebody says who it is, and the program is kept on the device
    private static async Task Keep(IPage page)
    {
        await page.GotoAsync(PublishedProgram.Address);
        await page.Locator(".who button").First.ClickAsync();
        await page.WaitForSelectorAsync(".jobs");
        await page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
    }

    private static async Task<(double First, double Last)> Started(IPage page, string last, string? first = null)
    {
        await page.WaitForTimeoutAsync(Ready);
        var from = Stopwatch.GetTimestamp();
        await page.GotoAsync(PublishedProgram.Address, new() { WaitUntil = WaitUntilState.Commit });
        if (first is not null)
            await page.WaitForSelectorAsync(first);
        var seen = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
        await page.WaitForSelectorAsync(last);
        return (seen, Stopwatch.GetElapsedTime(from).TotalMilliseconds);
    }

    private static void Line(string what, List<double> times, double? bar) =>
        TimesLine.Print(what, times.Min(), times, bar);
}
