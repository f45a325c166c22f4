using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The search over everything, by keyboard alone.</summary>
public sealed class SearchTests(Published published, Chromium chromium)
{
    [Theory]
    [InlineData("412", "Job 412", "jobs/412")]
    [InlineData("chain sla 412", "Chain slack", "jobs/412/bench/chain-slack")]
    [InlineData("chain.slack 640", "Chain slack", "figures/fell-640/chain.slack")]
    [InlineData("chain adjustment final", "Chain adjustment", "handbook/chain-adjustment")]
    [InlineData("settings", "Settings", "settings")]
    public async Task Typed_words_and_Enter_lead_there(string typed, string title, string path)
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(1440, 900);
        var hand = await device.Open(shop);
        await hand.Page.Keyboard.PressAsync("Control+k");
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
        await hand.Page.Keyboard.TypeAsync(typed);
        await Assertions.Expect(Active(hand)).ToContainTextAsync(title);
        await hand.Page.Keyboard.PressAsync("Enter");
        await hand.Page.WaitForURLAsync($"**/{path}");
        await Assertions.Expect(hand.Page.Locator("dialog[open]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task A_machine_is_found_by_the_middle_of_its_number_whatever_stands_between()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(1440, 900);
        var hand = await device.Open(shop);
        await hand.Page.Keyboard.PressAsync("Control+k");
        await hand.Page.Keyboard.TypeAsync("fell6400412");
        await Assertions.Expect(Active(hand)).ToContainTextAsync("Machine");
        await hand.Page.Keyboard.PressAsync("Enter");
        await hand.Page.WaitForURLAsync("**/machines/fell-640-0412");
    }

    [Fact]
    public async Task A_hand_quicker_than_the_search_is_loaded_sees_it_as_soon_as_it_is()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(1440, 900);
        TaskCompletionSource asked = new();
        TaskCompletionSource answered = new();
        await device.Context.RouteAsync(
            "**/search.js",
            async route =>
            {
                asked.SetResult();
                await answered.Task;
                await route.ContinueAsync();
            }
        );
        var hand = await device.Open(shop);
        await asked.Task;
        await hand.Page.Locator(".to-search").ClickAsync();
        var waiting = hand.Page.Locator("#search-words"); // nothing hidden has a role
        await Assertions.Expect(waiting).ToBeAttachedAsync();
        await Assertions.Expect(waiting).ToBeHiddenAsync();
        answered.SetResult();
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Arrows_move_what_is_active_and_wrap_around()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(1440, 900);
        var hand = await device.Open(shop);
        await hand.Page.Keyboard.PressAsync("Control+k");
        await hand.Page.Keyboard.TypeAsync("fell");
        await Assertions.Expect(Options(hand)).ToHaveCountAsync(12);
        await hand.Sees("12 of ");
        await Assertions.Expect(Active(hand)).ToHaveIdAsync("search-0");
        await hand.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(Active(hand)).ToHaveIdAsync("search-1");
        await Assertions.Expect(Field(hand)).ToHaveAttributeAsync("aria-activedescendant", "search-1");
        await hand.Page.Keyboard.PressAsync("ArrowUp");
        await hand.Page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(Active(hand)).ToHaveIdAsync("search-11");
        await Assertions.Expect(Active(hand)).ToBeInViewportAsync();
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
        await hand.Page.Keyboard.TypeAsync("zzz");
        await Assertions.Expect(Field(hand)).ToHaveAttributeAsync("aria-expanded", "false");
        await hand.Sees("Nothing here has all these words.");
    }

    [Fact]
    public async Task Escape_closes_and_gives_the_focus_back_and_the_button_opens_it_too()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(1440, 900);
        var hand = await device.Open(shop);
        var button = hand.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Search") });
        await button.FocusAsync();
        await hand.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
        await hand.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(hand.Page.Locator("dialog[open]")).ToHaveCountAsync(0);
        await Assertions.Expect(button).ToBeFocusedAsync();
        var link = hand.Page.GetByRole(AriaRole.Link, new() { Name = "Shelf" });
        await link.FocusAsync();
        await hand.Page.Keyboard.PressAsync("Control+k");
        await hand.Page.Keyboard.TypeAsync("chain");
        await hand.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(link).ToBeFocusedAsync();
        // what was typed before does not stand there again
        await hand.Page.Keyboard.PressAsync("Control+k");
        await Assertions.Expect(Field(hand)).ToHaveValueAsync("");
    }

    [Fact]
    public async Task A_hand_quicker_than_the_word_that_the_search_closed_gets_the_next_one()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device(1440, 900);
        var hand = await device.Open(shop);
        await hand.Page.Keyboard.PressAsync("Control+k");
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
        await hand.Page.Keyboard.TypeAsync("chain");
        // HTML, "close a dialog": the event is a task of its own, and comes after the keys of this one
        await hand.Page.EvaluateAsync(
            """
            () => {
                document.querySelector("dialog.search").close();
                dispatchEvent(new KeyboardEvent("keydown", { key: "k", ctrlKey: true }));
            }
            """
        );
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
        await Assertions.Expect(Field(hand)).ToHaveValueAsync("");
        await hand.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(hand.Page.Locator("dialog[open]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task At_a_point_digits_go_to_the_search_while_it_is_open_and_the_job_at_hand_comes_first()
    {
        await using var shop = await RunningShop.Start(published);
        await using var device = await chromium.Device();
        var hand = await device.Open(shop);
        await hand.Open("arrival");
        await hand.Page.Locator("fieldset .choice").First.ClickAsync();
        await hand.Choose("service");
        await hand.OpenJob(); // a later job than 412, with points of the same name
        await hand.Point("chain-slack");
        await hand.Page.Keyboard.PressAsync("Control+k");
        await Assertions.Expect(Field(hand)).ToBeFocusedAsync();
        await hand.Page.Keyboard.TypeAsync("chain slack");
        await Assertions
            .Expect(Active(hand))
            .ToContainTextAsync(new Regex("Chain slack.*Job 412", RegexOptions.Singleline));
        await hand.Page.GetByRole(AriaRole.Button, new() { Name = "Close" }).FocusAsync();
        await hand.Page.Keyboard.TypeAsync("77");
        await hand.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(hand.Page.Locator("dialog[open]")).ToHaveCountAsync(0);
        await Assertions.Expect(hand.Page.Locator(".num-value").First).Not.ToContainTextAsync("7");
    }

    private static ILocator Field(BenchHand hand) => hand.Page.GetByRole(AriaRole.Combobox, new() { Name = "Go to" });

    private static ILocator Options(BenchHand hand) => hand.Page.Locator("#search-list").GetByRole(AriaRole.Option);

    private static ILocator Active(BenchHand hand) => hand.Page.Locator("#search-list [aria-selected=true]");
}
