using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Somebody who never saw the program, a fresh demo, and nothing but what the screen says.</summary>
public sealed partial class FirstFiveMinutesTests(Published published, Chromium chromium)
{
    private const int PhoneHeight = 844;
    private const int Patience = 12; // steps; the way by the computed turns takes eight

    private static ILocator Strip(BenchHand hand) => hand.Page.Locator(".loop");

    [Fact]
    public async Task The_strip_alone_leads_from_the_first_page_to_a_mark()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Page.Locator("#first-point-go").ClickAsync();
        List<string> steps = [];
        while (await Now(hand) is { } step)
        {
            steps.Add(step);
            Assert.True(steps.Count <= Patience, string.Join(", ", steps));
            await SaveIsOnTheScreen(hand);
            await Follow(hand, step);
        }
        // the computed half turn teaches the chain's law, and the second correction meets the aim
        Assert.Equal(
            ["Figure", "Correction", "Correction", "Reading", "Correction", "Correction", "Reading", "Mark"],
            steps
        );
        await Assertions.Expect(hand.Page.Locator("#loop-now")).ToContainTextAsync("Marked: that was one point.");
        await hand.Sees($"Marked by {BenchHand.Person}");
        await hand.Page.GetByRole(AriaRole.Link, new() { Name = "The rest of the job" }).ClickAsync();
        await hand.Page.WaitForURLAsync("**/jobs/412");
        await hand.Open("");
        await Assertions.Expect(hand.Page.Locator("#first-point")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task From_the_first_page_to_a_sheet_of_the_own_shop_by_what_the_screens_say()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await SetsUpOwnShop(hand);
        await hand.Page.Locator("main a[href=arrival]").ClickAsync();
        await hand.Page.Locator("fieldset .choice").First.ClickAsync();
        await hand.Choose("handover");
        await hand.OpenJob();
        // the next point stands there by name
        await hand.Page.Locator(".next-action a").ClickAsync();
        await hand.Page.Locator(".bench .dock").WaitForAsync();
        var job = hand.Page.Url.Split('/')[^3];
        await GivesFirstFigure(hand, job);
        await hand.Read("65", "40");
        await hand.SeesVerdict("Inside");
        await hand.Page.Locator("#mark").ClickAsync();
        await hand.Sees("Marked by Ada Brook");
        await hand.Open($"jobs/{job}");
        await hand.SeesSaved(4, 4); // arrival, figure, reading, mark
        var sheet = await hand.Page.Locator(".papers a").First.GetAttributeAsync("href");
        using var http = new HttpClient();
        using var paper = await http.GetAsync(hand.Address(sheet!), TestContext.Current.CancellationToken);
        Assert.Equal("application/pdf", paper.Content.Headers.ContentType?.MediaType);
    }

    private static async Task SetsUpOwnShop(BenchHand hand)
    {
        await hand.Page.Locator("#first-point a[href=own-shop]").ClickAsync();
        await OwnShopTests.FillsShop(hand);
        await hand.Page.Locator("#own-lead .choice").First.ClickAsync();
        await OwnShopTests.Next(hand);
        await OwnShopTests.FillsTools(hand);
        await OwnShopTests.Next(hand);
        await OwnShopTests.FillsMachine(hand);
        await OwnShopTests.Next(hand);
        await hand.Page.Locator("#own-word").FillAsync("Begin");
        await hand.Page.Locator("#own-do").ClickAsync();
        await hand.Sees("No job on this device yet.");
    }

    private static async Task GivesFirstFigure(BenchHand hand, string job)
    {
        await hand.Point("chain-slack", job);
        await hand.Page.Locator("#give-figure").ClickAsync();
        await hand.Page.Locator("#from-manual").ClickAsync();
        await hand.Tap("From … to …");
        await hand.Page.Locator("#title").FillAsync("Weir 500 handbook");
        await hand.Page.Locator("#edition").FillAsync("1, 2024");
        await hand.Page.Locator("#place").FillAsync("p. 40");
        await hand.Type("20");
        await hand.Page.Locator(".num").Last.ClickAsync();
        await hand.Type("30");
        await hand.Save();
        await hand.Sees("20 – 30 mm");
    }

    [Fact]
    public async Task It_follows_whatever_is_typed_and_says_so_aloud()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        Assert.Equal("Figure", await Now(hand));
        await hand.Type("6");
        await Stands(hand, "Reading");
        await hand.Key('\b');
        await Stands(hand, "Figure");
        await hand.Read("60", "40");
        await Stands(hand, "Mark");
        await Assertions.Expect(Strip(hand).Locator(".notneeded")).ToContainTextAsync("Correction");
        await Assertions.Expect(hand.Page.Locator("#loop-now")).ToHaveAttributeAsync("aria-live", "polite");
        await hand.Tap("Take back the last entry");
        await hand.Tap("Typed wrong");
        await hand.Save();
        await Stands(hand, "Figure");
    }

    [Fact]
    public async Task Put_away_it_stays_away_and_comes_back_in_the_settings()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Page.Locator("#loop-away").ClickAsync();
        await Assertions.Expect(Strip(hand)).ToHaveCountAsync(0);
        await hand.Point("chain-slack");
        await Assertions.Expect(hand.Page.Locator(".keypad")).ToBeVisibleAsync();
        await Assertions.Expect(Strip(hand)).ToHaveCountAsync(0);
        await hand.Open("");
        await Assertions.Expect(hand.Page.Locator("#first-point")).ToHaveCountAsync(0);
        await hand.Open("settings");
        await hand.Page.Locator("#first-point .choice").Last.ClickAsync();
        await hand.Open("");
        await Assertions.Expect(hand.Page.Locator("#first-point-go")).ToBeVisibleAsync();
    }

    private static async Task Follow(BenchHand hand, string step)
    {
        switch (step)
        {
            case "Figure" or "Reading":
                await hand.Read(await Shown(hand));
                await hand.Verdict.WaitForAsync();
                break;
            case "Correction" when await hand.Page.Locator("#correct").IsVisibleAsync():
                await hand.Page.Locator("#correct").ClickAsync();
                await hand.Page.Locator("#save").WaitForAsync();
                break;
            case "Correction":
                await hand.Save();
                await hand.Page.Locator(".again").WaitForAsync();
                break;
            default:
                await hand.Mark();
                break;
        }
    }

    /// <summary>The two numbers that the strip names.</summary>
    private static async Task<string[]> Shown(BenchHand hand) =>
        [.. Number().Matches(await hand.Page.Locator(".loop-try").InnerTextAsync()).Select(m => m.Value)];

    private static async Task<string?> Now(BenchHand hand)
    {
        await Strip(hand).WaitForAsync();
        var now = Strip(hand).Locator("[aria-current=step]");
        return await now.CountAsync() == 0 ? null : (await now.InnerTextAsync()).Split(':')[0].Trim();
    }

    private static async Task Stands(BenchHand hand, string step) =>
        await Assertions.Expect(Strip(hand).Locator("[aria-current=step]")).ToContainTextAsync(step);

    private static async Task SaveIsOnTheScreen(BenchHand hand)
    {
        var foot = (await hand.Page.Locator(".dock .foot").BoundingBoxAsync())!;
        Assert.True(foot.Y + foot.Height <= PhoneHeight, $"The keys end at {foot.Y + foot.Height} px.");
        var text = (await hand.Page.Locator(".bench-scroll").BoundingBoxAsync())!;
        Assert.True(text.Height >= 90, $"{text.Height} px are left for the words.");
    }

    [GeneratedRegex(@"\d+")]
    private static partial Regex Number();
}
