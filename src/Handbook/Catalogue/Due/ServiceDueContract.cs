using System.Globalization;
using System.Text.Json.Nodes;
using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>service-due</c>.</summary>
internal static class ServiceDueContract
{
    private static readonly Input<string> Point = Take.Words("point", "what is worked on");
    private static readonly Input<DateOnly> Date = Take.Day("date", "the day, not after today");
    private static readonly Input<Length> Distance = Take.Quantity<Length>("distance", "what the odometer showed");
    private static readonly Input<Length> EveryDistance = Take.Positive<Length>(
            "everyDistance",
            "distance from one time to the next"
        )
        .OrNothing();
    private static readonly Input<int> EveryMonths = Take.Count(
            "everyMonths",
            "calendar months from one time to the next",
            1,
            ServiceRule.MostMonths
        )
        .OrNothing();
    private static readonly Input<Length> FirstAt = Take.Quantity<Length>("firstAt", "distance of the first time")
        .OrNothing();
    private static readonly Input<double> SevereUse = Take.Number(
            "severeUse",
            "what severe use leaves of both intervals, above 0; months are rounded down",
            0,
            1
        )
        .Or(1, "1");
    private static readonly Input<ServiceRule[]> Rules = Take.Objects(
        "rules",
        "the service schedule, each point once",
        [Point, EveryDistance, EveryMonths, FirstAt, SevereUse],
        ReadRule
    );
    private static readonly Input<ServiceEntry[]> History = Take.Objects(
        "history",
        "what was done, in any order",
        [Point, Date, Distance],
        g => new ServiceEntry(g.Of(Point), new(g.Of(Date), g.Of(Distance))),
        0
    );
    private static readonly Input<DateOnly> Today = Take.Day("today", "the day asked about");
    private static readonly Input<Length> PerDay = Take.Quantity<Length>("perDay", "distance ridden a day");
    private static readonly Input<double> HorizonDays = Take.Number(
            "horizonDays",
            "up to how many days ahead work is soon",
            0
        )
        .Or(ServiceDue.UsualHorizon, "30");
    private static readonly Input<OdometerReading[]> Odometer = Take.Objects(
            "odometer",
            "what the odometer showed on other days, in any order",
            [Date, Distance],
            g => new OdometerReading(g.Of(Date), g.Of(Distance)),
            0
        )
        .Or([], "the history alone");
    private static readonly Input<Length> From = Take.Quantity<Length>("from", "what the old one showed last");
    private static readonly Input<Length> To = Take.Quantity<Length>("to", "what the new one showed first")
        .Or(new Length(0), "0 km");
    private static readonly Input<OdometerReplacement[]> Replaced = Take.Objects(
            "odometerReplaced",
            "odometers that were replaced or set, so that distances count on",
            [Date, From, To],
            g => new OdometerReplacement(g.Of(Date), g.Of(From), g.Of(To)),
            0
        )
        .Or([], "none");

    public static Calculation Calculation { get; } =
        new(
            "service-due",
            "Due",
            "Which work of the service schedule is overdue, due, soon or later.",
            "calendar arithmetic; whichever comes first is common practice",
            typeof(ServiceDue),
            [Rules, History, Today, Distance, PerDay, HorizonDays, Odometer, Replaced],
            [
                new("due", "list", "point, state (overdue, due, soon, later), byDistance? (km), byDate?, why"),
                new(
                    "odometerBreaks",
                    "list",
                    "where the odometer went back unexplained: date, from (km), to (km), why"
                ),
            ],
            Judge
        );

    private static Reply Judge(Given given)
    {
        var (rules, history, today) = (given.Of(Rules), given.Of(History), given.Of(Today));
        var (odometer, replaced) = (given.Of(Odometer), given.Of(Replaced));
        EachOnce(given, rules);
        NotAfter(given, "history", history.Select(e => e.Reading.Date), today);
        NotAfter(given, "odometer", odometer.Select(e => e.Date), today);
        NotAfter(given, "odometerReplaced", replaced.Select(e => e.Date), today);
        var machine = new MachineToday(today, given.Of(Distance), given.Of(PerDay), odometer, replaced);
        var work = ServiceDue.On(rules, history, machine, given.Of(HorizonDays));
        return new Gives()
            .With("due", new JsonArray([.. work.Due.Select(Write)]))
            .With("odometerBreaks", new JsonArray([.. work.Breaks.Select(Write)]));
    }

    private static JsonNode Write(DuePoint due) =>
        new Gives()
            .With("point", due.Point)
            .With("state", Word(due.State))
            .With("byDistance", due.ByDistance, "km")
            .With("byDate", due.ByDate is { } day ? Text(day) : null)
            .With("why", due.Why)
            .Json;

    private static JsonNode Write(OdometerBreak seen) =>
        new Gives()
            .With("date", Text(seen.Date))
            .With("from", seen.From, "km")
            .With("to", seen.To, "km")
            .With("why", seen.Why)
            .Json;

    private static string Word(DueState state) =>
        state switch
        {
            DueState.Overdue => "overdue",
            DueState.Due => "due",
            DueState.Soon => "soon",
            DueState.Later => "later",
            _ => throw new ArgumentOutOfRangeException(nameof(state), state, null),
        };

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static ServiceRule ReadRule(Given g)
    {
        var rule = new ServiceRule(
            g.Of(Point),
            g.Maybe(EveryDistance),
            g.Maybe(EveryMonths),
            g.Maybe(FirstAt),
            g.Of(SevereUse)
        );
        if (rule is { EveryDistance: null, EveryMonths: null, FirstAt: null })
            throw g.Wrong("everyDistance", "missing", "everyDistance, everyMonths or firstAt, at least one");
        if (rule.SevereUse == 0)
            throw g.Wrong("severeUse", "0", "above 0, at most 1");
        return rule.Months == 0
            ? throw g.Wrong(
                "severeUse",
                $"less than a month left of {rule.EveryMonths}",
                "at least one whole month left"
            )
            : rule;
    }

    private static void EachOnce(Given given, ServiceRule[] rules)
    {
        var seen = new HashSet<string>();
        for (var i = 0; i < rules.Length; i++)
            if (!seen.Add(rules[i].Point))
                throw given.Wrong($"rules.{i}.point", $"\"{rules[i].Point}\" again", "each point once");
    }

    private static void NotAfter(Given given, string list, IEnumerable<DateOnly> days, DateOnly today)
    {
        foreach (var (i, day) in days.Index())
            if (day > today)
                throw given.Wrong($"{list}.{i}.date", Text(day), $"not after today, {Text(today)}");
    }
}
