using Witnessmark.Bench.Planning.Order;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Paper.Drawings;

/// <summary>
/// The bench order as a band of time: above, what hands do (points dark, changes of the machine light, gaps where they are free);
/// below, what runs by itself; under both the clock from the start.
/// </summary>
public static class BandDrawing
{
    private const double LaneHeight = 22;
    private const double WaitHeight = 9;
    private const double Gap = 3;
    private const double TextSize = 12;
    private const double TickEvery = 64; // at least so far apart, so that the clock times stand clear of each other

    // minutes between two ticks
    private static readonly double[] Rounds = [5, 10, 15, 30, 60, 120, 240, 480, 960];

    /// <summary>As SVG.</summary>
    /// <param name="order">The order.</param>
    /// <param name="width">Width of the surface: about that of the place it stands in, so that its text keeps its size.</param>
    public static string Svg(PlannedOrder order, double width = 720, Tongue? tongue = null) =>
        SvgPen.Draw(Of(order, width), tongue);

    /// <summary>The geometry.</summary>
    public static Drawing Of(PlannedOrder order, double width = 720)
    {
        var whole = Math.Max(order.Plan.Makespan.Seconds, 1);
        var scale = (width - 2) / whole;
        var waits = Lanes(order.Waits);
        var lanes = waits.Select(w => w.Lane + 1).DefaultIfEmpty(0).Max();
        var foot = LaneHeight + lanes * (WaitHeight + Gap) + Gap;
        List<Shape> shapes = [.. Hands(order, scale)];
        foreach (var (start, end, lane) in waits)
            shapes.AddRange(
                Wait(1 + start * scale, (end - start) * scale, LaneHeight + Gap + lane * (WaitHeight + Gap))
            );
        shapes.AddRange(Clock(whole, scale, width, foot));
        return new(width, foot + 6 + TextSize + 4, Label(order), shapes);
    }

    private static IEnumerable<Shape> Hands(PlannedOrder order, double scale)
    {
        var points = order.Points.ToHashSet();
        foreach (var step in order.Plan.Schedule.Where(s => s.End.Seconds > s.Start.Seconds))
        {
            var (x, wide) = (1 + step.Start.Seconds * scale, (step.End - step.Start).Seconds * scale);
            var inset = Math.Min(0.75, wide / 4);
            var inHand = step.Do == order.Asked.InHand;
            yield return points.Contains(step.Do)
                ? new Box(
                    x + inset,
                    1,
                    wide - 2 * inset,
                    LaneHeight - 2,
                    Math.Min(2, wide / 4),
                    inHand ? Ink.Full : Ink.Soft
                )
                : new Box(x + inset, 5, wide - 2 * inset, LaneHeight - 10, 0, Ink.Steel);
        }
    }

    // an open frame with a dashed line through it: nothing is done here, it only runs
    private static IEnumerable<Shape> Wait(double x, double width, double y)
    {
        yield return new Box(x + 0.5, y + 0.5, Math.Max(1, width - 1), WaitHeight - 1, 2, null, Ink.Soft, 1);
        if (width > 8)
            yield return new Line(x + 3, y + WaitHeight / 2, x + width - 3, y + WaitHeight / 2, Ink.Soft, 1, true);
    }

    private static IEnumerable<Shape> Clock(double whole, double scale, double width, double y)
    {
        yield return new Line(0, y, width, y, Ink.Soft, 1);
        var every = 60 * Rounds.FirstOrDefault(r => r * 60 * scale >= TickEvery, Rounds[^1]);
        for (var at = 0.0; at <= whole; at += every)
        {
            var x = 1 + at * scale;
            yield return new Line(x, y, x, y + 5, Ink.Soft, 1);
            var words = OrderWords.Clock(new Duration(at));
            var room = Words.RoomFor(words, TextSize) / 2;
            yield return new Words(
                Math.Clamp(x, room, width - room),
                y + 6 + TextSize,
                Sentence.Of(words),
                TextSize,
                Ink.Soft
            );
        }
    }

    /// <summary>Waits that overlap lie below each other.</summary>
    private static List<(double Start, double End, int Lane)> Lanes(
        IReadOnlyList<(string What, Duration Start, Duration End)> waits
    )
    {
        List<(double Start, double End, int Lane)> placed = [];
        foreach (var (_, start, end) in waits.OrderBy(w => w.Start.Seconds))
        {
            var lane = 0;
            while (placed.Any(p => p.Lane == lane && p.End > start.Seconds))
                lane++;
            placed.Add((start.Seconds, end.Seconds, lane));
        }
        return placed;
    }

    private static Sentence Label(PlannedOrder order)
    {
        var waits = order.Waits.Select(w => (Sentence)$"{w.What} until {OrderWords.Clock(w.End)}").ToList();
        var running = waits.Count > 0 ? (Sentence)$"Meanwhile runs: {Sentence.List(waits)}." : null;
        return Sentence.Line([.. OrderWords.Totals(order), running]);
    }
}
