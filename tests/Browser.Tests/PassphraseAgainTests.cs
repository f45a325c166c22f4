using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What an open session is not enough for: the passphrase is asked for once more, by the shop itself, and what was typed stays.</summary>
public sealed class PassphraseAgainTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task A_figure_is_set_after_the_passphrase_was_shown_again_and_for_five_minutes_without()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        await hand.Sees($"{BenchHand.Person} is signed in since");
        shop.AgeSessions();
        await Sets(hand, "15", "second edition");
        await hand.Sees("This needs your passphrase once more");
        await hand.Page.Locator("#show-again #secret").FillAsync("ten grey herons on the weir");
        await hand.Page.Locator("#show-again #send").ClickAsync();
        await hand.Sees("That is not it.");
        Assert.Equal("second edition", await hand.Page.Locator("#why").InputValueAsync());
        await hand.Page.WaitForTimeoutAsync(5_500); // what the door waits after a wrong one
        await hand.Page.Locator("#show-again #secret").FillAsync(DoorTests.Passphrase);
        await hand.Page.Locator("#show-again #send").ClickAsync();
        await hand.Sees("15 – 32 mm");
        await hand.Sees("second edition");

        await Sets(hand, "16", "third edition");
        await hand.Sees("16 – 32 mm");
        await hand.Sees("third edition");
    }

    [Fact]
    public async Task An_owner_is_forgotten_after_the_passphrase_was_shown_again()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Import("id,name,plate,owner\nm1,Fell 640,HL 1,Ada Brook\n"u8.ToArray());
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await DoorTests.Closes(hand);
        shop.AgeSessions();
        await hand.Open("machines/m1");
        await hand.Sees("Ada Brook");
        await hand.Page.Locator("#forget").ClickAsync();
        await hand.Page.Locator("#forget-now").ClickAsync();
        await hand.Page.Locator("#show-again #secret").FillAsync(DoorTests.Passphrase);
        await hand.Page.Locator("#show-again #send").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#forget-now")).ToHaveCountAsync(0);
        await hand.Open("machines");
        await hand.Open("machines/m1");
        await Assertions.Expect(hand.Page.Locator("#forget")).ToHaveCountAsync(0);
        await Assertions.Expect(hand.Page.GetByText("Ada Brook")).ToHaveCountAsync(0);
    }

    private static async Task Sets(BenchHand hand, string from, string why)
    {
        await hand.Open("figures/fell-640/chain.slack");
        await hand.Page.Locator("#change").ClickAsync();
        await hand.Type(from);
        await hand.Page.Locator("#also").FillAsync("");
        await hand.Page.Locator("#why").FillAsync(why);
        await hand.Page.Locator("#keep").ClickAsync();
    }
}
