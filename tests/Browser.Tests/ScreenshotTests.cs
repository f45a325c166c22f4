using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>
/// Pictures of every screen in three sizes and two schemes, for people to look at, in <c>out/screens</c>. Left out of
/// <c>./test</c>, which has no eyes: <c>dotnet test --project tests/Browser.Tests -c Release --filter-trait for=looking</c>.
/// <c>WITNESSMARK_SCREENS=figure,handbook</c> draws those alone, <c>WITNESSMARK_LANGUAGE=de</c> in German, <c>WITNESSMARK_SIZES=phone,desk</c> in those sizes,
/// <c>WITNESSMARK_LENGTH=whole</c> with what is below the fold.
/// </summary>
public sealed class ScreenshotTests(Published published, Chromium chromium)
{
    public static readonly TheoryData<string, int, int> Sizes =
    [
        .. new TheoryDataRow<string, int, int>[]
        {
            new("phone", 390, 844),
            new("tablet", 820, 1180),
            new("desk", 1440, 900),
        }.Where(size => Named("WITNESSMARK_SIZES") is not [_, ..] wanted || wanted.Contains(size.Data.Item1)),
    ];

    [Theory]
    [Trait("for", "looking")]
    [MemberData(nameof(Sizes))]
    public async Task Every_screen_can_be_drawn(string size, int width, int height)
    {
        await using var shop = await RunningShop.Start(published, without: "pads.rear");
        await using var device = await chromium.Device(width, height, sound: SoundFile.Plucked(88.5));
        await shop.Post(InstrumentJob.Tightened);
        var hand = await device.Open(shop);
        var german = Named("WITNESSMARK_LANGUAGE") is ["de"];
        if (german)
            await Deutsch(hand);
        await Screens.Walk(hand, screen => Draw(hand.Page, $"{screen.Name}-{size}{(german ? "-de" : "")}"));
    }

    private static async Task Draw(IPage page, string name)
    {
        var folder = Path.Combine(Published.Root, "out", "screens");
        Directory.CreateDirectory(folder);
        foreach (var scheme in (ColorScheme[])[ColorScheme.Dark, ColorScheme.Light])
        {
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await page.WaitForTimeoutAsync(150);
            var file = Path.Combine(folder, $"{name}-{scheme.ToString().ToLowerInvariant()}.png");
            await page.ScreenshotAsync(
                new()
                {
                    Path = file,
                    Animations = ScreenshotAnimations.Disabled,
                    FullPage = Named("WITNESSMARK_LENGTH") is ["whole"],
                }
            );
            Assert.True(new FileInfo(file).Length > 5_000, $"{file} is nearly empty.");
        }
    }

    private async Task Deutsch(BenchHand hand)
    {
        await hand.Open("settings");
        await hand.Page.Locator("#language .choice").Last.ClickAsync();
        await Assertions.Expect(hand.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
        hand.Finds = InGerman.Of(published).Finds;
    }

    private static string[] Named(string variable) =>
        Environment.GetEnvironmentVariable(variable)?.Split(',', StringSplitOptions.RemoveEmptyEntries) ?? [];
}
