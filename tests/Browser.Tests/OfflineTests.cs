namespace Witnessmark.Browser.Tests;

/// <summary>With network and shop gone work goes on, and nothing is lost or doubled afterwards.</summary>
public sealed class OfflineTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task Without_network_and_shop_it_starts_saves_here_and_catches_up_without_loss_or_doubling()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Page.Locator(".job-card").WaitForAsync(); // without network no job comes any more
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        var before = (await shop.EntryIds()).Count;

        await device.Context.SetOfflineAsync(true);
        await shop.Stop();
        await hand.Page.ReloadAsync();
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesVerdict("Outside by 18 mm");
        await hand.SeesSaved(1, 0);
        await hand.Page.ReloadAsync();
        await hand.SeesVerdict("Outside by 18 mm");
        await hand.SeesSaved(1, 0);

        await shop.Start();
        await device.Context.SetOfflineAsync(false);
        await hand.SeesSaved(1, 1);
        var ids = await shop.EntryIds();
        Assert.Equal(before + 1, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    [Fact]
    public async Task Two_tabs_of_one_device_never_give_one_number_twice()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var first = await device.Open(shop);
        var second = new BenchHand(await device.Context.NewPageAsync(), shop.Address);
        await first.Point("road-test");
        await second.Point("engine-warm-up");
        await Task.WhenAll(first.Save(), second.Save());
        await first.SeesSaved(2, 2);
        await second.SeesSaved(2, 2);
        Assert.Equal(3, (await shop.EntryIds()).Count);
    }

    [Fact]
    public async Task What_another_device_read_is_seen_here()
    {
        await using var shop = await RunningShop.Start(published);
        await using var one = await chromium.Device(worker: true);
        await using var other = await chromium.Device(worker: true);
        var here = await one.Open(shop);
        await here.Point("chain-slack");
        await here.Read("75", "25");
        await here.SeesSaved(1, 1);
        var there = await other.Open(shop);
        await there.Point("chain-slack");
        await there.SeesVerdict("Outside by 18 mm");
        await there.SeesSaved(0, 0);
    }

    [Fact]
    public async Task What_one_device_reads_another_shows_at_once()
    {
        await using var shop = await RunningShop.Start(published);
        await using var first = await chromium.Device(worker: true);
        await using var second = await chromium.Device(worker: true);
        var reads = await first.Open(shop);
        var looks = await second.Open(shop);
        await looks.Point("chain-slack");
        await reads.Point("chain-slack");
        await reads.Read("75", "25");
        await reads.SeesSaved(1, 1);
        // it asks by itself every 20 s; told, it knows at once
        var strip = looks.Page.GetByRole(Microsoft.Playwright.AriaRole.Img, new() { Name = "32 not read, 1 outside" });
        await Microsoft.Playwright.Assertions.Expect(strip.First).ToBeVisibleAsync(new() { Timeout = 15_000 });
    }
}
