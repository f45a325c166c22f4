using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Visits;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Graphs;

/// <summary>Readings of a point over the odometer, what its limit permits bright, each reading as tall as its uncertainty; and the fan of what is to be expected.</summary>
public static class WearGraph
{
    private const double Coverage = 2; // expanded uncertainty, 95 %
    private const double MostAhead = 2.5; // times the median distance left: further ahead the fan is cut

    /// <summary>As SVG for a screen; null when there is no reading that could be drawn.</summary>
    public static string? Svg(PointHistory history, PointForecast forecast, Tongue? tongue = null) =>
        Of(history, forecast) is { } drawing ? SvgPen.Draw(drawing, tongue) : null;

    /// <summary>The geometry; null when there is no reading that could be drawn.</summary>
    public static Drawing? Of(PointHistory history, PointForecast forecast)
    {
        var readings = Drawable(history);
        if (readings.Count == 0)
            return null;
        var plane = PlaneOf(history, readings, forecast.Fan);
        return new(
            Plane.Width,
            Plane.Height,
            Label(history, readings, forecast),
            [
                plane.Band(plane.Y.From, plane.Y.To, Ink.SteelLight),
                .. Permitted(history, plane),
                .. Fan(forecast.Fan, plane),
                .. Limits(history, plane),
                .. Joined(readings, forecast.Run, plane),
                .. readings.SelectMany(r => Mark(r, plane)),
                plane.Frame,
                .. plane.Uprights(),
                .. plane.Acrosses("km"),
            ]
        );
    }

    /// <summary>Readings with a distance, since the odometer went back last: before that no two distances can be compared.</summary>
    public static IReadOnlyList<PointReading> Drawable(PointHistory history)
    {
        var readings = history.Readings.Where(r => r.Kilometres is not null).ToList();
        for (var i = readings.Count - 1; i > 0; i--)
            if (readings[i].Kilometres < readings[i - 1].Kilometres)
                return readings[i..];
        return readings;
    }

    private static Plane PlaneOf(PointHistory history, IReadOnlyList<PointReading> readings, WearFan? fan)
    {
        List<double> x = [.. readings.Select(r => r.Kilometres!.Value)];
        List<double> y = [.. readings.SelectMany(r => new[] { r.Value - Half(r), r.Value + Half(r) })];
        y.AddRange(((double?[])[history.Limit?.Min, history.Limit?.Max]).OfType<double>());
        if (fan is not null)
            x.Add(Furthest(fan));
        return Plane.Of(x.Min(), x.Max(), y.Min(), y.Max());
    }

    private static double Furthest(WearFan fan) =>
        Math.Min(fan.Levels[^1].Latest, fan.From + MostAhead * (fan.Levels[^1].Median - fan.From));

    private static IEnumerable<Shape> Permitted(PointHistory history, Plane plane)
    {
        if (history.Limit is not { } limit)
            yield return plane.Band(plane.Y.From, plane.Y.To, Ink.Card);
        else
            yield return plane.Band(limit.Min ?? plane.Y.From, limit.Max ?? plane.Y.To, Ink.Card);
    }

    private static IEnumerable<Shape> Limits(PointHistory history, Plane plane) =>
        ((double?[])[history.Limit?.Min, history.Limit?.Max])
            .OfType<double>()
            .Select(v => plane.Across(v, Ink.Mark, 2));

    private static IEnumerable<Shape> Fan(WearFan? fan, Plane plane)
    {
        if (fan is null)
            yield break;
        var early = fan.Levels.Select(l => plane.At(l.Earliest, l.Value));
        var late = fan.Levels.Reverse().Select(l => plane.At(l.Latest, l.Value));
        yield return new Patch([.. early, .. late], Ink.Steel);
        yield return plane.Piece(
            fan.From,
            fan.Levels[0].Value,
            fan.Levels[^1].Median,
            fan.Levels[^1].Value,
            Ink.Full,
            1.8,
            dashed: true
        );
        yield return plane.Upright(fan.From, Ink.Soft, 1, dashed: true);
    }

    private static IEnumerable<Shape> Joined(
        IReadOnlyList<PointReading> readings,
        IReadOnlyList<PointReading> run,
        Plane plane
    )
    {
        for (var i = 1; i < readings.Count; i++)
            if (!readings[i].AfterWork && !(run.Count > 0 && ReferenceEquals(readings[i], run[0]))) // renewed in between
                yield return plane.Piece(
                    readings[i - 1].Kilometres!.Value,
                    readings[i - 1].Value,
                    readings[i].Kilometres!.Value,
                    readings[i].Value,
                    Ink.Soft,
                    1
                );
    }

    private static IEnumerable<Shape> Mark(PointReading reading, Plane plane)
    {
        var (x, half) = (reading.Kilometres!.Value, Half(reading));
        var ink = reading.Opinion.Verdict switch
        {
            VerdictWord.Outside => Ink.Outside,
            VerdictWord.Unproven => Ink.Unproven,
            _ => Ink.Full,
        };
        if (half > 0)
            yield return plane.Piece(x, reading.Value - half, x, reading.Value + half, ink, 2);
        var at = plane.At(x, reading.Value);
        yield return reading.Opinion.Verdict == VerdictWord.Unproven
            ? new Disc(at.X, at.Y, 4, Ink.Card, ink, 2)
            : new Disc(at.X, at.Y, 4, ink);
    }

    private static double Half(PointReading reading) => Coverage * (reading.Deviation ?? 0);

    private static Sentence Label(PointHistory history, IReadOnlyList<PointReading> readings, PointForecast forecast)
    {
        var (first, last) = (readings[0], readings[^1]);
        List<Sentence> parts =
        [
            $"{history.Point.Title}, {Sentence.Count(readings.Count, $"1 reading", $"{readings.Count} readings")} over distance",
        ];
        if (readings.Count > 1)
            parts.Add($"from {first.Opinion.Shown} at {Kilometres(first)}");
        Sentence end =
            readings.Count > 1
                ? (Sentence)$"to {last.Opinion.Shown} at {Kilometres(last)}"
                : (Sentence)$"{last.Opinion.Shown} at {Kilometres(last)}";
        parts.Add(end);
        if (history.Limit is { } limit)
            parts.Add($"limit {Spoken.Of(limit, history.Unit!.Symbol)}");
        return $"{Sentence.List(parts)}. {forecast.Words}";
    }

    private static Sentence Kilometres(PointReading reading) =>
        $"{Spoken.Of(Math.Round(reading.Kilometres!.Value))} km";
}
