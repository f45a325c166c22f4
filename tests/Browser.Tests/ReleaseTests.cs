using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The signature under a job, on a phone.</summary>
public sealed class ReleaseTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task Where_two_have_to_sign_the_first_name_alone_releases_nothing()
    {
        await using var shop = await RunningShop.Start(published, setting: "release-by-two = true");
        await shop.Post(PastVisits.Unsigned());
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("jobs/u1/release");
        await Signs(hand, BenchHand.Person);
        await hand.Sees($"Signed by {BenchHand.Person}.");
        await Assertions.Expect(hand.Page.Locator("h1")).ToHaveTextAsync("Release");
        await Assertions.Expect(hand.Page.Locator("#name")).ToHaveCountAsync(0); // nobody signs twice

        await hand.Page.Locator("#second-here").ClickAsync();
        await hand.Tap("Bram Okello");
        await hand.Page.Locator("#name").FillAsync(BenchHand.Person);
        await Assertions.Expect(hand.Page.Locator("#release")).ToBeDisabledAsync();
        await Signs(hand, "Bram Okello");
        await Assertions.Expect(hand.Page.Locator("h1")).ToHaveTextAsync("Released");
        await hand.Sees($"Released by {BenchHand.Person} and Bram Okello");
    }

    private static async Task Signs(BenchHand hand, string name)
    {
        await hand.Page.Locator("#name").FillAsync(name);
        await hand.Page.Locator("#release").ClickAsync();
    }
}
