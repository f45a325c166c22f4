using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Due;

/// <summary>Why work is due, in sentences.</summary>
internal static class DueWords
{
    public const string NotOnRecord = "Not on record: unknown, treat as due.";

    public const string DistanceUnknown =
        "The odometer went back since it was last done, so the distance is unknown: treat as due.";

    public static string Once(DateOnly done) => $"Done on {Day(done)}; it does not repeat.";

    public static string ByDate(DateOnly done, int months, DateOnly? day, int left) =>
        $"By {(day is { } d ? Day(d) : "a day beyond the year 9999")}: {Counted(months, "month")} after {Day(done)}, {Left(left)}.";

    public static string ByDistance(
        ServiceRule rule,
        OdometerReading? last,
        Length shown,
        Length left,
        Length perDay,
        bool over
    )
    {
        var from = last is { } entry
            ? $"{Kilometres(rule.Distance!.Value)} after {Kilometres(entry.Distance)} on {Day(entry.Date)}{Over(over)}"
            : "the first time" + Over(over);
        var gone = left.Millimetres < 0 ? $"{Kilometres(-left)} over" : $"{Kilometres(left)} left";
        return $"By {Kilometres(shown)}: {from}, {gone} at {Kilometres(perDay)} a day.";
    }

    /// <summary>What to say of an odometer that went back.</summary>
    public static string Of(OdometerBreak seen) =>
        $"On {Day(seen.Date)} the odometer showed {Kilometres(seen.To)}, after {Kilometres(seen.From)} before: replaced, set back, "
        + "or an entry is wrong. Find out, and name the replacement or put the entry right.";

    private static string Over(bool replaced) => replaced ? ", counted on over the odometer replaced since" : "";

    private static string Left(int days) => days < 0 ? $"{Counted(-days, "day")} over" : $"{Counted(days, "day")} left";

    private static string Counted(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // rounded twice, so that half a kilometre written in miles rounds as it does written in kilometres
    private static string Kilometres(Length length) =>
        Math.Round(Math.Round(length.Millimetres / 1e6, 6), 1, MidpointRounding.AwayFromZero)
            .ToString("0.#", CultureInfo.InvariantCulture) + " km";
}
