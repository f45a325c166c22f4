using System.Globalization;
using Witnessmark.Bench.Toml;

namespace Witnessmark.Bench.Day;

/// <summary>Reads hours of a week: <c>monday = ["08:00-12:30", "13:15-17:30"]</c>.</summary>
internal static class HoursTable
{
    private const string Right = "a list such as [\"08:00-12:30\", \"13:15-17:30\"], in order";

    /// <summary>The hours; on a weekday that is not named those of <paramref name="otherwise"/> hold, or none.</summary>
    /// <param name="table">The table with the weekdays.</param>
    /// <param name="otherwise">Hours that this table changes, or null.</param>
    /// <param name="off">Where the days without hours stand: a key with a list of days.</param>
    public static Hours Read(TomlTable table, Hours? otherwise, (TomlTable Table, string Key) off)
    {
        var week = new IReadOnlyList<Shift>[7];
        foreach (var day in Enum.GetValues<DayOfWeek>())
        {
            var key = day.ToString().ToLowerInvariant();
            var there = table.Has(key);
            var shifts = Shifts(table, key);
            week[(int)day] = there ? shifts : otherwise?.Week[(int)day] ?? [];
        }
        return new(week, [.. otherwise?.Closed ?? [], .. Days(off.Table, off.Key)]);
    }

    /// <summary>A list of days; empty when the key is missing.</summary>
    public static IReadOnlyList<DateOnly> Days(TomlTable table, string key)
    {
        const string right = "a list of days such as [2026-12-25]";
        List<DateOnly> days = [];
        foreach (var item in table.Items(key, right))
            if (
                item is TomlDate date
                && DateOnly.TryParseExact(
                    date.Written,
                    "yyyy-MM-dd",
                    CultureInfo.InvariantCulture,
                    default,
                    out var day
                )
            )
                days.Add(day);
            else
                table.Mistakes.Add(item.Place, item.InWords, $"{key} = {right}");
        return days;
    }

    private static List<Shift> Shifts(TomlTable table, string key)
    {
        List<Shift> shifts = [];
        foreach (var text in table.Texts(key))
            if (Read(text) is not { } shift)
                table.Mistakes.Add(
                    table.At(key, text),
                    $"\"{text}\" is no time from one clock time to a later one",
                    Right
                );
            else if (shifts.Count > 0 && shift.From <= shifts[^1].To)
                table.Mistakes.Add(table.At(key, text), $"\"{text}\" begins before the one before it has ended", Right);
            else
                shifts.Add(shift);
        return shifts;
    }

    private static Shift? Read(string text) =>
        text.Split('-') is [var from, var to]
        && TimeOnly.TryParseExact(from.Trim(), "HH:mm", CultureInfo.InvariantCulture, default, out var begin)
        && TimeOnly.TryParseExact(to.Trim(), "HH:mm", CultureInfo.InvariantCulture, default, out var end)
        && begin < end
            ? new(begin, end)
            : null;
}
