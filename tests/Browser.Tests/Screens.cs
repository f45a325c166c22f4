namespace Witnessmark.Browser.Tests;

/// <summary>Every screen by name, and how a hand gets to it.</summary>
public static class Screens
{
    public static readonly IReadOnlyList<(string Name, Func<BenchHand, Task> Open)> All =
    [
        ("today", hand => hand.Open("")),
        ("arrival", hand => hand.Open("arrival")),
        ("day", DayPlanned),
        ("day-job", hand => hand.Open("day/412")),
        ("timers-running", TimersRunning),
        ("timers", hand => hand.Open("timers")),
        ("device", hand => hand.Open("device")),
        ("machines", hand => hand.Open("machines")),
        ("machine", hand => hand.Open("machines/fell-640-0412")),
        ("figures", hand => hand.Open("figures")),
        ("figures-found", FiguresFound),
        ("sheet", hand => hand.Open("figures/fell-640")),
        ("figure", hand => hand.Open("figures/fell-640/chain.slack")),
        ("figure-change", hand => Then(hand, h => h.Page.Locator("#change").ClickAsync())),
        ("handbook", hand => hand.Open("handbook")),
        ("calculation", hand => hand.Open("handbook/chain-adjustment")),
        ("identity", hand => hand.Point("identity")),
        ("tyre-dates", hand => hand.Point("tyre-dates")),
        ("front-pads", hand => hand.Point("front-pads")),
        ("coolant-level", hand => hand.Point("coolant-level")),
        ("chain-unread", hand => hand.Point("chain-slack")),
        ("chain-outside", ChainOutside),
        ("chain-correction", hand => Then(hand, h => h.Page.Locator("#correct").ClickAsync())),
        ("chain-again", ChainAgain),
        ("chain-inside", hand => hand.Read("60", "40")),
        ("chain-marked", hand => hand.Mark()),
        ("chain-round", ChainRound),
        ("chain-round-read", ChainRoundRead),
        ("axle-sides", AxleSides),
        ("axle-nut", hand => hand.Point("axle-nut")),
        ("axle-tightened", AxleTightened),
        ("doubt", Doubt),
        ("leaks-seen", hand => hand.Point("leaks")),
        ("oil-first-fill", hand => hand.Point("oil-first-fill")),
        ("note", Note),
        ("job", hand => hand.Open($"jobs/{BenchHand.DemoJob}")),
        ("release", hand => hand.Open($"jobs/{BenchHand.DemoJob}/release")),
    ];

    private static async Task DayPlanned(BenchHand hand)
    {
        foreach (
            var (purpose, until) in ((string, string)[])[("Repair", "T16:00"), ("Service", "T09:00"), ("Storage", "")]
        )
        {
            await hand.Open("arrival");
            await hand.Page.Locator(".choice").First.ClickAsync();
            await hand.Page.Locator(".choice").Filter(new() { HasText = purpose }).First.ClickAsync();
            if (until.Length > 0)
                await hand.Page.Locator("#promised").FillAsync($"{DateTime.Now:yyyy-MM-dd}{until}");
            await hand.Page.Locator("#open").ClickAsync();
            await hand.Page.WaitForURLAsync("**/jobs/**");
        }
        await hand.Open("day");
        await hand.Sees("Planned at");
        await hand.Page.Locator(".choices .choice").Nth(1).ClickAsync();
    }

    private static async Task TimersRunning(BenchHand hand)
    {
        await hand.Point("oil-settle");
        await hand.Page.Locator(".timer-offers .btn").First.ClickAsync();
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
    }

    private static async Task FiguresFound(BenchHand hand)
    {
        await hand.Page.Locator("#find").FillAsync("slack");
        await hand.Sees("13 – 32 mm");
    }

    private static async Task ChainOutside(BenchHand hand)
    {
        await hand.Read("75", "25");
        await hand.Verdict.WaitForAsync();
    }

    private static async Task ChainAgain(BenchHand hand)
    {
        await hand.Type("2");
        await hand.Save();
        await hand.Sees("Corrected since");
    }

    private static async Task ChainRound(BenchHand hand)
    {
        await hand.Point("chain-round");
        foreach (var value in (string[])["24", "25", "24", "25", "24"])
        {
            await hand.Type(value);
            await hand.Page.Locator(".foot .primary").ClickAsync();
        }
    }

    private static async Task ChainRoundRead(BenchHand hand)
    {
        await hand.Read("22", "20", "21", "23", "24", "25", "24");
        await hand.Verdict.WaitForAsync();
    }

    private static async Task AxleSides(BenchHand hand)
    {
        await hand.Point("axle-alignment");
        await hand.Read("28.89", "29.80");
        await hand.Verdict.WaitForAsync();
    }

    private static async Task AxleTightened(BenchHand hand)
    {
        await hand.Tap("It clicked at 110 N·m");
        await hand.Save();
        await hand.Verdict.WaitForAsync();
    }

    private static async Task Doubt(BenchHand hand)
    {
        await hand.Point("throttle-free-play");
        await hand.Read("35");
        await hand.Sees("makes no sense here");
    }

    private static async Task Note(BenchHand hand)
    {
        await hand.Point("chain-round");
        await hand.Tap("Note");
    }

    private static async Task Then(BenchHand hand, Func<BenchHand, Task> act) => await act(hand);
}
