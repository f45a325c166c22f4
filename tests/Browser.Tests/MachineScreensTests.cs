using System.Text;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Pictures of machines that have a past, in whole pages, for people to look at, in <c>out/screens</c>; as <see cref="ScreenshotTests"/>.</summary>
public sealed class MachineScreensTests(Published published, Chromium chromium)
{
    private static readonly (string Name, Func<BenchHand, Task> Open)[] Screens =
    [
        ("machines-found", Found),
        ("machine-past", hand => hand.Open("machines/fell-640-0412")),
        ("machine-point", hand => hand.Open("machines/fell-640-0412/points/tyre-rear-tread")),
        ("machine-photographs", Photographs),
        ("machine-point-few", hand => hand.Open("machines/fell-640-0412/points/tyre-front-pressure")),
        ("machine-owner", Owner),
        ("machine-arrival", Arrival),
        ("machine-held", Held),
    ];

    [Theory]
    [Trait("for", "looking")]
    [InlineData("phone", 390, 844, ColorScheme.Light)]
    [InlineData("phone", 390, 844, ColorScheme.Dark)]
    [InlineData("tablet", 820, 1180, ColorScheme.Light)]
    [InlineData("tablet", 820, 1180, ColorScheme.Dark)]
    [InlineData("desk", 1440, 900, ColorScheme.Light)]
    [InlineData("desk", 1440, 900, ColorScheme.Dark)]
    public async Task A_machine_with_a_past_can_be_drawn(string size, int width, int height, ColorScheme scheme)
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Import(Encoding.UTF8.GetBytes(MachinesTests.List));
        await shop.Visits(14);
        await shop.Post(PastVisits.Released());
        for (var like = 1; like <= 3; like++)
            await shop.Post(PastVisits.Batches(14, like));
        await using var device = await chromium.Device(width, height, scheme);
        var hand = await device.Open(shop);
        await hand.SeesSaved(0, 0);
        var folder = Path.Combine(Published.Root, "out", "screens");
        Directory.CreateDirectory(folder);
        foreach (var (name, open) in Screens)
        {
            await open(hand);
            await hand.Page.WaitForTimeoutAsync(400);
            var file = Path.Combine(folder, $"{name}-{size}-{scheme.ToString().ToLowerInvariant()}.png");
            await hand.Page.ScreenshotAsync(
                new()
                {
                    Path = file,
                    FullPage = true,
                    Animations = ScreenshotAnimations.Disabled,
                }
            );
            Assert.True(new FileInfo(file).Length > 5_000, $"{file} is nearly empty.");
        }
    }

    private static async Task Found(BenchHand hand)
    {
        await hand.Open("machines");
        await hand.Page.Locator("#find").FillAsync("fell 41");
        await hand.Sees("HL 418");
    }

    private static async Task Photographs(BenchHand hand)
    {
        await hand.Open($"jobs/{BenchHand.DemoJob}/photograph");
        await hand.Photographs("the left side, tank scratched");
        await hand.Save();
        await hand.Sees("tank scratched");
        await hand.Open("machines/fell-640-0412");
    }

    private static async Task Owner(BenchHand hand)
    {
        await hand.Open("machines/17");
        await hand.Page.Locator("#forget").ClickAsync();
    }

    private static async Task Arrival(BenchHand hand)
    {
        await hand.Open("arrival?machine=17");
        await hand.Sees("By which figure sheet?");
    }

    private static async Task Held(BenchHand hand)
    {
        await hand.Page.Locator("#sheets button").First.ClickAsync();
        await hand.Sees("26X-011");
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = "Handover" }).ClickAsync();
        await hand.OpenJob();
        await hand.Tap("It leaves with it open");
    }
}
