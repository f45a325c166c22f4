using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The record for the owner as a browser shows it: from the server, and from a file on a device without network.</summary>
public sealed class OwnerRecordTests(Published published, Chromium chromium)
{
    private const string Record = "api/jobs/p3/record.html";

    // WCAG 2.2 A and AA as axe-core tests them, and 1.4.6 (contrast 7:1, AAA)
    private static readonly AxeRunOptions Rules = new()
    {
        Rules = new() { ["color-contrast-enhanced"] = new() { Enabled = true } },
    };

    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    [InlineData(1440, ColorScheme.Dark)]
    public async Task It_shuts_nobody_out_fits_and_asks_for_nothing(int width, ColorScheme scheme)
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Visits(4);
        await using var device = await chromium.Device(width, 780, scheme);
        var page = await device.Context.NewPageAsync();
        List<string> asked = [];
        List<string> said = [];
        page.Request += (_, request) => asked.Add(request.Url);
        page.Console += (_, message) => said.Add(message.Text);
        await page.GotoAsync(shop.Address + Record);
        // the page of the server, its picture for the tab at most, and nothing of anybody else
        Assert.All(asked, url => Assert.True(url.EndsWith("record.html") || url.EndsWith("favicon.ico"), url));
        Assert.Empty(said);
        Assert.Equal("Fell 640, not released", await page.TitleAsync());
        Assert.InRange(await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"), 300, width);
        // its own style counts
        Assert.Equal("0px", await page.EvaluateAsync<string>("() => getComputedStyle(document.body).margin"));
        // axe is put into the page by the test; the page's own policy would keep it out
        var free = await device.Context.NewPageAsync();
        await free.SetContentAsync(Without(await page.ContentAsync()));
        var found = await free.RunAxe(Rules);
        Assert.Empty(found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {v.Help}: {n.Html}")));
    }

    [Fact]
    public async Task A_saved_copy_opens_without_a_network_and_prints()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Visits(2);
        await using var device = await chromium.Device(worker: true);
        var page = await device.Context.NewPageAsync();
        var file = Path.Combine(shop.Data, "record.html");
        using (var http = new HttpClient())
            await File.WriteAllBytesAsync(
                file,
                await http.GetByteArrayAsync(
                    shop.Address + "api/jobs/p1/record.html",
                    TestContext.Current.CancellationToken
                ),
                TestContext.Current.CancellationToken
            );
        await device.Context.SetOfflineAsync(true);
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        Assert.Equal("Fell 640, not released", await page.TitleAsync());
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What to expect" })).ToBeVisibleAsync();
        Assert.True((await page.PdfAsync(new() { Format = "A4" })).Length > 10_000);
    }

    private static string Without(string page) =>
        System.Text.RegularExpressions.Regex.Replace(page, "<meta http-equiv=[^>]*>", "");
}
