namespace Witnessmark.Handbook.Numerics;

/// <summary>Straight lines from point to point, defined from the first point to the last and nowhere else.</summary>
public sealed class PiecewiseLinear
{
    // An end written in another unit may lie a binary digit off: this share of the whole span still counts as the end.
    private const double Rounding = 1e-12;

    private readonly (double X, double Y)[] points;

    /// <summary>Joins the points.</summary>
    /// <param name="points">One or more, in rising order of X.</param>
    /// <exception cref="ArgumentException">There is no point, or X does not rise.</exception>
    public PiecewiseLinear(IEnumerable<(double X, double Y)> points)
    {
        this.points = [.. points];
        if (this.points.Length == 0 || this.points.Zip(this.points.Skip(1)).Any(p => p.First.X >= p.Second.X))
            throw new ArgumentException("One point or more, in rising order.", nameof(points));
    }

    /// <summary>The points in rising order.</summary>
    public IReadOnlyList<(double X, double Y)> Points => points;

    /// <summary>The first point.</summary>
    public (double X, double Y) First => points[0];

    /// <summary>The last point.</summary>
    public (double X, double Y) Last => points[^1];

    /// <summary>The height at x; null outside the points.</summary>
    public double? At(double x)
    {
        var slip = Rounding * Math.Max(Math.Abs(First.X), Math.Abs(Last.X));
        if (!(x >= First.X - slip && x <= Last.X + slip))
            return null;
        var next = Array.FindIndex(points, p => p.X >= x);
        return next switch
        {
            -1 => Last.Y,
            0 => First.Y,
            _ => Between(points[next - 1], points[next], x),
        };
    }

    /// <summary>The smallest x with that height or more; null when no point reaches it.</summary>
    public double? FirstReaching(double y)
    {
        var at = Array.FindIndex(points, p => p.Y >= y - Rounding * Math.Abs(y));
        if (at < 0)
            return null;
        var (from, to) = (points[Math.Max(at - 1, 0)], points[at]);
        return at == 0 || to.Y <= y ? to.X : from.X + (to.X - from.X) * (y - from.Y) / (to.Y - from.Y);
    }

    // Weighted so that both ends come out to the last digit.
    private static double Between((double X, double Y) a, (double X, double Y) b, double x)
    {
        var share = (x - a.X) / (b.X - a.X);
        return (1 - share) * a.Y + share * b.Y;
    }
}
