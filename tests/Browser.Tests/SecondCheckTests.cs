using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The second check, blind, by two people.</summary>
public sealed class SecondCheckTests(Published published, Chromium chromium)
{
    private const string Second = "Bram Okello";

    [Fact]
    public async Task Two_people_on_two_devices_differ_look_again_and_agree()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var one = await chromium.Device();
        var first = await one.Open(shop);
        await Tightens(first, "110");
        await first.Mark();
        await first.Sees("A second person has still to read it");

        await using var other = await chromium.Device();
        var second = new BenchHand(other.Context.Pages[0], shop.Address);
        await second.Page.GotoAsync(shop.Address);
        await second.Tap(Second);
        await second.Sees("Today");
        await second.Open($"jobs/{InstrumentJob.Number}");
        await second.Sees("a second person has still to read it, without seeing what the first one read");
        await SeesNothing(second);
        await InstrumentJob.At(second, "axle-nut");
        await Assertions.Expect(second.Page.Locator("#second-check")).ToBeVisibleAsync();
        await Assertions.Expect(second.Verdict).ToHaveCountAsync(0);
        await SeesNothing(second);
        await second.Type("100");
        await second.Save();
        await second.Sees($"{BenchHand.Person} read 110 N·m, {Second} read 100 N·m");
        await second.Sees("Both look again.");

        // the first one hears of it, reads and marks anew; the second reads blind once more
        await first.Sees("Both look again.");
        await Tightens(first, "110");
        await first.Mark();
        await second.Page.Locator("#second-check").WaitForAsync();
        await second.Type("110");
        await second.Save();
        await Assertions.Expect(second.Page.Locator("#second-outcome")).ToContainTextAsync("They agree, Eₙ = 0.");
        await second.Open($"jobs/{InstrumentJob.Number}/release");
        await Assertions.Expect(second.Says("a second person has still to read it")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task On_one_device_the_second_person_takes_over_by_name()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await Tightens(hand, "110");
        await hand.Mark();
        await hand.Page.Locator("#second-here").ClickAsync();
        await hand.Tap(Second);
        await Assertions.Expect(hand.Page.Locator("#second-check")).ToBeVisibleAsync();
        await hand.Tap("It clicked at 110 N·m");
        await hand.Save();
        await Assertions.Expect(hand.Page.Locator("#second-outcome")).ToContainTextAsync("They agree, Eₙ = 0");
    }

    [Fact]
    public async Task What_is_asked_of_the_second_person_stands_whole_on_a_phone()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Tightened);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "axle-nut");
        var asked = hand.Page.Locator("#second-check");
        await asked.WaitForAsync();
        // neither below the keys nor outside the screen
        Assert.True(
            await asked.EvaluateAsync<bool>(
                """
                (e) => {
                  const box = e.getBoundingClientRect();
                  return [box.top + 2, box.bottom - 2].every((y) => e.contains(document.elementFromPoint(box.left + 20, y)));
                }
                """
            )
        );
    }

    internal static async Task Tightens(BenchHand hand, string torque)
    {
        await InstrumentJob.At(hand, "axle-nut");
        await hand.Type(torque);
        await hand.Save();
        await hand.Verdict.WaitForAsync();
    }

    // the figure is the sheet's and may be seen: 110 N·m. What the first one read says "set and reached"
    private static async Task SeesNothing(BenchHand hand)
    {
        foreach (var words in (string[])["Tightened", $"Marked by {BenchHand.Person}", "set and reached"])
            await Assertions
                .Expect(hand.Page.GetByText(words, new() { Exact = words == "Tightened" }))
                .ToHaveCountAsync(0);
    }
}
