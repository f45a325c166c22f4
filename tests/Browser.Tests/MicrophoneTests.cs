using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The microphone as an instrument. Chromium hears a file of a known pitch; what is expected comes from how the sound was made.</summary>
[Collection(typeof(AloneOnTheMachine))]
public sealed partial class MicrophoneTests(Published published, Chromium chromium)
{
    [Fact]
    public async Task A_plucked_belt_is_heard_and_taken_over_with_its_uncertainty()
    {
        const double made = 88.5;
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(sound: SoundFile.Plucked(made));
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "belt-tone");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Sees("Why the microphone is wanted");
        await hand.Sees("Nothing is recorded and nothing is sent");
        await hand.Page.Locator("#listen").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("#held"))
            .ToContainTextAsync("Heard: 88.", new() { Timeout = 30_000 });
        await Assertions
            .Expect(hand.Page.Locator(".spectrum svg"))
            .ToHaveAttributeAsync("aria-label", StrongestRegex());
        await Assertions.Expect(hand.Page.Locator(".level strong")).ToHaveTextAsync("Good");
        await hand.Page.Locator("#take-pitch").ClickAsync();

        await Assertions.Expect(hand.Page.Locator("#told-by")).ToHaveTextAsync("This device's microphone");
        await hand.Save();
        await hand.SeesVerdict("Recorded");
        var (value, u) = await Judged(hand);
        // the browser hands the file over by a timer that slips while others work: three deviations, or 0.3 % of the pitch
        Assert.InRange(Math.Abs(value - made), 0, Math.Max(1.5 * u, 0.003 * made));
        Assert.InRange(u, 0.001, 0.6); // refused above 0.3 % of one deviation
        await hand.Page.WaitForTimeoutAsync(300); // the microphone is let go
        Assert.False(await hand.Page.EvaluateAsync<bool>("async () => (await import('/microphone.js')).alive()"));
    }

    [Fact]
    public async Task An_idling_engine_is_counted_by_its_cylinders_with_the_working()
    {
        // two cylinders of a four-stroke at even intervals fire once a turn: 21.5 Hz are 60 · 21.5 = 1290 1/min
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(sound: SoundFile.Firing(21.5));
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "idle-speed");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#cylinders")).ToHaveValueAsync("2"); // the demo's sheet
        await hand.Page.Locator("#even").ClickAsync();
        await hand.Page.Locator("#listen").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("#held"))
            .ToContainTextAsync("Heard: 21.", new() { Timeout = 30_000 });
        await Assertions.Expect(hand.Page.Locator("#take-pitch")).ToHaveCountAsync(0); // strokes are not guessed
        await hand.Page.Locator("#four").ClickAsync();
        await hand.Page.Locator(".working summary").ClickAsync();
        await Assertions.Expect(hand.Page.Locator(".working")).ToContainTextAsync("(4/2) / 2");
        await hand.Page.Locator("#take-pitch").ClickAsync();
        await hand.Save();
        await hand.Verdict.WaitForAsync();
        Assert.InRange((await Judged(hand)).Value, 1290 * 0.997, 1290 * 1.003);
    }

    [Fact]
    public async Task Noise_is_refused_in_words_and_nothing_can_be_taken()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(sound: SoundFile.Noise());
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "belt-tone");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Page.Locator("#listen").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("#no-pitch"))
            .ToContainTextAsync("No clear tone", new() { Timeout = 30_000 });
        await hand.Page.WaitForTimeoutAsync(6_000); // three windows more
        await Assertions.Expect(hand.Page.Locator("#held")).ToHaveTextAsync("Listening. Nothing clear was heard yet.");
        await Assertions.Expect(hand.Page.Locator("#take-pitch")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Silence_is_said_to_be_too_quiet()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(sound: SoundFile.Silence());
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "belt-tone");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Page.Locator("#listen").ClickAsync();
        await Assertions
            .Expect(hand.Page.Locator("#no-pitch"))
            .ToContainTextAsync("Too quiet", new() { Timeout = 30_000 });
        await Assertions.Expect(hand.Page.Locator(".level strong")).ToHaveTextAsync("Too quiet");
    }

    [Fact]
    public async Task Spokes_are_compared_and_nothing_is_taken_over()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device(sound: SoundFile.Plucked(412));
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "spokes");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Page.Locator("#listen").ClickAsync();
        for (var spoke = 0; spoke < 2; spoke++)
        {
            await Assertions
                .Expect(hand.Page.Locator("#held"))
                .ToContainTextAsync("Heard: 41", new() { Timeout = 30_000 });
            await hand.Page.Locator("#keep-pitch").ClickAsync();
        }
        // the same spoke twice: 100 % of the tension
        await Assertions.Expect(hand.Page.Locator("#spread")).ToContainTextAsync("100 %");
        await Assertions.Expect(hand.Page.Locator("#take-pitch")).ToHaveCountAsync(0);
    }

    // the names that browsers give: W3C, Media Capture and Streams, 10.2 (from memory)
    [Theory]
    [InlineData("NotAllowedError", "The microphone was refused.")]
    [InlineData("NotFoundError", "This device has no microphone.")]
    [InlineData("NotReadableError", "Another program holds the microphone.")]
    public async Task What_is_in_the_way_is_said_and_what_to_do(string name, string words)
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device();
        await device.Context.AddInitScriptAsync(
            $"navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', '{name}'))"
        );
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "belt-tone");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Page.Locator("#listen").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#no-microphone")).ToContainTextAsync(words);
        await Assertions.Expect(hand.Page.Locator("#listen")).ToBeEnabledAsync();
    }

    [Fact]
    public async Task A_page_without_a_secure_context_says_so()
    {
        await using var shop = await RunningShop.Start(published);
        await shop.Post(InstrumentJob.Batch);
        await using var device = await chromium.Device();
        await device.Context.AddInitScriptAsync("Object.defineProperty(window, 'isSecureContext', { value: false })");
        var hand = await device.Open(shop);
        await InstrumentJob.At(hand, "belt-tone");
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Page.Locator("#listen").ClickAsync();
        await Assertions.Expect(hand.Page.Locator("#no-microphone")).ToContainTextAsync("HTTPS");
    }

    /// <summary>Value and expanded uncertainty as the verdict says them.</summary>
    private static async Task<(double Value, double Uncertainty)> Judged(BenchHand hand)
    {
        var said = ValueRegex().Match(await hand.Verdict.InnerTextAsync());
        Assert.True(said.Success, await hand.Verdict.InnerTextAsync());
        return (Number(said.Groups[1]), Number(said.Groups[2]));
    }

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"([\d.]+) ± ([\d.]+) ")]
    private static partial Regex ValueRegex();

    [GeneratedRegex(@"strongest near \d+ Hz")]
    private static partial Regex StrongestRegex();
}
