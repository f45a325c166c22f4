using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Browser.Tests;

/// <summary>The handbook in the browser: found by typing, tried with a form, without network.</summary>
public sealed class HandbookTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task A_calculation_is_found_and_worked_out_without_network()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await device.Context.SetOfflineAsync(true);
        await shop.Stop();
        await hand.Open("handbook");
        await hand.Page.Locator("#find").FillAsync("chain turns");
        await hand.Page.GetByRole(AriaRole.Link, new() { NameRegex = new Regex("^Chain adjustment") }).ClickAsync();
        // the page's own example: 1050 mm² a turn, by hand (50² − 20²) / 2
        await Assertions.Expect(Gives(hand, "Law")).ToHaveTextAsync("1050 mm²/turn");
        await Assertions.Expect(hand.Page.Locator(".page-text")).ToContainTextAsync("Formula");
        // the drawing too came from the device
        await hand.Page.WaitForFunctionAsync(
            "() => [...document.querySelectorAll('.page-text img')].filter(i => i.naturalWidth > 0).length === 1"
        );
        // half the turns for the same change: twice the law
        await hand.Page.Locator("#given-trials-1-turns").FillAsync("1");
        await hand.Sees("The form has changed since");
        await hand.Page.Locator("#work-out").ClickAsync();
        await Assertions.Expect(Gives(hand, "Law")).ToHaveTextAsync("2100 mm²/turn");
    }

    [Fact]
    public async Task A_wrong_unit_is_told_with_key_value_and_what_is_allowed_and_nothing_typed_is_lost()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("handbook/tyre-pressure");
        await hand.Page.Locator("#given-gauge").FillAsync("33 mm");
        await hand.Page.Locator("#work-out").ClickAsync();
        var told = hand.Page.Locator(".verdict.outside");
        await Assertions.Expect(told).ToContainTextAsync("gauge");
        await Assertions.Expect(told).ToContainTextAsync("33 mm");
        await Assertions.Expect(told).ToContainTextAsync("kPa");
        Assert.Equal("33 mm", await hand.Page.Locator("#given-gauge").InputValueAsync());
    }

    [Fact]
    public async Task Every_calculation_of_the_catalogue_answers_its_worked_example_in_the_browser()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(width: 1440, height: 900);
        var hand = await device.Open(shop);
        await hand.Open("handbook");
        List<string> silent = [];
        foreach (var name in Calculations.All.Select(c => c.Name))
        {
            await hand.Page.Locator($"a[href='handbook/{name}']").ClickAsync();
            var result = hand.Page.Locator(".gives, .verdict").First;
            try
            {
                await result.WaitForAsync(new() { Timeout = 15_000 });
                if (await hand.Page.Locator(".verdict.outside").CountAsync() > 0)
                    silent.Add($"{name}: {await hand.Page.Locator(".verdict.outside").TextContentAsync()}");
            }
            catch (TimeoutException)
            {
                silent.Add(name);
            }
            await hand.Page.Locator("a.back").ClickAsync();
        }
        Assert.Empty(silent);
    }

    private static ILocator Gives(BenchHand hand, string name) =>
        hand.Page.Locator($"dt:has-text(\"{name}\") + dd").First;
}
