using System.Text;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The register as it is typed into, scanned into and looked at; a job for one of its machines; and all of it without the shop.</summary>
public sealed class MachinesTests(Published published, Chromium chromium)
{
    internal const string List =
        "id,vin,plate,make,name,year,distance-km,distance-on,owner,contact\n"
        + "17,GZ0FE64C1RH000417,HL 417,Tarnmoor,Fell 640,2024,12400,2026-02-14,Ada Brook,0555 010 020\n"
        + "18,GZ0FE64C3RH000418,HL 418,Tarnmoor,Fell 640,2024,8150,2025-11-03,Bo Ley,0555 010 021\n";

    [Fact]
    public async Task A_machine_of_the_register_is_found_as_one_types_and_a_job_takes_it_over()
    {
        await using var shop = await Stocked();
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Open("machines");
        await Assertions.Expect(hand.Page.Locator(".lines a")).ToHaveCountAsync(2); // the shop's own
        foreach (var text in (string[])["h000417", "hl-417", "fell 417", "brook"])
        {
            await hand.Page.Locator("#find").FillAsync(text);
            await Assertions.Expect(hand.Page.Locator(".lines a")).ToHaveCountAsync(1);
            await hand.Sees("HL 417");
        }
        await hand.Page.Locator(".lines a").ClickAsync();
        await hand.Sees("GZ0FE64C1RH000417");
        await hand.Sees("2026-02-14: 12400 km");
        await hand.Page.Locator("#open-job").ClickAsync();
        await hand.Page.Locator("#sheets button").First.ClickAsync(); // the register knows no figure sheet
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = "Handover" }).ClickAsync();
        await hand.OpenJob();
        await hand.Sees("GZ0FE64C1RH000417");
        await hand.SeesSaved(1, 1);

        // without shop and register the job is whole, and the machine is known
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        var job = new Uri(hand.Page.Url).AbsolutePath.TrimStart('/');
        await shop.Stop();
        await hand.Open(job);
        await hand.Sees("GZ0FE64C1RH000417");
        await hand.Open("machines");
        await hand.Page.Locator("#find").FillAsync("000417");
        await hand.Sees("The shop cannot be reached");
        await Assertions.Expect(hand.Page.Locator(".lines a")).ToHaveCountAsync(1);
        await hand.Page.Locator(".lines a").ClickAsync();
        await hand.Sees("The register could not be asked.");
        await Assertions.Expect(hand.Page.Locator(".job-card")).ToHaveCountAsync(1);
        await hand.Sees("2026-02-14: 12400 km");
    }

    [Fact]
    public async Task A_reader_that_types_opens_the_machine_wherever_the_focus_stands()
    {
        await using var shop = await Stocked();
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("machines");
        await hand.Page.Keyboard.TypeAsync("GZ0FE64C3RH000418");
        await Assertions.Expect(hand.Page.Locator("#find")).ToHaveValueAsync("GZ0FE64C3RH000418");
        await hand.Sees("check digit");
        await hand.Page.Keyboard.PressAsync("Enter");
        await hand.Page.WaitForURLAsync("**/machines/18");
        await hand.Sees("HL 418");
    }

    [Fact]
    public async Task An_owner_is_forgotten_after_one_question_that_says_what_goes_and_what_stays()
    {
        await using var shop = await Stocked();
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("machines/17");
        await hand.Sees("Ada Brook");
        await hand.Page.Locator("#forget").ClickAsync();
        await hand.Sees("VIN, plate, distances and jobs stay");
        await hand.Tap("Keep them");
        await hand.Sees("Ada Brook");
        await hand.Page.Locator("#forget").ClickAsync();
        await hand.Page.Locator("#forget-now").ClickAsync();
        await hand.Sees("The owner is forgotten.");
        await hand.Open("machines/17");
        await hand.Sees("Nobody is on record.");
        await hand.Sees("HL 417");
    }

    [Fact]
    public async Task Readings_of_a_point_are_drawn_with_limit_and_forecast_in_words()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await shop.Visits(6);
        await hand.Open("machines/fell-640-0412");
        await Assertions.Expect(hand.Page.Locator(".job-card")).ToHaveCountAsync(7);
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "Rear tyre, tread depth" }).ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator(".graph svg"))
            .ToHaveAttributeAsync("aria-label", new System.Text.RegularExpressions.Regex("6 readings over distance"));
        await Assertions.Expect(hand.Page.Locator("#forecast")).ToContainTextAsync("to the limit");
        await Assertions.Expect(hand.Page.Locator(".compared tbody tr")).ToHaveCountAsync(6);
    }

    [Fact]
    public async Task The_wear_of_three_other_machines_is_in_the_forecast_and_without_the_shop_it_says_that_it_is_not()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await shop.Visits(2);
        await shop.Post(PastVisits.Batches(6, like: 1));
        await shop.Post(PastVisits.Batches(6, like: 2));
        const string point = "machines/fell-640-0412/points/tyre-rear-tread";
        var basis = hand.Page.Locator("#basis");
        await hand.Open(point);
        await Assertions
            .Expect(basis)
            .ToHaveTextAsync(
                "From this machine alone. Only 2 other machines of its figure sheet show how fast it wears here; three are needed."
            );
        var alone = await hand.Page.Locator("#forecast").InnerTextAsync();
        await shop.Post(PastVisits.Batches(6, like: 3));
        await hand.Open(point);
        await Assertions.Expect(basis).ToHaveTextAsync("With the wear of 3 other machines.");
        await Assertions.Expect(hand.Page.Locator("#forecast")).Not.ToHaveTextAsync(alone);
        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await shop.Stop();
        await hand.Open(point);
        await Assertions
            .Expect(basis)
            .ToHaveTextAsync("From this machine alone. The shop could not be asked how other machines wear here.");
        await Assertions.Expect(hand.Page.Locator("#forecast")).ToHaveTextAsync(alone);
    }

    [Fact]
    public async Task Each_visit_shows_its_photographs_and_documents_and_what_of_them_is_not_here()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await shop.Post(PastVisits.Released());
        await hand.Open($"jobs/{BenchHand.DemoJob}/photograph");
        await hand.Photographs("tank scratched");
        await hand.Save();
        await hand.SeesSaved(1, 1);
        await hand.Open("machines/fell-640-0412");
        await hand.Sees("Released by Bram Okello");
        var open = hand.Page.Locator(".jobs li").Filter(new() { HasText = "Job 412" });
        var released = hand.Page.Locator(".jobs li").Filter(new() { HasText = "Job r1" });
        await Assertions.Expect(open.Locator(".photograph img")).ToHaveJSPropertyAsync("naturalWidth", 1600);
        await Assertions.Expect(open).ToContainTextAsync("not released");
        await Assertions.Expect(hand.Page.GetByText("A handover sheet comes with the release.")).ToHaveCountAsync(1);
        await Assertions.Expect(open.GetByRole(AriaRole.Link, new() { Name = "Handover sheet" })).ToHaveCountAsync(0);
        await Assertions.Expect(open.GetByRole(AriaRole.Link, new() { Name = "Log book, Job 412" })).ToBeVisibleAsync();
        // taken on another device that never sent the pictures
        await Assertions.Expect(released.Locator(".photograph")).ToHaveCountAsync(2);
        await Assertions
            .Expect(released.Locator(".photograph").First)
            .ToContainTextAsync("Not on this device, and the shop did not give it.");
        await hand.Tap("Show 1 more photograph");
        await Assertions.Expect(released.Locator(".photograph")).ToHaveCountAsync(3);
        var sheet = released.GetByRole(AriaRole.Link, new() { Name = "Handover sheet (PDF), Job r1" });
        using var http = new HttpClient { BaseAddress = new(shop.Address) };
        var pdf = await http.GetByteArrayAsync(
            await sheet.GetAttributeAsync("href"),
            TestContext.Current.CancellationToken
        );
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);

        await hand.Page.EvaluateAsync("() => navigator.serviceWorker.ready.then(() => true)");
        await shop.Stop();
        await hand.Open("machines/fell-640-0412");
        await Assertions
            .Expect(released)
            .ToContainTextAsync("Handover sheet and log book are made at the shop, which cannot be reached.");
        await Assertions.Expect(open).ToContainTextAsync("The log book is made at the shop, which cannot be reached.");
        await Assertions.Expect(sheet).ToHaveCountAsync(0);
        await Assertions.Expect(open.Locator(".photograph img")).ToHaveJSPropertyAsync("naturalWidth", 1600);
    }

    [Fact]
    public async Task Do_not_ride_holds_the_job_until_somebody_decides_with_a_reason()
    {
        await using var shop = await Stocked();
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("arrival?machine=17");
        await hand.Page.Locator("#sheets button").First.ClickAsync();
        await hand.Sees("26X-011");
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = "Handover" }).ClickAsync();
        await hand.OpenJob();
        var held = hand.Page.Locator(".holds").GetByText("Do not ride: campaign 26X-011");
        await Assertions.Expect(held).ToBeVisibleAsync();
        await hand.Tap("It leaves with it open");
        await Assertions.Expect(hand.Page.GetByRole(AriaRole.Button, new() { Name = "Decide" })).ToBeDisabledAsync();
        await hand.Page.Locator("#reason-26X-011").FillAsync("goes on a trailer");
        await hand.Tap("Decide");
        await Assertions.Expect(held).ToHaveCountAsync(0);
        await hand.Sees("26X-011: left open by Ines Tallow: goes on a trailer");
    }

    private async Task<RunningShop> Stocked()
    {
        var shop = await RunningShop.Start(published);
        await shop.Import(Encoding.UTF8.GetBytes(List));
        return shop;
    }
}
