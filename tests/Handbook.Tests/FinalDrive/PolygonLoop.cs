namespace Witnessmark.Handbook.Tests.FinalDrive;

/// <summary>
/// An oracle without tangent formulas: both arcs as polygons of many corners in coordinates. The taut loop is the perimeter
/// of their convex hull; a leg goes from the moved middle to the corner that has both its neighbours on one side.
/// </summary>
internal sealed class PolygonLoop
{
    private const int Corners = 20_000;

    private readonly (double X, double Y)[] front;
    private readonly (double X, double Y)[] rear;
    private readonly (int Front, int Rear) touched;
    private readonly (double X, double Y) middle;
    private readonly (double X, double Y) outward;

    public PolygonLoop(double frontTeeth, double rearTeeth, double pitch, double centre)
    {
        front = Polygon(frontTeeth * pitch, 0);
        rear = Polygon(rearTeeth * pitch, centre);
        // The lower run leaves both polygons at the corners farthest down along a normal; found by walking the hull's edge.
        var (a, b) = (Corners * 3 / 4, Corners * 3 / 4);
        for (var moved = true; moved; )
        {
            moved = Improve(ref a, front, rear[b], front[a]) | Improve(ref b, rear, front[a], rear[b]);
        }
        touched = (a, b);
        middle = ((front[a].X + rear[b].X) / 2, (front[a].Y + rear[b].Y) / 2);
        var (dx, dy) = (rear[b].X - front[a].X, rear[b].Y - front[a].Y);
        var run = Math.Sqrt(dx * dx + dy * dy);
        outward = (dy / run, -dx / run);
        Run = run;
        Taut = HullPerimeter([.. front, .. rear]);
    }

    public double Run { get; }

    public double Taut { get; }

    /// <summary>Length of the loop with the middle of the lower run moved by h, out of the loop positive.</summary>
    public double Length(double h)
    {
        var at = (X: middle.X + h * outward.X, Y: middle.Y + h * outward.Y);
        var (onFront, onRear) = (Tangent(front, touched.Front, at), Tangent(rear, touched.Rear, at));
        // The front polygon is wrapped on its left, the rear one on its right: outward moves unwrap both.
        return Taut
            - Run
            + Distance(front[onFront], at)
            + Distance(at, rear[onRear])
            + (onFront - touched.Front) * Distance(front[0], front[1])
            - (onRear - touched.Rear) * Distance(rear[0], rear[1]);
    }

    /// <summary>Total movement of the middle with a chain of this length.</summary>
    public double Slack(double length) =>
        Bisected(h => Length(h) - length, 0, 150) - Bisected(h => Length(h) - length, 0, -150);

    /// <summary>Length of the chain that has this slack.</summary>
    public double LengthFor(double slack) => Bisected(length => Slack(length) - slack, Taut, Taut + 20);

    public static double Bisected(Func<double, double> f, double negative, double positive)
    {
        for (var i = 0; i < 60; i++)
        {
            var half = (negative + positive) / 2;
            if (f(half) < 0)
                negative = half;
            else
                positive = half;
        }
        return (negative + positive) / 2;
    }

    private static (double X, double Y)[] Polygon(double perimeter, double x)
    {
        var radius = perimeter / (2 * Corners * Math.Sin(Math.PI / Corners));
        return
        [
            .. Enumerable
                .Range(0, Corners)
                .Select(i => 2 * Math.PI * i / Corners)
                .Select(a => (x + radius * Math.Cos(a), radius * Math.Sin(a))),
        ];
    }

    private static double Cross((double X, double Y) o, (double X, double Y) a, (double X, double Y) b) =>
        (a.X - o.X) * (b.Y - o.Y) - (a.Y - o.Y) * (b.X - o.X);

    private static double Distance((double X, double Y) a, (double X, double Y) b) =>
        Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y));

    private static (double X, double Y) Corner((double X, double Y)[] polygon, int i) =>
        polygon[(i % Corners + Corners) % Corners];

    // Moves to a neighbour that lies below the line from the other polygon's corner.
    private static bool Improve(
        ref int corner,
        (double X, double Y)[] polygon,
        (double X, double Y) from,
        (double X, double Y) now
    )
    {
        foreach (var next in (int[])[corner - 1, corner + 1])
        {
            var side = Cross(from, now, Corner(polygon, next)) * Math.Sign(now.X - from.X);
            if (side >= 0)
                continue;
            corner = next;
            return true;
        }
        return false;
    }

    // Walks from the corner touched at rest until both neighbours lie on one side of the line to the moved middle.
    private static int Tangent((double X, double Y)[] polygon, int start, (double X, double Y) at)
    {
        for (var away = 0; away < Corners / 3; away++)
            foreach (var i in (int[])[start - away, start + away])
            {
                var corner = Corner(polygon, i);
                if (Cross(at, corner, Corner(polygon, i - 1)) * Cross(at, corner, Corner(polygon, i + 1)) >= 0)
                    return i;
            }
        throw new InvalidOperationException("No tangent corner.");
    }

    // Andrew's monotone chain
    private static double HullPerimeter((double X, double Y)[] points)
    {
        Array.Sort(points);
        var hull = new List<(double X, double Y)>();
        foreach (var pass in (IEnumerable<(double X, double Y)>[])[points, points.Reverse()])
        {
            var from = hull.Count;
            foreach (var point in pass)
            {
                while (hull.Count >= from + 2 && Cross(hull[^2], hull[^1], point) <= 0)
                    hull.RemoveAt(hull.Count - 1);
                hull.Add(point);
            }
            hull.RemoveAt(hull.Count - 1);
        }
        return hull.Select((p, i) => Distance(p, hull[(i + 1) % hull.Count])).Sum();
    }
}
