using Witnessmark.Bench.Campaigns;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Planning;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>
/// Ten invented visits with the whole plan written down by hand, each line with its why. Days and distances are counted by hand:
/// the machine stood at 8000 km on 2026-01-01, the visit is on 2026-07-01, 181 days later.
/// </summary>
public class TenSituationsTests
{
    private static readonly DateOnly Spring = new(2026, 4, 1);

    // nothing is due, nothing is known: the purpose alone. The road test asks only for what stands in the plan anyway
    [Fact]
    public void One_a_handover_without_record_or_schedule()
    {
        var bench = SmallShop.Bench();
        Assert.Equal(
            [
                "identity: Papers belong to it.",
                "pads: Most of the braking.",
                "slack: It wears fastest.",
                "road-test: What no bench shows.",
                "leaks: Heat shows them.",
            ],
            SmallShop.Lines(bench, SmallShop.Asks(bench, "handover"))
        );
    }

    // never done on record: unknown, treated as due; two whys meet on the line of the pads, the stronger first
    [Fact]
    public void Two_a_service_with_a_schedule_that_nothing_on_record_answers()
    {
        var bench = SmallShop.Bench(
            """
            [[schedule]]
            point = "pads"
            every = "5000 km or 12 months"
            origin = "maker: handbook p. 9"

            [[schedule]]
            point = "valves"
            every = "12000 km"
            first = "12000 km"
            origin = "maker: handbook p. 9"
            """
        );
        Assert.Equal(
            [
                "identity: The right sheet.",
                "pads: Due, every 5000 km or 12 months by the maker (handbook p. 9): not on record: unknown, treat as due. They wear.",
                "drain: Old oil.",
                "fill: New oil.",
                "leaks: Joints were opened.",
            ],
            SmallShop.Lines(bench, SmallShop.Asks(bench, "service"))
        );
    }

    // pads were done at 8000 km on 1 January: 3000 km later is 11000 km; at 10810 km after 181 days it goes
    // 2810/181 = 15.5 km a day, so 190 km are 12 days: soon. Valves never: they begin at 10000 km, 810 km over, overdue
    [Fact]
    public void Three_a_repair_with_work_soon_and_overdue()
    {
        var bench = SmallShop.Bench(
            """
            [[schedule]]
            point = "pads"
            every = "3000 km"
            origin = "shop"

            [[schedule]]
            point = "valves"
            every = "10000 km"
            first = "10000 km"
            origin = "maker: handbook p. 9"
            """
        );
        var asked = SmallShop.Asks(
            bench,
            "repair",
            SmallShop.PastVisit(new(2026, 1, 1), 8000, new VisitedPoint("pads") { Marked = true })
        ) with
        {
            Kilometres = 10810,
        };
        Assert.Equal(
            [
                "identity: The right sheet.",
                "pads: Due soon, every 3000 km by the workshop (not the maker): by 11000 km: 3000 km after 8000 km on 2026-01-01, 190 km left at 15.5 km a day.",
                "valves: Overdue, every 10000 km by the maker (handbook p. 9): by 10000 km: the first time, 810 km over at 15.5 km a day.",
                "road-test: The fault is gone.",
                "leaks: What was opened is dry.",
            ],
            SmallShop.Lines(bench, asked)
        );
    }

    // due by date: twelve months after 30 June 2025 is 30 June 2026, one day over on 1 July
    [Fact]
    public void Four_a_show_that_finds_work_a_day_overdue_by_the_calendar()
    {
        var bench = SmallShop.Bench(
            "[[schedule]]\npoint = \"pads\"\nevery = \"12 months\"\norigin = \"maker: handbook p. 9\"\n"
        );
        var visit = SmallShop.PastVisit(new(2025, 6, 30), null, new VisitedPoint("pads") { Marked = true });
        Assert.Equal(
            [
                "identity: Papers belong to it.",
                "pads: Overdue, every 12 months by the maker (handbook p. 9): by 2026-06-30: 12 months after 2025-06-30, 1 day over.",
                "polish: It is looked at.",
            ],
            SmallShop.Lines(bench, SmallShop.Asks(bench, "show", visit))
        );
    }

