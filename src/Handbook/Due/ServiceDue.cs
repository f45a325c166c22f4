using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Due;

/// <summary>Which work of the service schedule is overdue, due, soon or later: by distance or by time, whichever comes first.</summary>
/// <remarks>
/// <para><b>Formula.</b> Counted from the last entry: by distance = its distance + interval; by date = its date + calendar months, the day of
/// the month clipped to the month's length. Without an entry: by distance = the first service's distance; without that due at once.
/// Severe use s multiplies both intervals, months rounded down. Days left = by date − today, or (by distance − distance)/(distance
/// a day), the fewer. Overdue below 0, due below 1, soon up to the horizon, else later; fewest first.</para>
/// <para><b>Units.</b> Distances in km, as the odometer now fitted shows them; whole days of the calendar; s a pure number above 0, at most 1.</para>
/// <para><b>Source.</b> Calendar arithmetic: the Gregorian calendar of ISO 8601-1:2019, 4.2.1 (from memory), the month clipped as common practice.
/// Whichever comes first: common practice of service schedules, no source. The intervals are the maker's.</para>
/// <para><b>Valid when</b> history and distance are of one machine. Where the odometer went back and no replacement is named, the distance
/// since the work is unknown, and what goes by distance is treated as due.</para>
/// </remarks>
public static class ServiceDue
{
    /// <summary>Up to how many days ahead work is called soon: common practice, no source.</summary>
    public const double UsualHorizon = 30;

    /// <summary>Judges every rule.</summary>
    /// <param name="rules">Each point once.</param>
    /// <param name="history">What was done, in any order, nothing after today.</param>
    /// <param name="machine">Today's day, odometer and use.</param>
    /// <param name="horizonDays">Up to how many days ahead work is soon, zero or more.</param>
    /// <returns>Fewest days left first; rules with as many keep their order.</returns>
    /// <exception cref="ArgumentException">An entry lies after today, or the intervals are outside their bounds.</exception>
    public static DueWork On(
        IReadOnlyList<ServiceRule> rules,
        IReadOnlyList<ServiceEntry> history,
        MachineToday machine,
        double horizonDays = UsualHorizon
    )
    {
        ArgumentOutOfRangeException.ThrowIfNegative(horizonDays);
        var entries = history.Select(e => e.Reading).Concat(machine.Odometer);
        if (entries.Any(e => e.Date > machine.Today) || machine.Replaced.Any(r => r.Date > machine.Today))
            throw new ArgumentException("An entry lies after today.", nameof(history));
        var now = new OdometerReading(machine.Today, machine.Distance);
        var odometer = new OdometerHistory(entries, now, machine.Replaced);
        var last = history
            .OrderBy(e => e.Reading.Date)
            .ThenBy(e => odometer.TotalOf(e.Reading))
            .GroupBy(e => e.Point)
            .ToDictionary(g => g.Key, g => g.Last().Reading);
        var due = new DueCount(odometer, machine.Today, machine.PerDay);
        var judged = rules.Select(rule =>
            due.Of(rule, last.TryGetValue(rule.Point, out var entry) ? entry : null, horizonDays)
        );
        return new([.. judged.OrderBy(d => d.DaysLeft)], odometer.Breaks);
    }
}

/// <summary>How often a point asks for work. At least one of the three is given.</summary>
/// <param name="Point">What is worked on.</param>
/// <param name="EveryDistance">Distance from one time to the next, more than zero.</param>
/// <param name="EveryMonths">Calendar months from one time to the next, 1 to 1200.</param>
/// <param name="FirstAt">Total distance of the first time.</param>
/// <param name="SevereUse">What severe use leaves of both intervals, above 0, at most 1.</param>
public sealed record ServiceRule(
    string Point,
    Length? EveryDistance,
    int? EveryMonths,
    Length? FirstAt,
    double SevereUse = 1
)
{
    // 0.29 · 100 must leave 29 months
    private const double Rounding = 1e-9;

    /// <summary>The longest interval that is counted.</summary>
    public const int MostMonths = CalendarDate.MostMonths;

    /// <summary>The distance that severe use leaves.</summary>
    public Length? Distance => EveryDistance * SevereUse;

    /// <summary>The whole months that severe use leaves; 0 when less than one is left.</summary>
    public int? Months => EveryMonths is { } m ? (int)Math.Floor(m * SevereUse + Rounding) : null;
}

/// <summary>Work that was done.</summary>
/// <param name="Point">What was worked on.</param>
/// <param name="Reading">When, and what the odometer showed.</param>
public sealed record ServiceEntry(string Point, OdometerReading Reading);

/// <summary>The machine today.</summary>
/// <param name="Today">The day.</param>
/// <param name="Distance">What the odometer shows.</param>
/// <param name="PerDay">Distance ridden a day, zero or more.</param>
/// <param name="Odometer">What it showed on other days.</param>
/// <param name="Replaced">Odometers that were replaced.</param>
public sealed record MachineToday(
    DateOnly Today,
    Length Distance,
    Length PerDay,
    IReadOnlyList<OdometerReading> Odometer,
    IReadOnlyList<OdometerReplacement> Replaced
);

/// <summary>All work, fewest days left first, and where the odometer went back.</summary>
/// <param name="Due">One a rule.</param>
/// <param name="Breaks">Where the odometer went back and no replacement is named.</param>
public sealed record DueWork(IReadOnlyList<DuePoint> Due, IReadOnlyList<OdometerBreak> Breaks);
