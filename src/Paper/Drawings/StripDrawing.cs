using Witnessmark.Bench.Jobs;

namespace Witnessmark.Paper.Drawings;

/// <summary>The strip: a job's points in bench order as a row of stripes.</summary>
public static class StripDrawing
{
    /// <summary>Distance from one stripe to the next.</summary>
    public const double Pitch = StripeDrawing.Width + 3;

    /// <summary>As SVG, 22 high.</summary>
    /// <param name="stripes">In bench order.</param>
    /// <param name="current">Index of the point in hand, or null.</param>
    public static string Svg(IReadOnlyList<Stripe> stripes, int? current = null, Tongue? tongue = null) =>
        SvgPen.Draw(Of(stripes, current), tongue);

    /// <summary>The geometry.</summary>
    public static Drawing Of(IReadOnlyList<Stripe> stripes, int? current = null) =>
        new(
            Math.Max(1, stripes.Count * Pitch - 3),
            StripeDrawing.Height,
            Label(stripes),
            [.. stripes.SelectMany((s, i) => StripeDrawing.Of(s, i == current).Shapes.Select(p => Moved(p, i * Pitch)))]
        );

    private static Sentence Label(IReadOnlyList<Stripe> stripes) =>
        stripes.Count == 0
            ? (Sentence)$"No points"
            : (Sentence)
                $"{Sentence.Count(stripes.Count, $"1 point", $"{stripes.Count} points")}: {Sentence.List(stripes.CountBy(s => s).OrderBy(g => g.Key).Select(g => (Sentence)$"{g.Value} {Spoken.Of(g.Key)}"))}";

    private static Shape Moved(Shape shape, double x) =>
        shape switch
        {
            Line l => l with { X1 = l.X1 + x, X2 = l.X2 + x },
            Box b => b with { X = b.X + x },
            Patch p => p with { Corners = [.. p.Corners.Select(c => c with { X = c.X + x })] },
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, $"A shape that no stripe has."),
        };
}
