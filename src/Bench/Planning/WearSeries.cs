using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;

namespace Witnessmark.Bench.Planning;

/// <summary>What was read of one wearing part over the visits, since it was last renewed.</summary>
/// <param name="Point">The point.</param>
/// <param name="Parts">In the order of the distance.</param>
/// <param name="Deviation">One standard deviation of a reading.</param>
internal sealed record WearSeries(string Point, IReadOnlyList<(double Km, Length Value)> Parts, Length Deviation)
{
    private const double Kilometre = 1e6; // mm

    // what is renewed grows by far more than its readings scatter; common practice, no source
    private const double Renewed = 5;

    // a part may well have gone this much faster or slower than its own readings say: nearly nothing is known beside them
    private static readonly Length Wide = new(100);

    /// <summary>This machine's readings of a point.</summary>
    public static WearSeries? Of(string point, PlanQuestion asked) =>
        Of(
            point,
            [
                .. asked.Visits.Where(v => v.Day <= asked.Day),
                .. asked.Today is { } today ? [today] : Array.Empty<PastVisit>(),
            ]
        );

    /// <summary>
    /// What is believed before the readings: like parts of the same model where at least three of them were read twice, else next
    /// to nothing, and then two own readings are needed.
    /// </summary>
    public FleetWear? Prior(PlanQuestion asked)
    {
        var rates = asked
            .Fleet.Where(v => v.Sheet == asked.Sheet.Id && v.Machine != asked.Machine.Id)
            .GroupBy(v => v.Machine)
            .Select(g => Of(Point, [.. g])?.Rate)
            .OfType<double>()
            .ToArray();
        if (rates.Length >= 3)
        {
            var mean = rates.Average();
            var deviation = Math.Sqrt(rates.Sum(r => (r - mean) * (r - mean)) / (rates.Length - 1));
            return new(Parts[0].Value, new(mean), Wide, new(deviation));
        }
        return Parts.Count >= 2 ? new(Parts[0].Value, new(0), Wide, Wide) : null;
    }

    // mm per 1000 km between the first and the last reading; null when one alone was taken
    private double? Rate =>
        Parts.Count >= 2 && Parts[^1].Km > Parts[0].Km
            ? (Parts[0].Value - Parts[^1].Value).Millimetres / (Parts[^1].Km - Parts[0].Km) * 1000
            : null;

    private static WearSeries? Of(string point, IReadOnlyList<PastVisit> visits)
    {
        List<(double Km, Length Value)> parts = [];
        var deviation = 0.0;
        foreach (var visit in visits.OrderBy(v => v.Day))
        {
            if (
                visit.Kilometres is not { } km
                || visit.Points.FirstOrDefault(p => p.Point == point)
                    is not { Measured: { } measured, Unit: { Dimension: Dimension.Length } unit }
            )
                continue;
            var value = new Length(unit.ToBase(measured.Value));
            deviation = Math.Max(deviation, unit.ToBase(measured.Uncertainty));
            if (parts.Count > 0 && (value > parts[^1].Value + new Length(Renewed * deviation) || km < parts[^1].Km))
                parts.Clear();
            parts.Add((km, value));
        }
        return parts.Count > 0 && deviation > 0 ? new(point, parts, new(deviation)) : null;
    }
}
