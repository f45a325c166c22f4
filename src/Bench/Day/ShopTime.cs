using System.Globalization;

namespace Witnessmark.Bench.Day;

/// <summary>
/// Moments by the clock on the shop's wall, to the minute and without a zone: a promise is given and kept by that clock, and
/// summer time changes while the shop is closed.
/// </summary>
public static class ShopTime
{
    private const string Form = "yyyy-MM-dd'T'HH:mm";

    /// <summary>As it is written: <c>2026-11-27T16:00</c>.</summary>
    public static string Write(DateTime moment) => moment.ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>The moment, or null when the text is none; seconds may follow, as TOML wants them, and must be 0.</summary>
    public static DateTime? Read(string text) =>
        DateTime.TryParseExact(
            text.Replace(' ', 'T'),
            [Form, "yyyy-MM-dd'T'HH:mm:00"],
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var moment
        )
            ? moment
            : null;

    /// <summary>For people: <c>Fri 27 Nov, 16:00</c>, and <c>16:00</c> alone on the day they look at it.</summary>
    public static Sentence Say(DateTime moment, DateTime today) =>
        moment.Date == today.Date
            ? Sentence.Of(Clock(moment))
            : (Sentence)$"{Sentence.Day(DayForm.Week, DateOnly.FromDateTime(moment))}, {Clock(moment)}";

    private static string Clock(DateTime moment) => moment.ToString("HH':'mm", CultureInfo.InvariantCulture);

    /// <summary>A length for people: <c>45 min</c>, <c>2 h 5 min</c>.</summary>
    public static Sentence Length(int minutes) =>
        (minutes / 60, minutes % 60) switch
        {
            (0, var m) => $"{m} min",
            (var h, 0) => $"{h} h",
            var (h, m) => $"{h} h {m} min",
        };
}
