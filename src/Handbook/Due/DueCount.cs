using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Due;

/// <summary>Counts one rule from its last entry to today.</summary>
internal sealed class DueCount(OdometerHistory odometer, DateOnly today, Length perDay)
{
    // days within this of a whole number are that number: an interval written in miles must end on the same day
    private const double Rounding = 1e-9;

    public DuePoint Of(ServiceRule rule, OdometerReading? last, double horizonDays)
    {
        var (first, distance) = ByDistance(rule, last);
        var date = last is { } entry && rule.Months is { } months ? ByDate(entry.Date, months) : null;
        var ruling = Ruling(rule, last, distance, date);
        return new(rule.Point, State(ruling.Days, horizonDays), first, date?.Day, ruling.Days, ruling.Why);
    }

    private (Length? Shown, Count?) ByDistance(ServiceRule rule, OdometerReading? last)
    {
        if (last is null && rule.FirstAt is null || last is not null && rule.Distance is null)
            return (null, null);
        if (last is { } entry ? !odometer.Reaches(entry) : odometer.Breaks.Count > 0)
            return (null, new(null, 0, DueWords.DistanceUnknown));
        var total = last is { } l
            ? odometer.TotalOf(l) + rule.Distance!.Value.Millimetres
            : rule.FirstAt!.Value.Millimetres;
        var left = new Length(total - odometer.Now);
        var shown = new Length(total - odometer.Fitted);
        var over = last is { } done && odometer.Replaced(done);
        return (shown, new(null, Days(left), DueWords.ByDistance(rule, last, shown, left, perDay, over)));
    }

    private Count ByDate(DateOnly done, int months)
    {
        var (day, left) = CalendarDate.After(done, months, today);
        return new(day, left, DueWords.ByDate(done, months, day, left));
    }

    private static Count Ruling(ServiceRule rule, OdometerReading? last, Count? distance, Count? date) =>
        (distance, date) switch
        {
            ({ } d, { } t) => t.Days <= d.Days ? t : d,
            ({ } d, null) => d,
            (null, { } t) => t,
            _ when last is { } entry => new(null, double.PositiveInfinity, DueWords.Once(entry.Date)),
            _ => new(null, 0, DueWords.NotOnRecord),
        };

    private double Days(Length left)
    {
        var days = left.Millimetres == 0 ? 0 : left / perDay;
        var whole = Math.Round(days);
        return Math.Abs(days - whole) <= Rounding ? whole : days;
    }

    private static DueState State(double days, double horizonDays) =>
        days < 0 ? DueState.Overdue
        : days < 1 ? DueState.Due
        : days <= horizonDays ? DueState.Soon
        : DueState.Later;

    private sealed record Count(DateOnly? Day, double Days, Sentence Why);
}

/// <summary>How one point stands.</summary>
/// <param name="Point">What is worked on.</param>
/// <param name="State">How urgent it is.</param>
/// <param name="ByDistance">What the odometer now fitted will show then; null when it does not go by distance or that is unknown.</param>
/// <param name="ByDate">The day; null when it does not go by date or lies beyond the year 9999.</param>
/// <param name="DaysLeft">Days left, the fewer of both; without end when it is done and does not repeat.</param>
/// <param name="Why">What rules, in a sentence.</param>
public sealed record DuePoint(
    string Point,
    DueState State,
    Length? ByDistance,
    DateOnly? ByDate,
    double DaysLeft,
    Sentence Why
);

/// <summary>How urgent work is.</summary>
public enum DueState
{
    /// <summary>Its day has passed.</summary>
    Overdue,

    /// <summary>Today, or unknown.</summary>
    Due,

    /// <summary>Within the horizon.</summary>
    Soon,

    /// <summary>Beyond it.</summary>
    Later,
}
