using System.Globalization;
using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using ZXing.Common;
using ZXing.QrCode.Internal;

namespace Witnessmark.Browser.Tests;

/// <summary>The page that leads to trusting the shop's authority, and what a browser does once it does.</summary>
public sealed partial class TrustTests(Published published, Chromium chromium)
{
    private const string Name = "bench-1.local";

    // WCAG 2.2 A and AA as axe-core tests them, and 1.4.6 (contrast 7:1, AAA)
    private static readonly AxeRunOptions Rules = new()
    {
        Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true } },
    };

    [Fact]
    public async Task A_device_that_trusts_the_authority_keeps_the_bench_and_one_that_does_not_is_warned()
    {
        await using var shop = await RunningShop.Start(published, name: Name);
        using var http = new HttpClient();
        var authority = await http.GetByteArrayAsync(
            $"{shop.Address}trust/witnessmark-authority.crt",
            TestContext.Current.CancellationToken
        );
        using var stranger = KnownShop.As(Name, authority: null);
        await using (var device = await chromium.Device(knows: stranger, worker: true))
        {
            var page = await device.Context.NewPageAsync();
            var warned = await Assert.ThrowsAsync<PlaywrightException>(() => page.GotoAsync(shop.Secure));
            Assert.Contains("ERR_CERT_AUTHORITY_INVALID", warned.Message);
        }
        using var known = KnownShop.As(Name, authority);
        await using (var device = await chromium.Device(knows: known, worker: true))
        {
            var page = await device.Context.NewPageAsync();
            await page.GotoAsync(shop.Secure);
            Assert.True(await page.EvaluateAsync<bool>("() => window.isSecureContext"));
            Assert.True(await page.EvaluateAsync<bool>("() => navigator.serviceWorker.ready.then(() => true)"));
            // with the bench kept on the device the page is still the shop's to answer
            await page.GotoAsync($"{shop.Secure}trust");
            Assert.Equal("Trust this shop", await page.TitleAsync());
        }
    }

    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    [InlineData(1440, ColorScheme.Dark)]
    public async Task The_page_shuts_nobody_out_and_fits(int width, ColorScheme scheme)
    {
        await using var shop = await RunningShop.Start(published, name: Name);
        await using var device = await chromium.Device(width, 780, scheme, worker: true);
        var page = await device.Context.NewPageAsync();
        List<string> said = [];
        page.Console += (_, message) => said.Add(message.Text);
        await page.GotoAsync($"{shop.Address}trust");
        Assert.Empty(said);
        Assert.True(
            await page.EvaluateAsync<bool>(
                "() => document.fonts.ready.then((f) => [...f].some((x) => x.status === 'loaded'))"
            )
        );
        await page.EvaluateAsync(
            "() => document.querySelectorAll('details').forEach((d) => { d.removeAttribute('name'); d.open = true; })"
        );
        Assert.InRange(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), 300, width);
        var low = await page.EvaluateAsync<double>(
            "() => Math.min(...[...document.querySelectorAll('a, summary')].map((e) => e.getBoundingClientRect().height))"
        );
        Assert.True(low >= 55.5, $"{low} px");
        // axe is put into the page by the test; the page's own policy would keep it out
        var free = await device.Context.NewPageAsync();
        await free.SetContentAsync(await page.ContentAsync());
        var found = await free.RunAxe(Rules);
        Assert.Empty(found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help}: {n.Html}")));
    }

    [Fact]
    public async Task Its_code_leads_a_camera_to_the_page()
    {
        await using var shop = await RunningShop.Start(published, name: Name);
        await using var device = await chromium.Device(worker: true);
        var page = await device.Context.NewPageAsync();
        await page.GotoAsync($"{shop.Address}trust");
        var drawn = (await page.Locator(".code path").GetAttributeAsync("d"))!;
        Assert.Equal($"{shop.Address.Replace("localhost", Name)}trust", Read(drawn));
    }

    [Theory]
    [Trait("for", "looking")]
    [InlineData("phone", 390, 844, ColorScheme.Light)]
    [InlineData("phone", 390, 844, ColorScheme.Dark)]
    [InlineData("tablet", 820, 1180, ColorScheme.Light)]
    [InlineData("tablet", 820, 1180, ColorScheme.Dark)]
    [InlineData("desk", 1440, 900, ColorScheme.Light)]
    [InlineData("desk", 1440, 900, ColorScheme.Dark)]
    public async Task It_can_be_drawn(string size, int width, int height, ColorScheme scheme)
    {
        await using var shop = await RunningShop.Start(published, name: Name);
        await using var device = await chromium.Device(width, height, scheme, worker: true);
        var page = await device.Context.NewPageAsync();
        await page.GotoAsync($"{shop.Address}trust");
        await page.Locator("summary").First.ClickAsync();
        var folder = Directory.CreateDirectory(Path.Combine(Published.Root, "out", "screens")).FullName;
        var file = Path.Combine(folder, $"trust-{size}-{scheme.ToString().ToLowerInvariant()}.png");
        await page.ScreenshotAsync(new() { Path = file, FullPage = true });
        Assert.True(new FileInfo(file).Length > 5_000, $"{file} is nearly empty.");
    }

    /// <summary>What a reader of another make sees in the dark squares.</summary>
    private static string Read(string drawn)
    {
        var dark = Square()
            .Matches(drawn)
            .Select(m => (X: Number(m.Groups[1].Value), Y: Number(m.Groups[2].Value)))
            .ToList();
        var (from, to) = (dark.Min(d => d.X), dark.Max(d => d.X));
        var matrix = new BitMatrix(to - from + 1);
        foreach (var (x, y) in dark)
            matrix[x - from, y - from] = true;
        return new Decoder().decode(matrix, null).Text;
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"M(\d+) (\d+)h1")]
    private static partial Regex Square();
}
