using Microsoft.Playwright;

namespace Witnessmark.Browser.Tests;

/// <summary>The ways to screens that take more than an address.</summary>
public static partial class Screens
{
    private static async Task Listening(BenchHand hand, string point)
    {
        await InstrumentJob.At(hand, point);
        await hand.Page.Locator("#listen-here").ClickAsync();
        await hand.Page.Locator("#listen").WaitForAsync();
    }

    private static async Task Heard(BenchHand hand)
    {
        await hand.Page.Locator("#listen").ClickAsync();
        await hand.Page.Locator("#take-pitch").WaitForAsync(new() { Timeout = 30_000 });
    }

    private static async Task Leaning(BenchHand hand)
    {
        await InclinationTests.Begins(hand, "oil-level");
        foreach (var degrees in (double[])[1.1, 0.3, 2.7])
        {
            await InclinationTests.Lies(hand, degrees, null);
            await hand.Page.Locator("#still:enabled").WaitForAsync();
        }
        await hand.Page.Locator("#lean").WaitForAsync();
    }

    private static async Task NoInclination(BenchHand hand)
    {
        await InstrumentJob.At(hand, "headlamp-aim");
        await hand.Page.Locator("#incline-here").ClickAsync();
    }

    private static async Task SecondWaits(BenchHand hand)
    {
        await InstrumentJob.At(hand, "distance");
        await hand.Read("11900");
        await hand.Mark();
        await hand.Page.Locator("#second-here").WaitForAsync();
    }

    private static async Task SecondBlind(BenchHand hand)
    {
        await InstrumentJob.At(hand, "axle-nut");
        await hand.Page.Locator("#second-check").WaitForAsync();
    }

    private static async Task SecondAgrees(BenchHand hand)
    {
        await hand.Type("110");
        await hand.Save();
        await hand.Page.Locator("#second-outcome").WaitForAsync();
    }

    private static async Task OwnTools(BenchHand hand)
    {
        await hand.Page.Locator("#own-lead .choice").First.ClickAsync();
        await OwnShopTests.Next(hand);
        await OwnShopTests.FillsTools(hand);
    }

    private static async Task OwnMachine(BenchHand hand)
    {
        await OwnShopTests.Next(hand);
        await OwnShopTests.FillsMachine(hand);
    }

    private static async Task DoorWho(BenchHand hand)
    {
        await hand.Page.Locator("#sign-out").ClickAsync();
        await hand.Page.Locator("#door h1").WaitForAsync();
        await hand.Page.Locator("#door .btn").First.WaitForAsync();
    }

    private static async Task Chosen(BenchHand hand, string person)
    {
        await hand.Tap(person);
        await hand.Page.Locator("#secret").WaitForAsync();
    }

    private static async Task DoorPassphrase(BenchHand hand)
    {
        await hand.Tap("Somebody else");
        await Chosen(hand, BenchHand.Person);
    }

    private static async Task DoorIn(BenchHand hand)
    {
        await hand.Page.Locator("#secret").FillAsync(DoorTests.Passphrase);
        await hand.Page.Locator("#send").ClickAsync();
        await hand.Page.Locator("#sign-out").WaitForAsync();
    }

    // while it is open whoever sits there may still bring a job that nothing holds
    private static async Task DoorClose(BenchHand hand)
    {
        foreach (var batch in PastVisits.Unsigned())
            await hand.Page.EvaluateAsync(
                """
                body => fetch("api/entries", { method: "POST", headers: { "content-type": "application/json" }, body })
                """,
                batch
            );
        await hand.Open("door/close");
    }

    /// <summary>A job that nothing holds, where the shop asks once more who signs.</summary>
    private static async Task ReleaseSigned(BenchHand hand)
    {
        await hand.OpenAnew("jobs/u1/release");
        await hand.Page.Locator("#secret").WaitForAsync();
    }

    /// <summary>Somebody with six digits, half of them typed.</summary>
    private static async Task DoorDigits(BenchHand hand)
    {
        await hand.Open("door");
        var code = await DoorTests.StartCode(hand);
        await hand.Open("device");
        await DoorWho(hand);
        await hand.Tap(DoorTests.Technician);
        await DoorTests.Starts(hand, code);
        await hand.Page.Locator("#sign-out").WaitForAsync();
        await SpeaksAsBefore(hand);
        await hand.Open("device");
        await DoorWho(hand);
        await hand.Tap(DoorTests.Technician);
        await hand.Type(DoorTests.Pin[..3]);
    }

    // settings are each person's own, the language among them
    private static async Task SpeaksAsBefore(BenchHand hand)
    {
        if (hand.Finds is null)
            return;
        await hand.Open("settings");
        await hand.Page.Locator("#language .choice").Last.ClickAsync();
        await Assertions.Expect(hand.Page.Locator("html")).ToHaveAttributeAsync("lang", "de");
    }

