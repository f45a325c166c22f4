using Microsoft.Playwright;
using Witnessmark.Browser.Tests;

namespace Witnessmark.Benchmarks;

/// <summary>
/// A device four times as slow as this computer: from the tap that saves a reading to the verdict on the screen, bar 100 ms; and how long one look of the
/// microphone holds everything else up.
/// </summary>
internal static class SlowDevice
{
    private const double Slower = 4;
    private const int Times = 9;
    private const int Pause = 2000; // ms: nobody saves while the last digit is still being typed
    private const int Looks = 20;

    // between the tap and the frame in which the verdict stands, while its reading is being saved; and until it is, and all else is drawn
    private const string Saved = """
        () => new Promise((resolve) => {
          const from = performance.now();
          let first = null;
          const seen = new MutationObserver(() => {
            if (!first && document.querySelector(".at-once, #verdict"))
              first = new Promise((frame) => requestAnimationFrame(() => frame(performance.now() - from)));
            if (!document.querySelector("#verdict")) return;
            seen.disconnect();
            requestAnimationFrame(async () => resolve([await first, performance.now() - from]));
          });
          seen.observe(document.body, { childList: true, subtree: true });
          document.querySelector("#save").click();
        })
        """;

    // between the tap on a key and the frame in which its digit stands in the box
    private const string Pressed = """
        (key) => new Promise((resolve) => {
          const from = performance.now();
          const shown = () => document.querySelector(".num.on .num-value").textContent;
          const before = shown();
          const seen = new MutationObserver(() => {
            if (shown() === before) return;
            seen.disconnect();
            requestAnimationFrame(() => resolve(performance.now() - from));
          });
          seen.observe(document.body, { childList: true, subtree: true, characterData: true });
          [...document.querySelectorAll(".keypad button")].find((b) => b.textContent.trim() === key).click();
        })
        """;

    // a look runs in one piece: while it does, no message of the page comes through
    private const string HeldUp = """
        (looks) => new Promise((resolve) => {
          const held = [], pipe = new MessageChannel();
          let last = performance.now(), worst = 0, begun = last;
          pipe.port1.onmessage = () => {
            const now = performance.now();
            worst = Math.max(worst, now - last);
            if (now - begun > 1000) { held.push(worst); worst = 0; begun = now; }
            last = performance.now();
            if (held.length < looks) pipe.port2.postMessage(0); else resolve(held);
          };
          pipe.port2.postMessage(0);
        })
        """;

    // a job with a belt to pluck, as another device would have opened it
    private const string Post = """
        (batch) => fetch("api/entries", { method: "POST", headers: { "content-type": "application/json" }, body: batch })
          .then((answer) => answer.ok || Promise.reject(answer.status))
        """;

    public static async Task Print(IPlaywright playwright, string chromium)
    {
        await using var browser = await playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = chromium,
                Args =
                [
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                    "--use-fake-ui-for-media-stream",
                    "--use-fake-device-for-media-stream",
                    $"--use-file-for-fake-audio-capture={SoundFile.Plucked(88.5)}",
                ],
            }
        );
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout(120_000);
        await FirstPoint.Open(page);
        var devtools = await page.Context.NewCDPSessionAsync(page);
        await devtools.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = Slower });
        Console.WriteLine();
        Console.WriteLine($"{Slower:0} times as slow{"", 16} first ms  median ms   worst ms   bar ms");
        var (keys, saved) = await Readings(page);
        Line("key pressed to digit shown", keys, 50);
        Line("reading saved to verdict shown", [.. saved.Select(s => s[0])], 100);
        Line("... to all else, and it is saved", [.. saved.Select(s => s[1])], null);
        Line("one look of the microphone", await OfMicrophone(page), null);
    }

    private static async Task<(double[] Keys, double[][] Saved)> Readings(IPage page)
    {
        List<double> keys = [];
        var saved = new double[Times][];
        for (var i = 0; i < Times; i++)
        {
            keys.Add(await page.EvaluateAsync<double>(Pressed, "7"));
            keys.Add(await page.EvaluateAsync<double>(Pressed, "5"));
            await page.Locator(".foot .primary").ClickAsync();
            keys.Add(await page.EvaluateAsync<double>(Pressed, "2"));
            keys.Add(await page.EvaluateAsync<double>(Pressed, "5"));
            await page.WaitForTimeoutAsync(Pause);
            saved[i] = await page.EvaluateAsync<double[]>(Saved);
            await page.WaitForTimeoutAsync(Pause);
            await page.GetByRole(AriaRole.Button, new() { Name = "Read again", Exact = true }).ClickAsync();
        }
        return ([.. keys], saved);
    }

    private static async Task<double[]> OfMicrophone(IPage page)
    {
        await page.EvaluateAsync(Post, InstrumentJob.Batch[0]);
        await page.EvaluateAsync(
            "to => Blazor.navigateTo(to)",
            $"{PublishedProgram.Address}jobs/{InstrumentJob.Number}/bench/belt-tone"
        );
        await page.Locator("#listen-here").ClickAsync();
        await page.Locator("#listen").ClickAsync();
        await page.Locator("#take-pitch").WaitForAsync();
        return await page.EvaluateAsync<double[]>(HeldUp, Looks);
    }

    private static void Line(string what, double[] times, double? bar) => TimesLine.Print(what, times[0], times, bar);
}
