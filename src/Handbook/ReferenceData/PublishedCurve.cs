namespace Witnessmark.Handbook.ReferenceData;

/// <summary>Two columns of a published table, read between its rows in straight lines and nowhere else.</summary>
internal sealed class PublishedCurve
{
    // A change of unit may carry the end of a table out by a few roundings; it is still the end.
    private const double Rounding = 1e-12;

    private readonly double[] xs;
    private readonly double[] ys;

    /// <summary>The columns <paramref name="x"/>, rising, and <paramref name="y"/> of these rows.</summary>
    public PublishedCurve(IEnumerable<PublishedTable.Row> rows, string x, string y)
    {
        var points = rows.Select(r => (X: r.Number(x), Y: r.Number(y))).ToArray();
        (xs, ys) = ([.. points.Select(p => p.X)], [.. points.Select(p => p.Y)]);
    }

    /// <summary>The first x of the table.</summary>
    public double First => xs[0];

    /// <summary>The last x of the table.</summary>
    public double Last => xs[^1];

    /// <summary>y at that x, or null outside the table.</summary>
    public double? At(double x)
    {
        var slack = Rounding * Math.Max(1, Math.Abs(x));
        if (!(x >= First - slack && x <= Last + slack))
            return null;
        var found = Array.BinarySearch(xs, x);
        if (found >= 0)
            return ys[found];
        var above = Math.Clamp(~found, 1, xs.Length - 1);
        return ys[above - 1] + (ys[above] - ys[above - 1]) * (x - xs[above - 1]) / (xs[above] - xs[above - 1]);
    }
}
