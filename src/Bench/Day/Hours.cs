namespace Witnessmark.Bench.Day;

/// <summary>From when to when on one day, by the clock.</summary>
public readonly record struct Shift(TimeOnly From, TimeOnly To);

/// <summary>Hours of a week, and the days on which they do not hold.</summary>
/// <param name="Week">Shifts of each weekday in order, Sunday first as <see cref="DayOfWeek"/> counts.</param>
/// <param name="Closed">Days without hours.</param>
public sealed record Hours(IReadOnlyList<IReadOnlyList<Shift>> Week, IReadOnlyList<DateOnly> Closed)
{
    /// <summary>How far ahead a plan may look.</summary>
    public const int MostDays = 28;

    /// <summary>The hours as spans from the midnight of a day on.</summary>
    public IReadOnlyList<Span> From(DateOnly first) =>
        [
            .. Enumerable
                .Range(0, MostDays)
                .Where(day => !Closed.Contains(first.AddDays(day)))
                .SelectMany(day =>
                    Week[(int)first.AddDays(day).DayOfWeek].Select(s => new Span(At(day, s.From), At(day, s.To)))
                ),
        ];

    private static int At(int day, TimeOnly time) => day * 1440 + time.Hour * 60 + time.Minute;
}
