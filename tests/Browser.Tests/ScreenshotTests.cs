using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// Pictures of every screen in three sizes and two schemes, for people to look at, in <c>out/screens</c>. Left out of
/// <c>./test</c>, which has no eyes: <c>dotnet test --project tests/Browser.Tests -c Release --filter-trait for=looking</c>.
/// <c>WITNESSMARK_SCREENS=figure,handbook</c> draws those alone.
/// </summary>
public sealed class ScreenshotTests(Published published, Chromium chromium)
{
    [Theory]
    [Trait("for", "looking")]
    [InlineData("phone", 390, 844, ColorScheme.Light)]
    [InlineData("phone", 390, 844, ColorScheme.Dark)]
    [InlineData("tablet", 820, 1180, ColorScheme.Light)]
    [InlineData("tablet", 820, 1180, ColorScheme.Dark)]
    [InlineData("desk", 1440, 900, ColorScheme.Light)]
    [InlineData("desk", 1440, 900, ColorScheme.Dark)]
    public async Task Every_screen_can_be_drawn(string size, int width, int height, ColorScheme scheme)
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        await using var device = await chromium.Device(width, height, scheme, sound: SoundFile.Plucked(88.5));
        await shop.Post(InstrumentJob.Tightened);
        var hand = await device.Open(shop);
        var folder = Path.Combine(Published.Root, "out", "screens");
        Directory.CreateDirectory(folder);
        foreach (var (name, open) in Screens.Wanted)
        {
            await open(hand);
            await hand.Page.WaitForTimeoutAsync(150);
            var file = Path.Combine(folder, $"{name}-{size}-{scheme.ToString().ToLowerInvariant()}.png");
            await hand.Page.ScreenshotAsync(new() { Path = file, Animations = ScreenshotAnimations.Disabled });
            Assert.True(new FileInfo(file).Length > 5_000, $"{file} is nearly empty.");
        }
    }
}
