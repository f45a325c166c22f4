using Witnessmark.Bench.Machines;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Graphs;

/// <summary>What the odometer showed over the days: a long time without a reading is dashed, a fall is broken and marked.</summary>
public static class DistanceGraph
{
    private const int MostDots = 60; // more would be one smear

    /// <summary>As SVG for a screen; null with fewer than two readings.</summary>
    public static string? Svg(IReadOnlyList<DistanceSeen> distances, Tongue? tongue = null) =>
        Of(distances) is { } drawing ? SvgPen.Draw(drawing, tongue) : null;

    /// <summary>The geometry; null with fewer than two readings: a single one is a number.</summary>
    public static Drawing? Of(IReadOnlyList<DistanceSeen> distances)
    {
        if (distances.Count < 2)
            return null;
        var plane = Plane.Of(
            X(distances[0]),
            X(distances[^1]),
            distances.Min(d => d.Distance.Kilometres),
            distances.Max(d => d.Distance.Kilometres)
        );
        return new(
            Plane.Width,
            Plane.Height,
            Label(distances),
            [
                plane.Band(plane.Y.From, plane.Y.To, Ink.Card),
                .. Enumerable
                    .Range(1, distances.Count - 1)
                    .SelectMany(i => Between(distances[i - 1], distances[i], plane)),
                .. distances
                    .Where(d => distances.Count <= MostDots || d.Mark != DistanceMark.None)
                    .Select(d => Dot(d, plane)),
                plane.Frame,
                .. plane.Uprights(),
                .. Years(plane) is { Count: > 0 } years ? years : Ends(distances, plane),
            ]
        );
    }

    private static IEnumerable<Shape> Between(DistanceSeen before, DistanceSeen now, Plane plane)
    {
        var back = now.Mark == DistanceMark.WentBack;
        yield return plane.Piece(
            back ? X(now) : X(before),
            before.Distance.Kilometres,
            X(now),
            now.Distance.Kilometres,
            back ? Ink.Outside : Ink.Full,
            back ? 2 : 1.5,
            dashed: now.Mark != DistanceMark.None
        );
        if (back)
            yield return plane.Piece(
                X(before),
                before.Distance.Kilometres,
                X(now),
                before.Distance.Kilometres,
                Ink.Soft,
                1
            );
    }

    private static Disc Dot(DistanceSeen seen, Plane plane)
    {
        var at = plane.At(X(seen), seen.Distance.Kilometres);
        return new(at.X, at.Y, 4, seen.Mark == DistanceMark.WentBack ? Ink.Outside : Ink.Full);
    }

    /// <summary>The first of January of each year, or of every second, fifth and so on where they would touch.</summary>
    private static List<Shape> Years(Plane plane)
    {
        List<Shape> years = [];
        const double days = 365.25;
        var every = (int)Math.Max(1, plane.X.Step(46) / days);
        var (from, to) = (
            DateOnly.FromDayNumber((int)plane.X.From + 1).Year,
            DateOnly.FromDayNumber((int)plane.X.To).Year
        );
        for (var year = from; year <= to; year++)
            if (year % every == 0 && new DateOnly(year, 1, 1).DayNumber >= plane.X.From)
                years.AddRange(plane.Tick(new DateOnly(year, 1, 1).DayNumber, $"{year}"));
        return years;
    }

    /// <summary>Within one year: the first day and the last.</summary>
    private static IEnumerable<Shape> Ends(IReadOnlyList<DistanceSeen> distances, Plane plane)
    {
        var (first, last) = (Day(distances[0]), Day(distances[^1]));
        var y = Plane.Height - 5;
        yield return new Words(plane.XOf(X(distances[0])), y, first, Plane.Text, Ink.Soft, Centred: false);
        if (last != first)
            yield return new Words(
                plane.XOf(X(distances[^1])) - Words.RoomFor(last, Plane.Text),
                y,
                last,
                Plane.Text,
                Ink.Soft,
                Centred: false
            );
    }

    private static double X(DistanceSeen seen) => seen.Distance.Day.DayNumber;

    private static Sentence Label(IReadOnlyList<DistanceSeen> distances)
    {
        List<Sentence> parts =
        [
            $"{distances.Count} odometer readings, from {Said(distances[0])} to {Said(distances[^1])}",
            .. distances.Where(d => d.Mark == DistanceMark.WentBack).Select(d => (Sentence)$"went back to {Said(d)}"),
            .. distances
                .Where(d => d.Mark == DistanceMark.Gap)
                .Select(d => (Sentence)$"nothing for {d.DaysSince} days before {Day(d)}"),
        ];
        return Sentence.List(parts);
    }

    private static Sentence Said(DistanceSeen seen) =>
        $"{Spoken.Of(Math.Round(seen.Distance.Kilometres))} km on {Day(seen)}";

    private static Sentence Day(DistanceSeen seen) => Sentence.Day(DayForm.Figures, seen.Distance.Day);
}
