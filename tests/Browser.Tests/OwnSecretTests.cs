using System.Text.Json.Nodes;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Somebody changes their own secret: with the one before, and with one that the shop takes.</summary>
public sealed class OwnSecretTests(Published published, Chromium chromium)
{
    private const string Next = "eleven slow barges under the bridge";

    [Fact]
    public async Task A_lead_changes_the_passphrase_and_signs_in_with_the_new_one()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        await hand.Open("door/secret");
        await Changes(hand, DoorTests.Passphrase, Next, "eleven slow barges");
        await hand.Sees("The two are not the same.");
        await Changes(hand, DoorTests.Passphrase, "too short", "too short");
        await Assertions.Expect(hand.Page.Locator("#no")).ToContainTextAsync("15"); // then the fields are empty again
        await Changes(hand, "ten grey herons on the weir", Next, Next);
        await Assertions.Expect(hand.Page.Locator("#no")).ToHaveTextAsync("That is not it.");
        await hand.Page.WaitForTimeoutAsync(5_500); // what the door waits after a wrong one
        await Changes(hand, DoorTests.Passphrase, Next, Next);
        await Assertions.Expect(hand.Page.Locator("#change")).ToHaveCountAsync(0);

        await hand.Open("device");
        await hand.Page.Locator("#sign-out").ClickAsync();
        await hand.Tap(BenchHand.Person);
        await SignsIn(hand, DoorTests.Passphrase);
        await hand.Sees("That is not it.");
        await hand.Page.WaitForTimeoutAsync(5_500);
        await SignsIn(hand, Next);
        await hand.Page.Locator("#sign-out").WaitForAsync();
    }

    [Fact]
    public async Task Where_else_somebody_is_signed_in_is_listed_before_they_choose_another()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        // what the shop says of other devices is tested with the shop; here that it is shown
        await device.Context.RouteAsync(
            "**/api/door",
            async route =>
            {
                var answer = await route.FetchAsync();
                var said = JsonNode.Parse(await answer.TextAsync())!;
                said["elsewhere"] = new JsonArray(
                    new JsonObject { ["label"] = "Tablet at the lift", ["since"] = "2026-11-29T08:15:00+00:00" }
                );
                await route.FulfillAsync(new() { Response = answer, Body = said.ToJsonString() });
            }
        );
        await hand.Open("door/secret");
        await Assertions.Expect(hand.Page.Locator("#elsewhere li")).ToHaveCountAsync(1);
        await Assertions.Expect(hand.Page.Locator("#elsewhere")).ToContainTextAsync("Tablet at the lift");
    }

    private static async Task Changes(BenchHand hand, string now, string next, string twice)
    {
        await hand.Page.Locator("#secret").FillAsync(now);
        await hand.Page.Locator("#next").FillAsync(next);
        await hand.Page.Locator("#twice").FillAsync(twice);
        await hand.Page.Locator("#change").ClickAsync();
    }

    private static async Task SignsIn(BenchHand hand, string secret)
    {
        await hand.Page.Locator("#secret").FillAsync(secret);
        await hand.Page.Locator("#send").ClickAsync();
    }
}
