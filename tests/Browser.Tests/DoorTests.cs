using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The shop's door, closed in the browser: a second device is let in, a person signs in on it, and nothing is lost while nobody is.</summary>
public sealed class DoorTests(Published published, Chromium chromium)
{
    public const string Passphrase = "nine grey herons on the weir";
    internal const string Technician = "Bram Okello";
    internal const string Pin = "480913";

    [Fact]
    public async Task A_device_is_let_in_a_person_signs_in_and_entries_wait_for_whoever_comes()
    {
        await using var shop = await RunningShop.Start(published);
        await using var desk = await chromium.Device(1440, 900, worker: true);
        var lead = await desk.Open(shop);
        await Closes(lead);
        // as the shop answers when the passphrase was shown longer than some minutes ago
        await lead.Page.RouteAsync(
            "**/api/door/device-code",
            route =>
                route.FulfillAsync(
                    new()
                    {
                        Status = 428,
                        ContentType = "application/json",
                        Body = """{"error":"Once more."}""",
                    }
                ),
            new() { Times = 1 }
        );
        await lead.Tap("Let another device in");
        await lead.Page.Locator("#show-again #secret").FillAsync(Passphrase);
        await lead.Page.Locator("#show-again #send").ClickAsync();
        var code = await Said(lead, "#device-code");

        await using var tablet = await chromium.Device(worker: true);
        var hand = new BenchHand(tablet.Context.Pages[0], shop.Address);
        await hand.Page.GotoAsync($"{shop.Address}#{code}");
        await Assertions.Expect(hand.Page.Locator("#code")).ToHaveValueAsync(code);
        await hand.Page.Locator("#label").FillAsync("Tablet at lift 1");
        await hand.Page.Locator("#enrol").ClickAsync();

        await Starts(lead, hand);
        await hand.Open("");
        Assert.Null(await LastJobsTests.Kept(hand)); // behind a closed door nothing is shown before somebody signed in
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);

        await hand.Open("device");
        await hand.Page.Locator("#sign-out").ClickAsync();
        await hand.Tap(Technician);
        await hand.Type("111112");
        await hand.Sees("That is not it.");
        await hand.Type(Pin);
        await hand.Page.Locator("#sign-out").WaitForAsync(); // back where it was

        // the shop forgets who is here while the device is without network: work goes on, and waits for whoever signs in next
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await tablet.Context.SetOfflineAsync(true);
        await hand.Point("chain-slack");
        await hand.Tap("Read again");
        await hand.Read("74", "25");
        await hand.SeesSaved(2, 1);
        await tablet.Context.ClearCookiesAsync();
        await tablet.Context.SetOfflineAsync(false);
        await hand.Sees("Who are you?");
        await hand.Tap(BenchHand.Person);
        await hand.Page.Locator("#secret").FillAsync(Passphrase);
        await hand.Page.Locator("#send").ClickAsync();
        await hand.SeesSaved(2, 2);

        await lead.Open("door");
        await lead.Sees($"While {BenchHand.Person} was signed in, the device brought entries of {Technician}: 1.");
    }

    [Fact]
    public async Task With_a_closed_door_the_secret_is_asked_again_for_a_release()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(PastVisits.Unsigned());
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await Closes(hand);
        await hand.Open("jobs/u1/release");
        await hand.Page.Locator("#secret").FillAsync("ten grey herons on the weir");
        await hand.Page.Locator("#send").ClickAsync();
        await hand.Sees("That is not it.");
        await hand.Page.Locator("#secret").FillAsync(Passphrase);
        await hand.Page.Locator("#send").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("h1")).ToHaveTextAsync("Released");
    }

    /// <summary>The lead closes the door on this device.</summary>
    internal static async Task Closes(BenchHand hand)
    {
        await hand.Open("door/close");
        await hand.Tap(BenchHand.Person);
        await hand.Page.Locator("#secret").FillAsync(Passphrase);
        await hand.Page.Locator("#twice").FillAsync(Passphrase);
        await hand.Page.Locator("#label").FillAsync("Desk");
        await hand.Page.Locator("#close").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("h1"))
            .ToHaveTextAsync(hand.Finds?.Invoke("The door", true) ?? new("^The door$"));
    }

    private static async Task Starts(BenchHand lead, BenchHand hand)
    {
        var code = await StartCode(lead);
        await hand.Tap(Technician);
        await Starts(hand, code);
        await Assertions.Expect(hand.Page.GetByRole(AriaRole.Heading, new() { Name = "Today" })).ToBeVisibleAsync();
    }

    /// <summary>The lead gives the technician a start code.</summary>
    internal static async Task<string> StartCode(BenchHand lead)
    {
        await lead
            .Page.Locator(".row")
            .Filter(new() { HasText = Technician })
            .GetByRole(AriaRole.Button)
            .First.ClickAsync();
        return await lead.Page.Locator("#start-code strong").InnerTextAsync();
    }

    /// <summary>The technician chooses their six digits with it.</summary>
    internal static async Task Starts(BenchHand hand, string code)
    {
        await hand.Page.Locator("#code").FillAsync(code);
        await hand.Page.Locator("#secret").FillAsync(Pin);
        await hand.Page.Locator("#twice").FillAsync(Pin);
        await hand.Page.Locator("#start").ClickAsync();
    }

    private static async Task<string> Said(BenchHand hand, string selector) =>
        (await hand.Page.Locator(selector).InnerTextAsync()).Split(' ')[^1];
}
