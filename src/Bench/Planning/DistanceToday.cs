namespace Witnessmark.Bench.Planning;

/// <summary>How far the machine has gone, and how far it goes a day.</summary>
/// <param name="Kilometres">What the odometer shows, or showed last; null when nobody ever read it.</param>
/// <param name="PerDay">Kilometres a day; zero when that cannot be told.</param>
/// <param name="Known">Days and distances, in order, none after today.</param>
internal sealed record DistanceToday(
    double? Kilometres,
    double PerDay,
    IReadOnlyList<(DateOnly Day, double Kilometres)> Known
)
{
    // over less than a month one long ride would count as a habit; common practice, no source
    private const int ShortestSpan = 30;

    public static DistanceToday Of(PlanQuestion asked)
    {
        List<(DateOnly Day, double Kilometres)> known = [];
        if (asked.Machine is { LastDistanceKilometres: { } last, LastDistanceOn: { } on })
            known.Add((on, last));
        foreach (var visit in asked.Visits)
            if (visit.Kilometres is { } read)
                known.Add((visit.Day, read));
        if ((asked.Kilometres ?? asked.Today?.Kilometres) is { } now)
            known.Add((asked.Day, now));
        known = [.. known.Where(k => k.Day <= asked.Day).Distinct().OrderBy(k => k.Day).ThenBy(k => k.Kilometres)];
        return new(known.Count > 0 ? known[^1].Kilometres : null, Daily(known, asked.Machine.Year), known);
    }

    /// <summary>The distance known last on a day; zero before any was read, which makes what was done then due sooner, never later.</summary>
    public double At(DateOnly day) => Known.LastOrDefault(k => k.Day <= day).Kilometres;

    private static double Daily(List<(DateOnly Day, double Kilometres)> known, int? year)
    {
        if (known.Count == 0)
            return 0;
        var now = known[^1];
        var first = known.FirstOrDefault(k => k.Kilometres <= now.Kilometres);
        if (now.Day.DayNumber - first.Day.DayNumber >= ShortestSpan)
            return (now.Kilometres - first.Kilometres) / (now.Day.DayNumber - first.Day.DayNumber);
        // one reading alone: from the first day of the model year on
        var days = year is { } built ? now.Day.DayNumber - new DateOnly(built, 1, 1).DayNumber : 0;
        return days >= ShortestSpan ? now.Kilometres / days : 0;
    }
}
