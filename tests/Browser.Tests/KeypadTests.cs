using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>What cannot be is stopped at the key and said; what was typed is never lost.</summary>
public sealed class KeypadTests(Published published, Chromium chromium)
{
    private static ILocator Value(BenchHand hand) => hand.Page.Locator(".dock .num.on .num-value");

    [Fact]
    public async Task A_decimal_comma_counts_as_a_point_a_second_one_is_stopped_and_said()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("throttle-free-play");
        await hand.Page.Keyboard.TypeAsync("3,5");
        await Assertions.Expect(Value(hand)).ToContainTextAsync("3.5");
        await hand.Key('.');
        await hand.Sees("There is a decimal point already: 3.5");
        await Assertions.Expect(Value(hand)).ToContainTextAsync("3.5");
    }

    [Fact]
    public async Task A_point_gets_its_leading_zero_and_a_minus_is_offered_only_where_it_can_be()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("throttle-free-play");
        await hand.Type(".5");
        await Assertions.Expect(Value(hand)).ToContainTextAsync("0.5");
        await Assertions.Expect(hand.Page.GetByRole(AriaRole.Button, new() { Name = "Minus" })).ToHaveCountAsync(0);
        await hand.Page.Keyboard.TypeAsync("-");
        await hand.Sees("This cannot be less than nothing.");
    }

    [Fact]
    public async Task A_value_ten_times_too_large_is_asked_back_with_both_written_out()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("throttle-free-play");
        await hand.Read("35");
        await hand.Sees("35 mm makes no sense here. Did you mean 3.5 mm?");
        await hand.Tap("It is 3.5 mm");
        await hand.Save();
        await hand.SeesVerdict("Unproven: Steel rule 300 mm cannot tell"); // half a millimetre from the limit
    }

    [Fact]
    public async Task A_half_typed_reading_survives_a_reload()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("chain-slack");
        await hand.Type("75");
        await hand.Page.ReloadAsync();
        await Assertions.Expect(Value(hand)).ToContainTextAsync("75");
        await hand.SeesSaved(0, 0);
    }

    // ISO 3779: a vehicle identification number has no I, O or Q
    [Fact]
    public async Task The_letters_for_a_vehicle_number_leave_out_I_O_and_Q()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Point("identity");
        var keys = await hand.Page.Locator(".keypad .key").AllInnerTextsAsync();
        Assert.Equal("0123456789ABCDEFGHJKLMNPRSTUVWXYZ", string.Concat(keys.Order(StringComparer.Ordinal)).Trim());
        await hand.Page.Keyboard.TypeAsync("g");
        await hand.Sees("1 of 17 characters.");
        await hand.Page.Keyboard.TypeAsync("z0");
        await hand.Sees("3 of 17 characters.");
        await hand.Page.Keyboard.TypeAsync("fe64c8rh000412");
        await hand.Save();
        await hand.SeesVerdict("This machine's number");
    }
}
