using System.Security.Cryptography;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What a technician gives at a point: a figure that the sheet has not, a name that vouches, a photograph.</summary>
public sealed class AtThePointTests(Published published, Chromium chromium)
{
    private const string Pads = "pads.rear";

    [Fact]
    public async Task A_missing_figure_is_taken_from_the_manual_on_the_spot_and_judges_what_was_read()
    {
        await using var shop = await RunningShop.Start(published, without: Pads);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("rear-pads");
        await hand.Sees("The sheet has no figure for this.");
        await hand.Read("3.10", "3.30");
        await hand.SeesVerdict("Unproven: no figure to judge by");
        await hand.Sees("Give one, then it can be marked.");

        await hand.Page.Locator("#give").ClickAsync();
        await hand.Page.Locator("#from-manual").ClickAsync();
        await hand.Tap("At least");
        await hand.Tap("Another one");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeDisabledAsync();
        await hand.Page.Locator("#title").FillAsync("Fell 640 workshop manual");
        await hand.Page.Locator("#edition").FillAsync("1, 2024");
        await hand.Page.Locator("#place").FillAsync("p. 72");
        await hand.Type("1.5");
        await hand.Save();

        await hand.SeesVerdict("Inside");
        await hand.Sees("the maker asks for at least 1.5 mm (Fell 640 workshop manual, 1, 2024, p. 72)");
        await hand.Sees($"given at the bench by {BenchHand.Person}");
        await hand.Mark();

        // the manual still lies open: it is offered again
        await hand.Tap("Give another figure");
        await hand.Page.Locator("#from-manual").ClickAsync();
        await Assertions
            .Expect(hand.Page.GetByRole(AriaRole.Button, new() { Name = "Fell 640 workshop manual, 1, 2024" }))
            .ToHaveAttributeAsync("aria-pressed", "true");
    }

