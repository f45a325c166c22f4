using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>German: chosen at once, kept by the person and by the device, spoken aloud, and no load on whoever works in English.</summary>
public sealed class GermanTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task It_is_spoken_at_once_and_after_a_reload_without_network()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await Deutsch(hand);
        await Assertions.Expect(Heading(hand, "Einstellungen")).ToBeVisibleAsync();
        await Assertions.Expect(hand.Page.Locator("nav")).ToContainTextAsync("Maschinen");
        await device.Context.SetOfflineAsync(true);
        await shop.Stop();
        await hand.Page.ReloadAsync();
        await Assertions.Expect(Heading(hand, "Einstellungen")).ToBeVisibleAsync();
        await Assertions.Expect(hand.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
    }

    [Fact]
    public async Task A_chain_is_read_with_a_comma_judged_and_said_in_German_and_stored_with_a_point()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        await device.Context.AddInitScriptAsync(
            """
            window.said = [];
            speechSynthesis.speak = (spoken) => window.said.push(`${spoken.lang}: ${spoken.text}`);
            """
        );
        var hand = await device.Open(shop);
        await Deutsch(hand);
        await hand.Point("chain-slack");
        await Assertions.Expect(Heading(hand, "Kettendurchhang, unteres Trum")).ToBeVisibleAsync();
        var comma = hand.Page.Locator(".keypad").GetByRole(AriaRole.Button, new() { Name = "Komma", Exact = true });
        await hand.Type("75");
        await comma.ClickAsync();
        await hand.Type("5");
        await Assertions.Expect(hand.Page.Locator(".num-value").First).ToContainTextAsync("75,5");
        await hand.Page.Locator(".foot .primary").ClickAsync();
        await hand.Type("25");
        await hand.Save();
        await Assertions.Expect(hand.Verdict.Locator("strong")).ToHaveTextAsync("Außerhalb um 18,5 mm");
        await Assertions.Expect(hand.Verdict).ToContainTextAsync("der Hersteller erlaubt 13 bis 32 mm");
        await hand.Tap("Vorlesen");
        var said = Assert.Single(await hand.Page.EvaluateAsync<string[]>("() => window.said"));
        Assert.Matches(
            "^de: Kettendurchhang.*: 50,5 plus oder minus .* Millimeter\\. Außerhalb um 18,5 Millimeter\\.$",
            said
        );
        await Assertions.Expect(hand.Saved).ToHaveTextAsync(new Regex(@"^\D*1\D+1\D*$")); // here, and at the shop
        using var http = new HttpClient();
        var entries = await http.GetStringAsync(
            $"{shop.Address}api/entries?after=0",
            TestContext.Current.CancellationToken
        );
        Assert.Contains("75.5 mm", entries);
        Assert.DoesNotContain("75,5", entries);
    }

    [Fact]
    public async Task What_the_public_list_of_recalls_says_stays_in_English_and_says_so()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}");
        var recall = hand.Page.Locator(".campaigns .verdict").Filter(new() { HasText = "26X-004" });
        await recall.Locator("summary").ClickAsync();
        await Assertions.Expect(recall).ToContainTextAsync("The breather hose of the tank");
        await Assertions.Expect(recall).Not.ToContainTextAsync("as the public list has it");

        await Deutsch(hand);
        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await recall.Locator("summary").ClickAsync();
        await Assertions.Expect(recall).ToContainTextAsync("Auf Englisch, so wie es in der öffentlichen Liste steht.");
        // WCAG 2.2, 3.1.2: a reader is told in which language it is spoken
        await Assertions.Expect(recall.GetByText("The breather hose of the tank")).ToHaveAttributeAsync("lang", "en");
    }

    [Fact]
    public async Task Who_works_in_English_loads_no_German()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        List<string> asked = [];
        device.Context.Request += (_, request) => asked.Add(request.Url);
        var hand = await device.Open(shop);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await hand.Open("machines");
        Assert.Contains(asked, u => u.EndsWith(".wasm", StringComparison.Ordinal));
        Assert.DoesNotContain(asked, u => u.EndsWith(".po", StringComparison.Ordinal));
        await Deutsch(hand);
        Assert.Contains(asked, u => u.EndsWith("languages/de.po", StringComparison.Ordinal));
    }

    private static async Task Deutsch(BenchHand hand)
    {
        await hand.Open("settings");
        await hand.Page.Locator("#language .choice").Last.ClickAsync();
        await Assertions.Expect(hand.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
    }

    private static ILocator Heading(BenchHand hand, string words) =>
        hand.Page.GetByRole(AriaRole.Heading, new() { Name = words, Exact = true });
}