    // slack was left outside: correcting it asks for nut and alignment; the nut, being work, asks for slack and alignment
    [Fact]
    public void Five_a_repair_after_a_visit_that_left_the_slack_outside()
    {
        var bench = SmallShop.Bench();
        var slack = new VisitedPoint("slack")
        {
            Verdict = VerdictWord.Outside,
            Shown = $"38 ± 1 mm",
            Measured = (38, 0.5),
        };
        Assert.Equal(
            [
                "identity: The right sheet.",
                "slack: Outside at the last visit, 2026-04-01: 38 ± 1 mm. Axle nut is in the plan, and asks for this again.",
                "alignment: Chain slack was read outside: correcting it asks for this again. Axle nut is in the plan, and asks for this again.",
                "nut: Chain slack was read outside: correcting it asks for this again.",
                "road-test: The fault is gone.",
                "leaks: What was opened is dry.",
            ],
            SmallShop.Lines(bench, SmallShop.Asks(bench, "repair", SmallShop.PastVisit(Spring, 9000, slack)))
        );
    }

    // what the last visit left, dropped, noted, could not prove or found close
    [Fact]
    public void Six_a_show_after_a_visit_with_findings()
    {
        var bench = SmallShop.Bench();
        var visit = SmallShop.PastVisit(
            Spring,
            9000,
            new VisitedPoint("pads")
            {
                Verdict = VerdictWord.Close,
                Shown = $"1.7 mm",
                Measured = (1.7, 0.1),
                Marked = true,
            },
            new VisitedPoint("alignment")
            {
                Verdict = VerdictWord.Unproven,
                Shown = $"0.4 mm",
                Measured = (0.4, 0.2),
            },
            new VisitedPoint("valves") { Left = "no gasket in stock" },
            new VisitedPoint("leaks") { Dropped = "it rained" },
            new VisitedPoint("nut") { Notes = ["thread looks tired"] }
        );
        // the nut's note brings it in; being work it asks for slack and alignment
        Assert.Equal(
            [
                "identity: Papers belong to it.",
                "pads: Close to its limit at the last visit, 2026-04-01: 1.7 mm.",
                "slack: Axle nut is in the plan, and asks for this again.",
                "alignment: Unproven at the last visit, 2026-04-01: 0.4 mm. Axle nut is in the plan, and asks for this again.",
                "nut: Noted at the last visit, 2026-04-01: thread looks tired.",
                "valves: Left as it was at the last visit, 2026-04-01: no gasket in stock.",
                "leaks: Dropped at the last visit, 2026-04-01: it rained.",
                "polish: It is looked at.",
            ],
            SmallShop.Lines(bench, SmallShop.Asks(bench, "show", visit)).Order(ByPlan).ToArray()
        );
    }

    // 3.2 mm at 8000 km, 2.4 mm at 9000 km: 0.8 mm in 1000 km; 1.5 mm is reached at 10125 km. The next visit is 6000 km on
    [Fact]
    public void Seven_a_repair_with_pads_that_will_not_last()
    {
        var bench = SmallShop.Bench();
        var asked = SmallShop.Asks(
            bench,
            "repair",
            SmallShop.PastVisit(new(2026, 1, 1), 8000, Pads(3.2)),
            SmallShop.PastVisit(Spring, 9000, Pads(2.4))
        );
        Assert.Equal(
            [
                "identity: The right sheet.",
                "pads: By its wear (2 readings) it reaches its limit within the next 4058 km with a probability of 100 %.",
                "road-test: The fault is gone.",
                "leaks: What was opened is dry.",
            ],
            SmallShop.Lines(bench, asked)
        );
    }

