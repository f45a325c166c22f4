using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>An invented workshop that is small enough for whole plans to be written down by hand.</summary>
internal static class SmallShop
{
    public const string Book = """
        [reach."rear stand"]
        words = "Level floor."
        set = "2 min"
        clear = "1 min"

        [reach."engine cold"]
        words = "By hand."
        set = "0 min"

        [reach."engine warm"]
        words = "Run it."
        set = "5 min"
        clears-after = "60 min"
        never-with = ["engine cold"]

        [reach."road ready"]
        words = "On its wheels."
        set = "0 min"
        never-with = ["rear stand"]

        [figure-keys]
        "pads" = { unit = "mm", words = "lining" }
        "slack" = { unit = "mm", words = "slack" }
        "nut" = { unit = "N·m", words = "nut" }
        "difference" = { unit = "mm", words = "left against right" }

        [points.identity]
        title = "Frame number"
        guards = "use"
        hands = "2 min"
        reading = { kind = "done", words = "Read it." }

        [points.campaign-open]
        title = "Open campaigns"
        guards = "safety"
        hands = "5 min"
        reading = { kind = "seen", see = ["asked"], words = "Ask." }

        [points.campaign-work]
        title = "Campaign, the work"
        guards = "safety"
        after = ["campaign-open"]
        hands = "30 min"
        reading = { kind = "seen", see = ["done"], words = "Do." }

        [points.campaign-report]
        title = "Campaign, reported"
        guards = "use"
        after = ["campaign-work"]
        hands = "4 min"
        reading = { kind = "seen", see = ["reported"], words = "Report." }

        [points.pads]
        title = "Pads"
        guards = "safety"
        judged-by = "pads"
        hands = "4 min"
        reading = { kind = "value", unit = "mm", words = "Look." }

        [points.slack]
        title = "Chain slack"
        guards = "safety"
        judged-by = "slack"
        corrected-by = "chain-adjustment"
        again-after = ["nut"]
        reach = ["rear stand"]
        hands = "4 min"
        only-for = { drive = "chain" }
        reading = { kind = "marks", unit = "mm", words = "Push." }

        [points.alignment]
        title = "Axle, left against right"
        guards = "safety"
        judged-by = "difference"
        again-after = ["slack", "nut"]
        reach = ["rear stand"]
        hands = "5 min"
        reading = { kind = "sides", unit = "mm", words = "Read." }

        [points.nut]
        title = "Axle nut"
        guards = "safety"
        judged-by = "nut"
        again-after = ["slack"]
        reach = ["rear stand"]
        hands = "3 min"
        consumables = [{ what = "split pin", amount = "1" }]
        reading = { kind = "tighten", words = "Pull." }

        [points.drain]
        title = "Oil drained"
        guards = "use"
        reach = ["engine warm"]
        hands = "6 min"
        waits = "10 min"
        consumables = [{ what = "crush washer", amount = "1" }, "rag"]
        reading = { kind = "done", words = "Drain." }

        [points.fill]
        title = "Oil filled"
        guards = "use"
        after = ["drain"]
        hands = "4 min"
        consumables = [{ what = "engine oil", amount = "3 L" }]
        reading = { kind = "amount", unit = "L", words = "Pour." }

        [points.valves]
        title = "Valve clearances"
        guards = "use"
        reach = ["engine cold"]
        hands = "40 min"
        consumables = [{ what = "gasket", amount = "1" }, "rag"]
        reading = { kind = "seen", see = ["inside"], words = "Feel." }

        [points.polish]
        title = "Polish"
        guards = "use"
        hands = "30 min"
        reading = { kind = "done", words = "Rub." }

        [points.road-test]
        title = "Road test"
        guards = "safety"
        after = ["pads", "nut"]
        reach = ["road ready"]
        hands = "15 min"
        reading = { kind = "done", words = "Ride." }

        [points.leaks]
        title = "Leaks"
        guards = "safety"
        after = ["road-test"]
        again-after = ["road-test", "fill"]
        hands = "3 min"
        reading = { kind = "seen", see = ["dry"], words = "Look." }

        [purposes.handover]
        identity = "Papers belong to it."
        pads = "Most of the braking."
        slack = "It wears fastest."
        road-test = "What no bench shows."
        leaks = "Heat shows them."

        [purposes.service]
        identity = "The right sheet."
        pads = "They wear."
        drain = "Old oil."
        fill = "New oil."
        leaks = "Joints were opened."

        [purposes.repair]
        identity = "The right sheet."
        road-test = "The fault is gone."
        leaks = "What was opened is dry."

        [purposes.campaign]
        campaign-open = "Which ones."
        campaign-work = "As its maker says."
        campaign-report = "Else it stays open."

        [purposes.restoration]
        identity = "What it is."
        pads = "Unknown."
        slack = "Unknown."
        alignment = "Unknown."
        nut = "It was open."
        valves = "Unknown."
        drain = "Old oil."
        fill = "New oil."
        road-test = "What no bench shows."
        leaks = "Heat shows them."

        [purposes.show]
        identity = "Papers belong to it."
        polish = "It is looked at."
        """;

    public const string Sheet = """
        [sheet]
        name = "Heron 300"
        years = "2022-2026"
        drive = "chain"
        cylinders = 1
        revision = 1

        [documents.handbook]
        title = "Heron 300 handbook"
        edition = "1"

        [figures.pads]
        min = "1.5 mm"
        origin = "maker: handbook p. 40"

        [figures.slack]
        range = "20 to 30 mm"
        origin = "maker: handbook p. 41"

        [figures.nut]
        torque = "90 N·m"
        origin = "maker: handbook p. 42"

        [figures.difference]
        max = "0.5 mm"
        origin = "shop"

        """;

    private const string Shop = """
        [workshop]
        id = "heron-yard"
        name = "Heron Yard"
        people = ["Ada Brook", "Finn Dale"]
        leads = ["Ada Brook"]

        [machines.heron]
        name = "Heron 300"
        vin = "GZ0HE30C0RH000001"
        year = 2024
        sheet = "heron"
        last-distance = "8000 km"
        last-distance-on = 2026-01-01
        """;

    /// <summary>The workbench with a schedule behind the sheet, and with some text of the book replaced.</summary>
    public static Workbench Bench(string schedule = "", string drive = "chain", string extra = "") =>
        WorkbenchFiles.Read([
            new("book/small.toml", Book),
            new("sheets/heron.toml", Sheet.Replace("\"chain\"", $"\"{drive}\"") + schedule),
            new("shop.toml", Shop + "\n" + extra),
        ])
            is ({ } bench, [])
            ? bench
            : throw new InvalidOperationException("the small shop has mistakes");

    /// <summary>A question about its one machine on 1 July 2026.</summary>
    public static PlanQuestion Asks(Workbench bench, string purpose, params PastVisit[] visits) =>
        new(purpose, bench.Sheets[0], bench.Workshop.Machines["heron"], new(2026, 7, 1)) { Visits = visits };

    public static PastVisit PastVisit(DateOnly day, double? km, params VisitedPoint[] points) =>
        new("heron", "heron", day, km, points);

    /// <summary>The plan as lines <c>point: why</c>.</summary>
    public static string[] Lines(Workbench bench, PlanQuestion asked) =>
        [.. Proposal.Of(bench, asked).Select(l => $"{l.Point.Id}: {l.Why}")];
}
