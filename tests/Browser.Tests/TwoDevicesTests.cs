using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Two devices that did not hear of each other, with the question of <see cref="FaultTests"/>.</summary>
public sealed partial class TwoDevicesTests(Published published, Chromium chromium)
{
    private const string All = "**/api/**";

    [Fact]
    public async Task What_two_devices_did_without_knowing_of_each_other_is_all_there_and_asked_again()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(PastVisits.Unsigned());
        await using var one = await chromium.Device(worker: true);
        await using var other = await chromium.Device(worker: true);
        var first = await one.Open(shop);
        var second = await other.Open(shop);
        var before = (await shop.EntryIds()).Count;

        await SamePointMarked(first, second);
        await first.SeesSaved(2, 2);
        await second.SeesSaved(2, 2);

        await ReleasedMeanwhile(first, second);
        var ids = await shop.EntryIds();
        Assert.Equal(before + 6, ids.Count);
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.Equal(0, await shop.Verify());
    }

    [Fact]
    public async Task A_device_that_was_copied_is_told_and_nobodys_entry_is_lost()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(worker: true);
        var hand = await device.Open(shop);
        var before = (await shop.EntryIds()).Count;
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.SeesSaved(1, 1);
        var profile = await device.Close();
        var copied = BrowserDevice.Copy(profile);
        await using var left = await chromium.Device(profile: profile, worker: true);
        await using var right = await chromium.Device(profile: copied, worker: true);

        var first = await Writes(left, shop, "from the one");
        await first.SeesSaved(2, 2);
        var twin = await Writes(right, shop, "from its copy");
        await twin.SeesSaved(2, 2); // the shop has it, if not in order
        await twin.Sees("Another device writes under the name of this one");
        await twin.Page.Locator("#aside a").ClickAsync();
        await twin.Sees("Its number 2 is held by another entry");
        await twin.Point("chain-slack");
        await twin.Note("from its copy, later");
        await twin.SeesSaved(3, 3);
        await first.Note("from the one, later");
        await first.SeesSaved(3, 3);
        await first.Sees("Another device writes under the name of this one");

        var (exit, says) = await shop.Verified();
        Assert.Equal(0, exit);
        var counted = Counted().Match(says);
        Assert.Equal(
            before + 5, // the one before, and two from each
            int.Parse(counted.Groups[1].Value) + int.Parse(counted.Groups[2].Value)
        );
    }

    private static async Task<BenchHand> Writes(BrowserDevice device, RunningShop shop, string words)
    {
        var hand = new BenchHand(device.Context.Pages[0], shop.Address);
        await hand.Point("chain-slack");
        await hand.Note(words);
        return hand;
    }

    /// <summary>Both read and mark one point; both readings and both marks stand, and the point is asked again, for neither mark had seen the other reading.</summary>
    private static async Task SamePointMarked(BenchHand first, BenchHand second)
    {
        foreach (var hand in (BenchHand[])[first, second])
        {
            await hand.Page.RouteAsync(All, route => route.AbortAsync());
            await hand.Point("chain-slack");
        }
        await first.Read("60", "40");
        await first.Mark();
        await second.Read("61", "40");
        await second.Mark();
        await first.SeesSaved(2, 0);
        await second.SeesSaved(2, 0);
        foreach (var hand in (BenchHand[])[first, second])
            await hand.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
    }

    /// <summary>A job is released while another device still holds a reading of it: the reading comes in, and the release is asked for again.</summary>
    private static async Task ReleasedMeanwhile(BenchHand first, BenchHand second)
    {
        await second.Page.RouteAsync(All, route => route.AbortAsync());
        await second.Point("distance", "u1");
        await second.Tap("Read again");
        await second.Read("11905");
        await second.SeesSaved(3, 2);
        await first.Open("jobs/u1/release");
        await first.Page.Locator("#name").FillAsync(BenchHand.Person);
        await first.Page.Locator("#release").ClickAsync();
        await Assertions.Expect(first.Page.Locator("h1")).ToHaveTextAsync("Released");
        await first.SeesSaved(3, 3);
        await second.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.IgnoreErrors });
        await second.SeesSaved(3, 3);
        await Assertions.Expect(first.Page.Locator("h1")).ToHaveTextAsync("Release"); // told at once
    }

    [GeneratedRegex(@"^Intact: (\d+) entries in \d+ jobs; (\d+) set aside")]
    private static partial Regex Counted();
}