    private static async Task ReleaseDigits(BenchHand hand)
    {
        await hand.Type(DoorTests.Pin[3..]);
        await hand.Page.Locator("#sign-out").WaitForAsync();
        await hand.Open("jobs/u1/release");
        await hand.Page.Locator("#digits").WaitForAsync();
    }

    // the longest that a quantity gets; those after it are drawn so too, with the largest text
    private static async Task OtherUnits(BenchHand hand)
    {
        await hand.Open("settings");
        await hand.Page.Locator("#units .choice").Last.ClickAsync();
        await hand.Point("chain-slack");
    }

    private static async Task Stronger(BenchHand hand)
    {
        await hand.Open("settings");
        foreach (var choice in (string[])["#tool-hand", "#text-size", "#contrast"])
            await hand.Page.Locator($"{choice} .choice").Last.ClickAsync();
    }

    private static async Task DayPlanned(BenchHand hand)
    {
        foreach (
            // one that can be kept, one that cannot, none; whatever the time of day is
            var (purpose, until) in ((string, DateTime?)[])
                [("repair", DateTime.Now.AddDays(2)), ("service", DateTime.Now.AddMinutes(30)), ("storage", null)]
        )
        {
            await hand.Open("arrival");
            await hand.Page.Locator(".choice").First.ClickAsync();
            await hand.Choose(purpose);
            if (until is { } moment)
                await hand.Page.Locator("#promised").FillAsync($"{moment:yyyy-MM-ddTHH:mm}");
            await hand.OpenJob();
        }
        // from now on somebody counts what is on the shelf, and nothing else lies on it
        await hand.Page.EvaluateAsync(
            """
            () => fetch("api/stock/moves", {
              method: "POST",
              headers: { "content-type": "application/json" },
              body: JSON.stringify({ id: "paint", kind: "receive", item: "stripe-paint", amount: "1", by: "Ines Tallow" }),
            })
            """
        );
        await hand.Open("day");
        await hand.Sees("Planned at");
        await hand.Page.Locator(".choices .choice").Nth(1).ClickAsync();
    }

    private static async Task Searched(BenchHand hand, string typed)
    {
        await hand.Open("machines");
        await hand.Page.Locator(".to-search").ClickAsync();
        await hand.Page.Locator("#search-words").FillAsync(typed);
    }

    private static async Task TimersRunning(BenchHand hand)
    {
        await hand.Point("oil-settle");
        await hand.Page.Locator(".timer-offers .btn").First.ClickAsync();
        await hand.Point("drain-plug");
        await hand.Tap("Start the timer, 10 min");
    }

    private static async Task PlanWithOrder(BenchHand hand)
    {
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        await hand.Sees("All steps with their times");
    }

    private static async Task PlanDrop(BenchHand hand)
    {
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        await hand.Tap("Drop: Front brake pads, lining");
        await hand.Page.Locator("#drop-why").ScrollIntoViewIfNeededAsync();
    }

    private static async Task PlanAdd(BenchHand hand)
    {
        await hand.Open($"jobs/{BenchHand.DemoJob}/plan");
        await hand.Tap("Add a point");
        await hand.Page.Locator("#add-find").FillAsync("disc");
    }

    private static async Task ArrivalPlan(BenchHand hand)
    {
        await hand.Open("arrival");
        await hand.Page.Locator("fieldset .choice").First.ClickAsync();
        await hand.Choose("handover");
        await hand.Says("Add a point").ScrollIntoViewIfNeededAsync();
    }

    private static async Task FiguresFound(BenchHand hand)
    {
        await hand.Page.Locator("#find").FillAsync("slack");
        await hand.Sees("13 – 32 mm");
    }

    private static async Task ShelfItem(BenchHand hand)
    {
        await hand.Open("shelf/oil-10w-40");
        await hand.Tap("It came");
        await hand.Tap("1 L");
    }

    private static async Task FigureManual(BenchHand hand)
    {
        await hand.Tap("Back");
        await hand.Page.Locator("#from-manual").ClickAsync();
        await hand.Tap("At least");
        await hand.Tap("Another one");
    }

    private static async Task FigureGiven(BenchHand hand)
    {
        await hand.Page.Locator("#title").FillAsync("Fell 640 workshop manual");
        await hand.Page.Locator("#edition").FillAsync("1, 2024");
        await hand.Page.Locator("#place").FillAsync("p. 72");
        await hand.Type("1.5");
        await hand.Save();
        await hand.Sees("≥ 1.5 mm");
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
