using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Visits;

/// <summary>The readings since a point was last renewed or adjusted, as room to the limit that it wears towards.</summary>
/// <param name="Readings">In order, all with a distance and a standard deviation.</param>
/// <param name="Falls">Whether it falls to its lower limit; else it grows to the upper one.</param>
/// <param name="Bound">That limit, in the history's unit.</param>
/// <param name="Unit">The history's unit.</param>
/// <param name="Began">Why readings before them do not count, in a sentence; null when there are none.</param>
internal sealed record WearRun(
    IReadOnlyList<PointReading> Readings,
    bool Falls,
    double Bound,
    Unit Unit,
    Sentence? Began
)
{
    /// <summary>Against its wear by more than so many standard deviations of the two readings, it was renewed. Common practice, no source.</summary>
    private const double Surely = 3;

    /// <summary>The run, or why there is none.</summary>
    /// <param name="history">What was read.</param>
    /// <param name="fleet">How like machines wear: between two limits it tells towards which; else the own readings do.</param>
    public static (WearRun? Run, Sentence? Why) Of(PointHistory history, FleetRate? fleet = null)
    {
        if (!(history.Point.Reading.Kind is ReadingKind.Value or ReadingKind.Marks or ReadingKind.Places))
            return (null, $"No forecast: what is read here does not wear away along a line.");
        if (
            history is not { Unit: { Dimension: Dimension.Length } unit, Limit: { } limit }
            || limit is { Min: null, Max: null }
        )
            return (null, $"No forecast: it needs a length with a limit to wear towards.");
        var usable = history.Readings.Where(r => r is { Kilometres: not null, Deviation: > 0 }).ToList();
        if (usable.Count == 0)
            return (null, $"No forecast: no reading has both its distance and its uncertainty.");
        var (since, began) = SinceWork(usable);
        var trend = fleet?.Mean ?? since[^1].Value - since[0].Value;
        var falls = limit.Max is null || (limit.Min is not null && trend <= 0);
        var (fresh, renewed) = SinceRenewal(since, falls);
        return (new(fresh, falls, (falls ? limit.Min : limit.Max)!.Value, unit, renewed ?? began), null);
    }

    /// <summary>Room of a value to the limit, in mm.</summary>
    public Length Room(double value) => new(Unit.ToBase(Falls ? value - Bound : Bound - value));

    /// <summary>The value that has so much room.</summary>
    public double Value(Length room) => Bound + (Falls ? 1 : -1) * Unit.FromBase(room.Millimetres);

    private static (List<PointReading>, Sentence?) SinceWork(List<PointReading> readings)
    {
        for (var i = readings.Count - 1; i > 0; i--)
            if (readings[i].AfterWork)
                return (readings[i..], $"Counted since {Day(readings[i])}: it was worked on.");
            else if (readings[i].Kilometres < readings[i - 1].Kilometres)
                return (readings[i..], $"Counted since {Day(readings[i])}: the odometer shows less than before.");
        return (readings, null);
    }

    private static (List<PointReading>, Sentence?) SinceRenewal(List<PointReading> readings, bool falls)
    {
        for (var i = readings.Count - 1; i > 0; i--)
        {
            var better = (readings[i].Value - readings[i - 1].Value) * (falls ? 1 : -1);
            var deviation = Math.Sqrt(Squared(readings[i].Deviation) + Squared(readings[i - 1].Deviation));
            if (better > Surely * deviation)
                return (
                    readings[i..],
                    $"Counted since {Day(readings[i])}: it reads better than before, so it was renewed or adjusted, though nobody wrote that down."
                );
        }
        return (readings, null);
    }

    private static double Squared(double? deviation) => deviation * deviation ?? 0;

    private static Sentence Day(PointReading reading) => VisitWords.Day(reading.Day);
}
