using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Before the program is up, the jobs stand there as they were seen last, and a tap on one is not lost.</summary>
public sealed class LastJobsTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task They_stand_there_before_the_program_is_up_and_the_one_that_was_tapped_opens_when_it_is()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Page.Locator(".job-card").WaitForAsync();
        var up = new TaskCompletionSource();
        await hand.Page.RouteAsync("**/*.wasm", route => GoOn(route, up.Task));
        await hand.Page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });

        var list = hand.Page.Locator("main.last");
        await Assertions.Expect(list.Locator("h1")).ToHaveTextAsync("Today");
        await Assertions.Expect(list).ToContainTextAsync("As seen here last. Getting the bench ready.");
        var job = list.GetByRole(AriaRole.Link, new() { Name = "Fell 640" });
        await Assertions.Expect(job).ToContainTextAsync("Job 412");
        Assert.Empty(await Narrow.Breaks(hand.Page));
        Assert.Empty(await Narrow.BreaksWithLargeText(hand.Page));
        await job.ClickAsync();
        await Assertions.Expect(list).ToContainTextAsync("It opens as soon as the bench is ready.");

        await Assertions.Expect(job).ToHaveAttributeAsync("aria-current", "true");

        up.SetResult();
        await hand.Page.WaitForURLAsync("**/jobs/412");
        await Assertions.Expect(hand.Page.Locator("main.job h1")).ToBeVisibleAsync();
        await Assertions.Expect(list).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Another_page_begins_without_them_and_what_is_not_ours_is_read_as_nothing()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Page.Locator(".job-card").WaitForAsync();
        Assert.Contains("Fell 640", await Kept(hand));
        var up = new TaskCompletionSource();
        await hand.Page.RouteAsync("**/*.wasm", route => GoOn(route, up.Task));
        await hand.Page.GotoAsync(hand.Address("machines"), new() { WaitUntil = WaitUntilState.Commit });
        await hand.Sees("Getting the bench ready.");
        await Assertions.Expect(hand.Page.Locator("main.last")).ToHaveCountAsync(0);
        up.SetResult();
        await Assertions.Expect(hand.Page.Locator("main:not(.starting) h1")).ToHaveTextAsync("Machines");
        await hand.Page.EvaluateAsync("() => localStorage.setItem('last jobs', '{\"jobs\":[')");
        await hand.OpenAnew("");
        await Assertions.Expect(hand.Page.Locator("main:not(.starting) h1")).ToHaveTextAsync("Today");
    }

    /// <summary>What the device kept of them, or null.</summary>
    internal static async Task<string?> Kept(BenchHand hand) =>
        await hand.Page.EvaluateAsync<string?>("() => localStorage.getItem('last jobs')");

    private static async Task GoOn(IRoute route, Task up)
    {
        await up;
        await route.ContinueAsync();
    }
}
