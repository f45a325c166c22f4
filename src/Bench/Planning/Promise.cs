using System.Globalization;

namespace Witnessmark.Bench.Planning;

/// <summary>When the machine is promised, where its words name a day: <c>2026-11-27 16:00</c>, <c>Friday 27 November, 16:00</c>.</summary>
/// <param name="Day">The day.</param>
/// <param name="Time">The time of the day, or null.</param>
public sealed record Promise(DateOnly Day, TimeOnly? Time)
{
    private static readonly string[] Days = ["yyyy-MM-dd", "d MMMM yyyy", "d MMM yyyy"];
    private static readonly string[] Times = ["H:mm", "HH:mm", "HH:mm:ss"];

    /// <summary>The day and time that some words name; null when they name none: "when the part has come" is no mistake.</summary>
    /// <param name="words">As somebody wrote it.</param>
    /// <param name="today">A day without its year is the one nearest to today.</param>
    public static Promise? Read(string words, DateOnly today)
    {
        var parts = words
            .Split([' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .ToList();
        if (parts is [{ Length: > 11 } both] && both[10] == 'T')
            parts = [both[..10], both[11..]];
        if (parts.Count > 0 && IsWeekday(parts[0]))
            parts.RemoveAt(0);
        TimeOnly? time = parts.Count > 0 && Exact(parts[^1], out var clock) ? clock : null;
        if (time is not null)
            parts.RemoveAt(parts.Count - 1);
        return DayOf(string.Join(' ', parts), today) is { } day ? new(day, time) : null;
    }

    /// <summary>Whether it lies before a moment; a promise for a day holds until that day is over.</summary>
    public bool IsPast(DateTime moment) =>
        Day < DateOnly.FromDateTime(moment)
        || (Day == DateOnly.FromDateTime(moment) && Time is { } time && time < TimeOnly.FromDateTime(moment));

    private static DateOnly? DayOf(string words, DateOnly today)
    {
        int[] years = [today.Year, Math.Max(1, today.Year - 1), Math.Min(9999, today.Year + 1)];
        IEnumerable<string> forms =
        [
            words,
            .. years.Select(y => string.Create(CultureInfo.InvariantCulture, $"{words} {y:0000}")),
        ];
        var read = forms
            .Select(f =>
                DateOnly.TryParseExact(f, Days, CultureInfo.InvariantCulture, default, out var day)
                    ? day
                    : (DateOnly?)null
            )
            .OfType<DateOnly>()
            .ToArray();
        return read.Length == 0 ? null : read.MinBy(d => Math.Abs(d.DayNumber - today.DayNumber));
    }

    private static bool IsWeekday(string word) =>
        CultureInfo.InvariantCulture.DateTimeFormat.DayNames.Contains(word, StringComparer.OrdinalIgnoreCase)
        || CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedDayNames.Contains(
            word,
            StringComparer.OrdinalIgnoreCase
        );

    private static bool Exact(string word, out TimeOnly time) =>
        TimeOnly.TryParseExact(word, Times, CultureInfo.InvariantCulture, DateTimeStyles.None, out time);
}