    // a campaign that concerns it brings its work and its report; one that may, the question alone
    [Fact]
    public void Eight_a_service_with_open_campaigns()
    {
        var bench = SmallShop.Bench();
        var asked = SmallShop.Asks(bench, "service") with
        {
            Campaigns =
            [
                new FoundCampaign("HC-7", "Stand switch", Certain: true, DoNotRide: false, ParkOutside: false),
                new FoundCampaign("26X-1", "Hose", Certain: false, DoNotRide: true, ParkOutside: false),
            ],
        };
        const string seven = "Campaign HC-7 (Stand switch) concerns this machine.";
        Assert.Equal(
            [
                "identity: The right sheet.",
                $"campaign-open: {seven} Campaign 26X-1 (Hose) may concern this machine: check with the maker; its notice says not to ride until it is done.",
                $"campaign-work: {seven}",
                $"campaign-report: {seven}",
                "pads: They wear.",
                "drain: Old oil.",
                "fill: New oil.",
                "leaks: Joints were opened.",
            ],
            SmallShop.Lines(bench, asked).Order(ByPlan).ToArray()
        );
    }

    // a belt has no chain slack, whatever the purpose, the schedule or an old record say
    [Fact]
    public void Nine_a_restoration_of_a_machine_without_a_chain()
    {
        var bench = SmallShop.Bench(
            "[[schedule]]\npoint = \"slack\"\nevery = \"1000 km\"\norigin = \"shop\"\n",
            drive: "belt"
        );
        var slack = new VisitedPoint("slack")
        {
            Verdict = VerdictWord.Outside,
            Shown = $"38 mm",
            Measured = (38, 1),
        };
        Assert.Equal(
            [
                "identity: What it is.",
                "pads: Unknown.",
                "alignment: Unknown.",
                "nut: It was open.",
                "valves: Unknown.",
                "drain: Old oil.",
                "fill: New oil.",
                "road-test: What no bench shows.",
                "leaks: Heat shows them.",
            ],
            SmallShop.Lines(bench, SmallShop.Asks(bench, "restoration", SmallShop.PastVisit(Spring, 9000, slack)))
        );
    }

    // nobody ever read its odometer: what goes by distance is treated as due though it was done in spring, what goes by the
    // calendar alone is not due before April 2027
    [Fact]
    public void Ten_a_campaign_visit_of_a_machine_without_a_distance()
    {
        var bench = SmallShop.Bench(
            """
            [[schedule]]
            point = "pads"
            every = "5000 km or 12 months"
            origin = "maker: handbook p. 9"

            [[schedule]]
            point = "slack"
            every = "12 months"
            origin = "shop"
            """
        );
        var visit = SmallShop.PastVisit(
            Spring,
            null,
            new VisitedPoint("pads") { Marked = true },
            new VisitedPoint("slack") { Marked = true }
        );
        var asked = SmallShop.Asks(bench, "campaign", visit);
        asked = asked with { Machine = asked.Machine with { LastDistanceKilometres = null, LastDistanceOn = null } };
        Assert.Equal(
            [
                "campaign-open: Which ones.",
                "campaign-work: As its maker says.",
                "campaign-report: Else it stays open.",
                "pads: Due, every 5000 km or 12 months by the maker (handbook p. 9): its distance is not known: read the odometer, and treat as due.",
            ],
            SmallShop.Lines(bench, asked).Order(ByPlan).ToArray()
        );
    }

    // where a point that no line of the purpose names is put is checked in BaseOrderTests; here only what is in the plan, and why
    private static readonly IComparer<string> ByPlan = Comparer<string>.Create((a, b) => Place(a).CompareTo(Place(b)));

    private static int Place(string line) =>
        Array.IndexOf(
            [
                "identity",
                "campaign-open",
                "campaign-work",
                "campaign-report",
                "pads",
                "slack",
                "alignment",
                "nut",
                "valves",
                "drain",
                "fill",
                "road-test",
                "leaks",
                "polish",
            ],
            line[..line.IndexOf(':')]
        );

    private static VisitedPoint Pads(double millimetres) =>
        new("pads")
        {
            Verdict = VerdictWord.Inside,
            Shown = $"{millimetres} mm",
            Measured = (millimetres, 0.05),
            Unit = UnitTable.Named("mm"),
        };
}
