using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The plan and its bench order, by taps on the published program.</summary>
[Collection(typeof(AloneOnTheMachine))]
public sealed class PlanTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task A_safety_point_is_dropped_with_a_reason_and_a_lead_and_taken_back_in()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        await hand.Tap("Drop: Front brake pads, lining");
        await Assertions.Expect(hand.Page.Locator("#drop")).ToBeDisabledAsync();
        await hand.Page.Locator("#drop-why").FillAsync("new last week, seen on the bill");
        await Assertions.Expect(hand.Page.Locator("#drop")).ToBeDisabledAsync();
        await hand.Sees("A reason and a lead's name are needed.");
        await hand.Tap(BenchHand.Person);
        await hand.Page.Locator("#drop").ClickAsync();
        await hand.Sees("Dropped: new last week, seen on the bill (Ines Tallow; Ines Tallow stands for it)");
        await hand.Sees("In the plan: 32 points");
        await hand.Tap("Take back in");
        await hand.Sees("In the plan: 33 points");
    }

    [Fact]
    public async Task What_is_asked_for_besides_is_taken_in_and_any_point_of_the_book_is_added()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        // the axle nut is in the plan, and the brakes have to turn free after it
        await hand.Tap("Take in: Wheels turn free after braking");
        await hand.Sees("In the plan: 34 points");
        await hand.Tap("Add a point");
        await hand.Page.Locator("#add-find").FillAsync("disc");
        await hand.Tap("Front brake discs, thickness");
        await hand.Page.Locator("#add-why").FillAsync("It pulsed on the way here.");
        await hand.Page.Locator("#add").ClickAsync();
        await hand.Sees("It pulsed on the way here.");
        await hand.Sees("In the plan: 35 points");
    }

    [Fact]
    public async Task An_arrival_shows_the_plan_with_its_whys_and_opens_the_job_with_it()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("arrival");
        await hand.Page.Locator("fieldset .choice").First.ClickAsync();
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = "Repair" }).ClickAsync();
        await hand.Sees("Due, every 1000 km by the maker (handbook p. 12): not on record: unknown, treat as due.");
        await hand.Tap("Drop: Paint, chrome and plastics, as it is");
        await hand.Tap("The owner does not want it");
        await hand.Page.Locator("#drop").ClickAsync();
        await hand.Page.Locator("#promised").FillAsync("2020-11-24T16:00");
        await hand.Sees("lies in the past");
        await Assertions.Expect(hand.Page.Locator("#open")).ToBeDisabledAsync();
        await hand.Page.Locator("#promised").FillAsync($"{DateTime.Now.AddDays(1):yyyy-MM-dd}T16:00");
        await hand.OpenJob();
        await hand.Sees("Bench order");
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "Plan: add or drop" }).ClickAsync();
        await hand.Sees("Dropped: The owner does not want it (Ines Tallow)");
    }

    // a page may stand still for 50 ms unnoticed, for 200 ms nobody would call it frozen; the limit here allows for a busy machine
    [Fact]
    public async Task A_new_order_does_not_freeze_the_page()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await Assertions
            .Expect(hand.Page.Locator(".order"))
            .ToHaveAttributeAsync("aria-busy", "false", new() { Timeout = 60_000 });
        await hand.Page.EvaluateAsync(
            """
            () => {
              window.longest = 0;
              let last = performance.now();
              const tick = () => { const now = performance.now(); window.longest = Math.max(window.longest, now - last); last = now; setTimeout(tick, 0); };
              tick();
            }
            """
        );
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "Chain slack, lower run" }).First.ClickAsync();
        await hand.Read("60", "40");
        await hand.Mark();
        await hand.Page.Locator(".to-job").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator(".order"))
            .ToHaveAttributeAsync("aria-busy", "false", new() { Timeout = 60_000 });
        var longest = await hand.Page.EvaluateAsync<double>("() => window.longest");
        TestContext.Current.SendDiagnosticMessage($"the page stood still for {longest:0} ms at most");
        Assert.InRange(longest, 0, 1500);
    }

    [Fact]
    public async Task What_has_to_come_first_is_asked_for_before_the_mark()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("drain-plug");
        await hand.Page.GetByRole(AriaRole.Button).Filter(new() { HasText = "It clicked at" }).First.ClickAsync();
        await hand.Save();
        await hand.Sees("First, because the order is safety: Warm the engine up.");
        await Assertions.Expect(hand.Page.Locator("#mark")).ToBeDisabledAsync();
        await Assertions.Expect(hand.Page.Locator("#first")).ToBeVisibleAsync();
    }
}
