using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>A lead's word in the plan, while the door is closed: given on the spot, and asked for again where it was not.</summary>
[Collection(typeof(AloneOnTheMachine))]
public sealed class WordTests(Published published, Chromium chromium)
{
    private const string Asked = "**/api/door/word";

    [Fact]
    public async Task A_lead_gives_their_word_for_a_safety_point_and_without_it_the_drop_does_not_count()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        await Wants(hand, "Front brake pads, lining");
        await hand.Page.RouteAsync(Asked, route => route.AbortAsync(), new() { Times = 1 });
        await Says(hand, DoorTests.Passphrase);
        await hand.Sees("The shop does not answer, and it alone can tell whose word this is.");
        await Says(hand, "ten grey herons on the weir");
        await hand.Sees("That is not it.");
        await Assertions.Expect(hand.Page.Locator("#drop")).ToHaveCountAsync(0);
        await Says(hand, DoorTests.Passphrase);
        await hand.Sees("Dropped: new last week, seen on the bill (Ines Tallow; Ines Tallow stands for it)");
        await hand.SeesSaved(1, 1);
        await hand.Sees("In the plan: 32 points");
        await Assertions.Expect(hand.Page.Locator("#not-counting")).ToHaveCountAsync(0);

        // somebody who changed the program on the device: the shop does not know this word
        await hand.Page.RouteAsync(
            Asked,
            route => route.FulfillAsync(new() { ContentType = "application/json", Body = """{"confirmed":"1.x"}""" }),
            new() { Times = 1 }
        );
        await Wants(hand, "Rear brake pads, lining");
        await Says(hand, "whatever was typed");
        await hand.Sees("Does not count");
        await hand.Sees("Rear brake pads, lining: dropped, new last week, seen on the bill");
        await hand.Sees("In the plan: 32 points"); // front pads out, rear pads in again
        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await hand.Sees("nobody showed the shop whose word it is");
        await hand.OpenAnew($"jobs/{BenchHand.DemoJob}/plan");
        await hand.Sees("Does not count"); // the device knows it of itself
    }

    [Fact]
    public async Task On_arrival_it_is_given_for_the_job_that_is_about_to_be_opened()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        await hand.Open("arrival");
        await hand.Page.Locator("fieldset .choice").First.ClickAsync();
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = "Repair" }).ClickAsync();
        await Wants(hand, "Chain slack, lower run");
        await Says(hand, DoorTests.Passphrase);
        await hand.Sees("Ines Tallow stands for it");
        await hand.OpenJob();
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "Plan: add or drop" }).ClickAsync();
        await hand.Sees("Dropped: new last week, seen on the bill (Ines Tallow; Ines Tallow stands for it)");
        await hand.SeesSaved(2, 2); // arrival and drop are at the shop, which lets both count
        await Assertions.Expect(hand.Page.Locator("#not-counting")).ToHaveCountAsync(0);
        await hand.Sees("Dropped: new last week, seen on the bill");
    }

    [Fact]
    public async Task A_vouching_that_does_not_count_leaves_the_point_that_is_looked_at()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        await hand.Point("axle-alignment");
        await hand.Read("28.89", "29.80");
        await hand.Tap("Vouch for this figure");
        await hand.Tap(BenchHand.Person);
        // somebody who changed the program on the device
        await hand.Page.RouteAsync(
            Asked,
            route => route.FulfillAsync(new() { ContentType = "application/json", Body = """{"confirmed":"1.x"}""" })
        );
        await Says(hand, "whatever was typed");
        // what was read out stands on; the point itself takes it back when the shop has answered
        var vouched = hand
            .Page.Locator(".bench-scroll")
            .GetByText($"{BenchHand.Person} vouches for this figure.", new() { Exact = true });
        await hand.SeesSaved(2, 2);
        await Assertions.Expect(vouched).ToHaveCountAsync(0);
        await Assertions
            .Expect(hand.Page.GetByRole(AriaRole.Button, new() { Name = "Vouch for this figure" }))
            .ToBeVisibleAsync();
    }

    private static async Task Wants(BenchHand hand, string point)
    {
        await hand.Tap($"Drop: {point}");
        await hand.Page.Locator("#drop-why").FillAsync("new last week, seen on the bill");
        await hand
            .Page.Locator(".plan-form fieldset")
            .GetByRole(AriaRole.Button, new() { Name = BenchHand.Person })
            .ClickAsync();
    }

    private static async Task Says(BenchHand hand, string passphrase)
    {
        await hand.Page.Locator("#word #secret").FillAsync(passphrase);
        await hand.Page.Locator("#word #send").ClickAsync();
    }
}
