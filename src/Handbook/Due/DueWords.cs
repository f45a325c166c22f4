using System.Globalization;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Due;

/// <summary>Why work is due, in sentences.</summary>
internal static class DueWords
{
    public static Sentence NotOnRecord => $"Not on record: unknown, treat as due.";

    public static Sentence DistanceUnknown =>
        $"The odometer went back since it was last done, so the distance is unknown: treat as due.";

    public static Sentence Once(DateOnly done) => $"Done on {Day(done)}; it does not repeat.";

    public static Sentence ByDate(DateOnly done, int months, DateOnly? day, int left)
    {
        var after = Sentence.Count(months, $"1 month after {Day(done)}", $"{months} months after {Day(done)}");
        return day is { } known
            ? (Sentence)$"By {Day(known)}: {after}, {Left(left)}."
            : (Sentence)$"By a day beyond the year 9999: {after}, {Left(left)}.";
    }

    public static Sentence ByDistance(
        ServiceRule rule,
        OdometerReading? last,
        Length shown,
        Length left,
        Length perDay,
        bool over
    )
    {
        Sentence from = last is { } entry
            ? (Sentence)
                $"{Kilometres(rule.Distance!.Value)} after {Kilometres(entry.Distance)} on {Day(entry.Date)}{Over(over)}"
            : (Sentence)$"the first time{Over(over)}";
        Sentence gone =
            left.Millimetres < 0 ? (Sentence)$"{Kilometres(-left)} over" : (Sentence)$"{Kilometres(left)} left";
        return $"By {Kilometres(shown)}: {from}, {gone} at {Kilometres(perDay)} a day.";
    }

    /// <summary>What to say of an odometer that went back.</summary>
    public static Sentence Of(OdometerBreak seen) =>
        $"On {Day(seen.Date)} the odometer showed {Kilometres(seen.To)}, after {Kilometres(seen.From)} before: replaced, set back, or an entry is wrong. Find out, and name the replacement or put the entry right.";

    private static readonly Unit Kilometre = UnitTable.Named("km");

    private static Sentence Over(bool replaced) =>
        replaced ? (Sentence)$", counted on over the odometer replaced since" : Sentence.Empty;

    private static Sentence Left(int days) =>
        days < 0
            ? Sentence.Count(-days, $"1 day over", $"{-days} days over")
            : Sentence.Count(days, $"1 day left", $"{days} days left");

    private static Sentence Day(DateOnly day) => Sentence.Day(DayForm.Figures, day);

    // rounded twice, so that half a kilometre written in miles rounds as it does written in kilometres
    private static Sentence Kilometres(Length length) =>
        InUnits.Of(
            Math.Round(Math.Round(length.Millimetres / 1e6, 6), 1, MidpointRounding.AwayFromZero)
                .ToString("0.#", CultureInfo.InvariantCulture),
            Kilometre
        );
}