    [Fact]
    public async Task The_law_of_the_shops_place_stands_there_to_be_taken_with_its_clause()
    {
        await using var shop = await RunningShop.Start(published, without: "tyre.tread");
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("tyre-front-tread");
        await hand.Page.Locator("#give-figure").ClickAsync();
        await hand.Page.Locator("#from-law-here").ClickAsync();
        await hand.Sees("The law in force comes first");
        await hand.Sees("GB, Road Vehicles (Construction and Use) Regulations 1986 reg. 27");
        await hand.Save();
        await hand.Sees($"given at the bench by {BenchHand.Person}");
        await Assertions.Expect(hand.Page.Locator(".figure strong")).ToHaveTextAsync("≥ 1 mm");
        await Assertions.Expect(hand.Page.Locator(".not-makers")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Common_practice_is_shown_as_what_it_is_and_wants_a_name()
    {
        await using var shop = await RunningShop.Start(published, without: Pads);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("rear-pads");
        await hand.Page.Locator("#give-figure").ClickAsync();
        await hand.Page.Locator("#from-habit").ClickAsync();
        await hand.Sees("Common practice, no source.");
        await hand.Sees("common practice, not the maker's");
        await hand.Save();
        await hand.Sees("common practice, not the maker's");
        await hand.Read("3.10", "3.30");
        await hand.SeesVerdict("Inside");
        await hand.Mark();

        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await hand.Sees("somebody has to vouch for it by name");
        await hand.Point("rear-pads");
        await hand.Page.Locator("#vouch").ClickAsync();
        await hand.Page.Locator("#name").FillAsync("Somebody Else");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeDisabledAsync();
        await hand.Page.Locator("#name").FillAsync("bram okello");
        await hand.Save();
        await hand.Sees("Bram Okello vouches for this figure.");
        await hand.Open($"jobs/{BenchHand.DemoJob}");
        await Assertions.Expect(hand.Page.GetByText("has to vouch for it")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_law_is_named_by_a_code_that_exists_and_its_clause_and_judges()
    {
        await using var shop = await RunningShop.Start(published, without: Pads);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("rear-pads");
        await hand.Page.Locator("#give-figure").ClickAsync();
        await hand.Page.Locator("#from-law").ClickAsync();
        await hand.Tap("At least");
        await hand.Type("1.5");
        await hand.Sees("Say where it is law.");
        await hand.Page.Locator("#source").FillAsync("uk");
        await hand.Sees("\"uk\" is no code of ISO 3166");
        await hand.Page.Locator("#source").FillAsync("gb");
        await hand.Sees("Say in which clause it stands.");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeDisabledAsync();
        await hand.Page.Locator("#clause").FillAsync("Example Act, s. 7");
        await hand.Save();
        await hand.Read("3.10", "3.30");
        await hand.SeesVerdict("Inside");
        await hand.Sees("the law asks for at least 1.5 mm (GB, Example Act, s. 7)");
        // a law binds: nobody has to vouch
        await Assertions.Expect(hand.Page.Locator("#vouch")).ToHaveCountAsync(0);
        await hand.SeesSaved(2, 2);
    }

    [Fact]
    public async Task A_standard_is_named_by_its_number_and_clause_and_judges()
    {
        await using var shop = await RunningShop.Start(published, without: Pads);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("rear-pads");
        await hand.Page.Locator("#give-figure").ClickAsync();
        await hand.Page.Locator("#from-standard").ClickAsync();
        await hand.Tap("At least");
        await hand.Type("1.5");
        await hand.Sees("Say which standard it is.");
        await hand.Page.Locator("#source").FillAsync("EX 1234:2020");
        await hand.Sees("Say in which clause it stands.");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeDisabledAsync();
        await hand.Page.Locator("#clause").FillAsync("5.2");
        await hand.Save();
        await hand.Read("3.10", "3.30");
        await hand.SeesVerdict("Inside");
        await hand.Sees("the standard asks for at least 1.5 mm (EX 1234:2020, 5.2)");
    }

    [Fact]
    public async Task What_contradicts_the_point_is_told_and_nothing_is_lost()
    {
        await using var shop = await RunningShop.Start(published, without: Pads);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("rear-pads");
        await hand.Page.Locator("#give-figure").ClickAsync();
        await hand.Page.Locator("#from-shop").ClickAsync();
        await hand.Tap("From … to …");
        await hand.Type("3");
        await hand.Page.Locator(".num").Nth(1).ClickAsync();
        await hand.Type("2");
        await hand.Save();
        await hand.Sees("the ends are swapped");
        await Assertions.Expect(hand.Page.Locator(".num").First).ToContainTextAsync("3");
        await hand.SeesSaved(0, 0);
    }

    [Fact]
    public async Task A_photograph_taken_without_network_waits_here_and_reaches_the_shop_without_its_place()
    {
        await using var shop = await RunningShop.Start(published, without: Pads);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        await hand.Point("rear-pads");
        await shop.Stop();
        await hand.Tap("Photograph");
        await hand.Tap("The page with its figure");
        await hand.Photographs("page 72");
        await hand.Save();
        await Assertions.Expect(hand.Page.Locator(".photograph img")).ToHaveJSPropertyAsync("naturalWidth", 1600);
        await hand.SeesSaved(1, 0);
        await hand.Page.Locator(".to-job").ClickAsync();
        await Assertions.Expect(hand.Page.Locator(".photograph")).ToContainTextAsync("page 72");
        Assert.False(Directory.Exists(Path.Combine(shop.Data, "photographs")));

        await shop.Start();
        await hand.SeesSaved(1, 1);
        var stored = Assert.Single(Directory.GetFiles(Path.Combine(shop.Data, "photographs")));
        var file = await File.ReadAllBytesAsync(stored, TestContext.Current.CancellationToken);
        Assert.Equal($"{Convert.ToHexStringLower(SHA256.HashData(file))}.jpg", Path.GetFileName(stored));
        Assert.DoesNotContain(Camera.Place, System.Text.Encoding.Latin1.GetString(file));
        Assert.DoesNotContain("ICC_PROFILE", System.Text.Encoding.Latin1.GetString(file));

        // another device gets it from the shop
        await using var other = await chromium.Device(worker: true);
        var second = await other.Open(shop);
        await second.Point("rear-pads");
        await Assertions.Expect(second.Page.Locator(".photograph img")).ToHaveJSPropertyAsync("naturalWidth", 1600);
    }

    [Fact]
    public async Task A_full_store_says_that_nothing_was_kept()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}/photograph");
        // no disk can be filled from here: the store answers as a full one does (Indexed Database API 3.0, "QuotaExceededError")
        await hand.Page.EvaluateAsync(
            "() => { IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; }"
        );
        await hand.Photographs("the left side");
        await hand.Save();
        await hand.Sees("This device has no room for the picture.");
        await hand.SeesSaved(0, 0);
    }

    [Fact]
    public async Task What_is_no_picture_is_said()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open($"jobs/{BenchHand.DemoJob}/photograph");
        await hand
            .Page.Locator("#picture")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "page.jpg",
                    MimeType = "image/jpeg",
                    Buffer = "no picture"u8.ToArray(),
                }
            );
        await hand.Sees("cannot read that file as a picture");
        await Assertions.Expect(hand.Page.Locator("#save")).ToBeDisabledAsync();
    }
}
