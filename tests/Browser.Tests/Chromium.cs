using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>A real browser. <c>WITNESSMARK_CHROMIUM</c> names it where it is not <c>/usr/bin/chromium</c>; where nothing needs a whole one and it is there, the same without a window of its own (<c>chromium-headless-shell</c>), which starts sooner.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright playwright = null!;

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        Assertions.SetDefaultExpectTimeout(60_000);
    }

    public ValueTask DisposeAsync()
    {
        playwright.Dispose();
        return ValueTask.CompletedTask;
    }

    /// <summary>A device with a store of its own, as a phone of 390 × 844 unless said otherwise; its camera sees a file (Y4M), its microphone hears one (WAV, over and over), and it may know a shop; with a worker the program itself is kept on it, and starts without network. A profile is that of a device that was closed.</summary>
    public async Task<BrowserDevice> Device(
        int width = 390,
        int height = 844,
        ColorScheme scheme = ColorScheme.Light,
        string? camera = null,
        KnownShop? knows = null,
        bool worker = false,
        string? sound = null,
        string? profile = null,
        bool whole = false
    )
    {
        profile ??= Directory.CreateTempSubdirectory("witnessmark-device-").FullName;
        // service worker and offline need a persistent context
        var context = await playwright.Chromium.LaunchPersistentContextAsync(
            profile,
            new()
            {
                ExecutablePath = Program(whole || (camera ?? sound) is not null || knows is not null),
                Args =
                [
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-dev-shm-usage",
                    .. (camera ?? sound) is null
                        ? []
                        : new[] { "--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream" },
                    .. camera is null ? [] : new[] { $"--use-file-for-fake-video-capture={camera}" },
                    .. sound is null ? [] : new[] { $"--use-file-for-fake-audio-capture={sound}" },
                    .. knows is null ? [] : new[] { $"--host-resolver-rules=MAP {knows.Name} 127.0.0.1" },
                ],
                Env = knows?.Surroundings(),
                ViewportSize = new() { Width = width, Height = height },
                ColorScheme = scheme,
                HasTouch = true,
                ServiceWorkers = worker ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
            }
        );
        context.SetDefaultTimeout(60_000);
        return new(context, profile);
    }

    // cameras, microphones, sensors and certificates want a whole one
    private static string Program(bool whole) =>
        Environment.GetEnvironmentVariable("WITNESSMARK_CHROMIUM")
        ?? (!whole && File.Exists(Windowless) ? Windowless : "/usr/bin/chromium");

    private const string Windowless = "/usr/bin/chromium-headless-shell";
}
