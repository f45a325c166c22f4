namespace Witnessmark.Paper.Drawings;

/// <summary>The round rule: readings at their angles between the rings of the permitted band, with the once-round wave that fits them best.</summary>
/// <remarks>
/// <para><b>Formula.</b> f(φ) = m + a·cos φ + b·sin φ with m the mean, a = 2/n Σ y cos φ, b = 2/n Σ y sin φ.</para>
/// <para><b>Source.</b> Least squares of a first harmonic at equal angles, where the three functions are orthogonal (own derivation).</para>
/// <para><b>Valid when</b> the readings stand at equal angles over one turn.</para>
/// </remarks>
public static class RoundRuleDrawing
{
    private const double Size = 250;
    private const double Centre = Size / 2;
    private const double Hub = 22; // radius of the turning part
    private const double Rim = 118; // radius of the steel
    private const double Text = 13;

    /// <summary>As SVG.</summary>
    public static string Svg(RoundView view, Tongue? tongue = null) => SvgPen.Draw(Of(view), tongue);

    /// <summary>The geometry.</summary>
    public static Drawing Of(RoundView view)
    {
        var radius = Radii(view);
        return new(
            Size,
            Size + 44,
            view.Label,
            [
                new Disc(Centre, Centre, Rim, Ink.SteelLight, Ink.Steel, 1),
                new Disc(Centre, Centre, radius(view.BandTo), Ink.Card, Ink.Mark, 2),
                new Disc(Centre, Centre, radius(view.BandFrom), Ink.SteelLight, Ink.Mark, 2),
                new Disc(Centre, Centre, Hub / 2, Ink.Card, Ink.Steel, 1),
                new Line(Centre, Centre - Rim, Centre, Centre - Rim + 8, Ink.Soft, 1.5),
                new Loop(Wave(view.Values, radius), Ink.Soft, 1.6),
                .. Readings(view, radius),
                .. Names(view),
            ]
        );
    }

    /// <summary>Radius of a value: everything shown lies between the hub and the rim.</summary>
    private static Func<double, double> Radii(RoundView view)
    {
        var low = Math.Min(view.BandFrom, view.Values.Min());
        var high = Math.Max(view.BandTo, view.Values.Max());
        var span = high - low < 1e-9 * Math.Max(1, Math.Abs(high)) ? 1 : high - low;
        var (inner, outer) = (Hub + 18, Rim - 14);
        return value => inner + (value - low) / span * (outer - inner);
    }

    private static IEnumerable<Shape> Readings(RoundView view, Func<double, double> radius)
    {
        var (least, most) = (view.Values.IndexOfMin(), view.Values.IndexOfMax());
        for (var i = 0; i < view.Values.Count; i++)
        {
            var at = At(radius(view.Values[i]), i, view.Values.Count);
            var outside = view.Values[i] < view.BandFrom || view.Values[i] > view.BandTo;
            var ink = outside ? Ink.Outside : Ink.Full;
            yield return i == least ? Open(at, ink)
            : i == most ? new Disc(at.X, at.Y, 6, ink)
            : new Disc(at.X, at.Y, 4, ink);
        }
    }

    private static Disc Open(Spot at, Ink ink) => new(at.X, at.Y, 5.2, Ink.Card, ink, 2.2);

    private static IEnumerable<Shape> Names(RoundView view)
    {
        yield return new Disc(10, Size + 12, 6, Ink.Full);
        yield return Name(view.Most, Size + 16.5);
        yield return Open(new(10, Size + 33), Ink.Full);
        yield return Name(view.Least, Size + 37.5);
    }

    private static Words Name(Sentence text, double y) =>
        new(22, y, text, Math.Min(Text, Text * (Size - 22) / Words.RoomFor(text, Text)), Ink.Full, Centred: false);

    private static List<Spot> Wave(IReadOnlyList<double> values, Func<double, double> radius)
    {
        var n = values.Count;
        var mean = values.Average();
        var a = 2.0 / n * values.Select((y, i) => y * Math.Cos(2 * Math.PI * i / n)).Sum();
        var b = 2.0 / n * values.Select((y, i) => y * Math.Sin(2 * Math.PI * i / n)).Sum();
        const int pieces = 90;
        return
        [
            .. Enumerable
                .Range(0, pieces)
                .Select(k => (k, Angle: 2 * Math.PI * k / pieces))
                .Select(p => At(radius(mean + a * Math.Cos(p.Angle) + b * Math.Sin(p.Angle)), p.k, pieces)),
        ];
    }

    private static Spot At(double radius, int step, int steps)
    {
        var angle = 2 * Math.PI * step / steps;
        return new(Centre + radius * Math.Sin(angle), Centre - radius * Math.Cos(angle));
    }
}
