using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>Settings of a person on a device: drawn at once, kept over a reload, and nobody else's.</summary>
public sealed class SettingsTests(Published published, Chromium chromium)
{
    private const string Other = "Bram Okello";

    // what a page shows before the program is up: the first frame of the document
    private const string FirstGround = """
        requestAnimationFrame(() => (window.firstGround = getComputedStyle(document.documentElement).colorScheme));
        """;

    [Fact]
    public async Task Dark_is_drawn_at_once_and_again_from_the_first_frame_after_a_reload()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(scheme: ColorScheme.Light);
        await device.Context.AddInitScriptAsync(FirstGround);
        var hand = await device.Open(shop);
        Assert.True(await Lightness(hand) > 200);
        await hand.Open("settings");
        await Choose(hand, "scheme", "Dark");
        await Assertions.Expect(Root(hand)).ToHaveAttributeAsync("data-scheme", "dark");
        Assert.True(await Lightness(hand) < 50);
        await hand.Page.ReloadAsync();
        Assert.Equal("dark", await hand.Page.EvaluateAsync<string>("() => window.firstGround"));
        await Chosen(hand, "scheme", "Dark");
        Assert.True(await Lightness(hand) < 50);
        await Choose(hand, "scheme", "As the system");
        await Assertions.Expect(Root(hand)).Not.ToHaveAttributeAsync("data-scheme", new Regex("."));
        Assert.True(await Lightness(hand) > 200);
    }

    [Fact]
    public async Task Light_stays_light_on_a_dark_system()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(scheme: ColorScheme.Dark);
        var hand = await device.Open(shop);
        Assert.True(await Lightness(hand) < 50);
        await hand.Open("settings");
        await Choose(hand, "scheme", "Light");
        await Assertions.Expect(Root(hand)).ToHaveAttributeAsync("data-scheme", "light");
        Assert.True(await Lightness(hand) > 200);
    }

    // by hand, NIST SP 811 (2008), B.8: 13 mm = 0.51181 in, 32 mm = 1.25984 in, 18 mm = 0.70866 in
    [Fact]
    public async Task In_other_units_all_is_converted_but_the_working_and_what_is_typed()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("settings");
        await Choose(hand, "units", "US: in, lbf·ft, mi, psi");
        await hand.Point("chain-slack");
        await Assertions.Expect(hand.Page.Locator(".figure strong")).ToHaveTextAsync("0.52 – 1.25 in (13 – 32 mm)");
        await Assertions.Expect(hand.Page.Locator(".num-value i").First).ToHaveTextAsync("mm");
        await hand.Read("75", "25");
        await hand.SeesVerdict("Outside by 0.71 in (18 mm)");
        await hand.Page.Locator(".working summary").First.ClickAsync();
        await Assertions.Expect(hand.Page.Locator(".working ol").First).Not.ToContainTextAsync(" in (");
        await hand.Page.ReloadAsync();
        await hand.SeesVerdict("Outside by 0.71 in (18 mm)");
    }

    [Fact]
    public async Task Each_person_has_their_own()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("settings");
        await Choose(hand, "text-size", "Largest, 150 %");
        await Choose(hand, "tool-hand", "Right");
        await WorksAs(hand, Other);
        await hand.Open("settings");
        await Chosen(hand, "text-size", "Normal");
        await Chosen(hand, "tool-hand", "Left");
        Assert.Equal(16, await Number(hand, "() => parseFloat(getComputedStyle(document.documentElement).fontSize)"));
        await Choose(hand, "text-size", "Large, 125 %");
        await WorksAs(hand, BenchHand.Person);
        await hand.Open("settings");
        await Chosen(hand, "text-size", "Largest, 150 %");
        await Chosen(hand, "tool-hand", "Right");
        Assert.Equal(24, await Number(hand, "() => parseFloat(getComputedStyle(document.documentElement).fontSize)"));
    }

    [Fact]
    public async Task Text_grows_by_as_much_as_was_chosen()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("settings");
        const string Legend = "() => parseFloat(getComputedStyle(document.querySelector('legend')).fontSize)";
        var before = await Number(hand, Legend);
        await Choose(hand, "text-size", "Largest, 150 %");
        await Assertions.Expect(Root(hand)).ToHaveAttributeAsync("data-text", "largest");
        Assert.Equal(before * 1.5, await Number(hand, Legend), 3);
    }

    [Fact]
    public async Task Stronger_is_black_on_white_with_thicker_lines()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("settings");
        const string Line = "() => parseFloat(getComputedStyle(document.querySelector('.btn.quiet')).borderTopWidth)";
        var before = await Number(hand, Line);
        await Choose(hand, "contrast", "Stronger");
        await Assertions.Expect(Root(hand)).ToHaveAttributeAsync("data-contrast", "stronger");
        await Assertions.Expect(hand.Page.Locator("body")).ToHaveCSSAsync("color", "rgb(0, 0, 0)");
        await Assertions.Expect(hand.Page.Locator("body")).ToHaveCSSAsync("background-color", "rgb(255, 255, 255)");
        Assert.True(await Number(hand, Line) > before);
    }

    [Theory]
    [InlineData(390, 844)]
    [InlineData(1440, 900)]
    public async Task What_confirms_stands_on_the_side_of_the_hand_that_types(int width, int height)
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(width, height);
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        Assert.True(await Left(hand, ".key.delete") > await Left(hand, ".keypad > .key:nth-last-child(2)"));
        Assert.True(width < 1100 || await Left(hand, ".dock") > width / 2);
        await hand.Read("75", "25");
        await hand.Verdict.WaitForAsync();
        Assert.True(await Left(hand, ".foot .primary") > await Left(hand, "#mark"));
        await hand.Open("settings");
        await Choose(hand, "tool-hand", "Right");
        await hand.Point("chain-slack");
        await hand.Verdict.WaitForAsync();
        Assert.True(await Left(hand, ".foot .primary") < await Left(hand, "#mark"));
        await hand.Point("axle-alignment");
        Assert.True(await Left(hand, ".key.delete") < await Left(hand, ".keypad > .key:nth-last-child(2)"));
        Assert.True(width < 1100 || await Left(hand, ".dock") < 10);
    }

    [Fact]
    public async Task A_reading_is_said_aloud_where_that_is_wanted_and_at_a_tap_in_any_case()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        await device.Context.AddInitScriptAsync(
            """
            window.said = [];
            speechSynthesis.speak = (spoken) => window.said.push(spoken.text);
            """
        );
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Read("75", "25");
        await hand.Verdict.WaitForAsync();
        Assert.Empty(await Said(hand));
        await hand.Tap("Say it");
        Assert.Matches(
            @"^Chain slack.*: 50 plus or minus .* millimetres\. Outside by .* millimetres\.$",
            Assert.Single(await Said(hand))
        );
        await hand.OpenAnew("settings"); // and so nothing was said yet
        await Choose(hand, "readback", "On");
        await hand.Point("axle-alignment");
        await hand.Read("28.89", "28.89");
        await hand.Verdict.WaitForAsync();
        await hand.Page.WaitForFunctionAsync("() => window.said.length > 0");
        Assert.Contains("millimetres", Assert.Single(await Said(hand)));
    }

    [Fact]
    public async Task The_screen_is_kept_awake_at_a_point_and_only_there()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        await device.Context.AddInitScriptAsync(
            """
            window.awake = 0;
            Object.defineProperty(navigator, "wakeLock", { value: { request: async () => {
              window.awake++;
              const lock = new EventTarget();
              lock.release = async () => { window.awake--; lock.dispatchEvent(new Event("release")); };
              return lock;
            } } });
            """
        );
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Page.WaitForFunctionAsync("() => window.awake === 1");
        await hand.Page.Locator(".to-job").ClickAsync();
        await hand.Page.WaitForFunctionAsync("() => window.awake === 0");
        await hand.Page.GoBackAsync();
        await hand.Page.WaitForFunctionAsync("() => window.awake === 1");
        await hand.Open("settings");
        await Choose(hand, "awake", "Off");
        await hand.Point("chain-slack");
        await hand.Page.WaitForTimeoutAsync(500);
        Assert.Equal(0, await hand.Page.EvaluateAsync<int>("() => window.awake"));
    }

    private static ILocator Root(BenchHand hand) => hand.Page.Locator("html");

    private static async Task Choose(BenchHand hand, string setting, string words)
    {
        await Offer(hand, setting, words).ClickAsync();
        await Chosen(hand, setting, words);
    }

    private static async Task Chosen(BenchHand hand, string setting, string words) =>
        await Assertions.Expect(Offer(hand, setting, words)).ToHaveAttributeAsync("aria-pressed", "true");

    private static ILocator Offer(BenchHand hand, string setting, string words) =>
        hand.Page.Locator($"#{setting} .choice").Filter(new() { HasTextRegex = new($"^{words}") });

    private static async Task WorksAs(BenchHand hand, string person)
    {
        await hand.Open("device");
        await hand.Tap("Change");
        await hand.Tap(person);
        await Assertions.Expect(hand.Page.Locator("main strong").First).ToHaveTextAsync(person);
    }

    /// <summary>0 black, 255 white: the page's ground.</summary>
    private static async Task<double> Lightness(BenchHand hand)
    {
        var colour = await hand.Page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor");
        return Regex.Matches(colour, @"\d+").Take(3).Average(m => double.Parse(m.Value, CultureInfo.InvariantCulture));
    }

    private static async Task<double> Number(BenchHand hand, string script) =>
        await hand.Page.EvaluateAsync<double>(script);

    private static async Task<float> Left(BenchHand hand, string selector) =>
        (await hand.Page.Locator(selector).First.BoundingBoxAsync())!.X;

    private static async Task<string[]> Said(BenchHand hand) =>
        await hand.Page.EvaluateAsync<string[]>("() => window.said");
}
