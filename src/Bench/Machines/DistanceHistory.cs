using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Machines;

/// <summary>The distances of a machine in order, with the gaps and the places where the odometer went back.</summary>
public static class DistanceHistory
{
    /// <summary>Days without a reading after which nobody can tell how the machine was used: a year and a month. Common practice, no source.</summary>
    public const int LongestWithout = 366 + 31;

    private const double MillimetresInKilometre = 1e6;

    /// <summary>One line for each reading; the same reading given twice is one.</summary>
    public static IReadOnlyList<DistanceSeen> Of(IEnumerable<DistanceOnDay> distances)
    {
        var inOrder = distances.Distinct().OrderBy(d => d.Day).ThenBy(d => d.Kilometres).ToArray();
        if (inOrder.Length == 0)
            return [];
        var readings = inOrder.Select(Reading).ToArray();
        var breaks = new OdometerHistory(readings[..^1], readings[^1], []).Breaks;
        List<DistanceSeen> seen = [new(inOrder[0], null, DistanceMark.None, null)];
        for (var i = 1; i < inOrder.Length; i++)
            seen.Add(Seen(inOrder[i - 1], inOrder[i], breaks));
        return seen;
    }

    private static DistanceSeen Seen(DistanceOnDay before, DistanceOnDay now, IReadOnlyList<OdometerBreak> breaks)
    {
        var days = now.Day.DayNumber - before.Day.DayNumber;
        foreach (var at in breaks)
            if (at.Date == now.Day && at.To == Length(now) && at.From == Length(before))
                return new(now, days, DistanceMark.WentBack, at.Why);
        return days > LongestWithout
            ? new(now, days, DistanceMark.Gap, $"Nothing is on record for {days} days before.")
            : new(now, days, DistanceMark.None, null);
    }

    private static OdometerReading Reading(DistanceOnDay distance) => new(distance.Day, Length(distance));

    private static Length Length(DistanceOnDay distance) => new(distance.Kilometres * MillimetresInKilometre);
}

/// <summary>One reading among the others.</summary>
/// <param name="Distance">The reading.</param>
/// <param name="DaysSince">Days since the one before; null for the first.</param>
/// <param name="Mark">What is odd about it.</param>
/// <param name="Why">In a sentence; null when nothing is odd.</param>
public sealed record DistanceSeen(DistanceOnDay Distance, int? DaysSince, DistanceMark Mark, Sentence? Why);

/// <summary>What is odd about a distance.</summary>
public enum DistanceMark
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Too long without a reading.</summary>
    Gap,

    /// <summary>It shows less than before.</summary>
    WentBack,
}
