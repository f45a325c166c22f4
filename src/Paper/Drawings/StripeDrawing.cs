using Witnessmark.Bench.Jobs;

namespace Witnessmark.Paper.Drawings;

/// <summary>The stripe: the state of a point as paint across a joint of two parts. The shape alone tells it, without colour.</summary>
public static class StripeDrawing
{
    /// <summary>Width of the surface.</summary>
    public const double Width = 14;

    /// <summary>Height of the surface.</summary>
    public const double Height = 22;

    private const double HalfHeight = 10;
    private const double Lean = 5.0 / 22; // the paint leans to the left going down
    private const double Top = 9.5; // middle of the paint at the upper edge

    /// <summary>As SVG, view box 0 0 14 22.</summary>
    /// <param name="stripe">The state.</param>
    /// <param name="current">Whether it is the point in hand: both halves are outlined.</param>
    public static string Svg(Stripe stripe, bool current = false, Tongue? tongue = null) =>
        SvgPen.Draw(Of(stripe, current), tongue);

    /// <summary>The geometry.</summary>
    public static Drawing Of(Stripe stripe, bool current = false) =>
        new(
            Width,
            Height,
            current ? (Sentence)$"{Spoken.Of(stripe)}, in hand" : Spoken.Of(stripe),
            [.. Halves(stripe, current), .. Paint(stripe)]
        );

    private static IEnumerable<Shape> Halves(Stripe stripe, bool current)
    {
        var empty = stripe is Stripe.Unread or Stripe.Left;
        var fill = empty ? Ink.Card : Ink.Steel;
        var (edge, width) = current ? (Ink.Full, 2.0) : (Ink.Soft, 1.0);
        foreach (var y in (double[])[0, Height - HalfHeight])
            yield return empty || current
                ? new Box(width / 2, y + width / 2, Width - width, HalfHeight - width, 2, fill, edge, width)
                : new Box(0, y, Width, HalfHeight, 2, fill);
    }

    private static IEnumerable<Shape> Paint(Stripe stripe) =>
        stripe switch
        {
            Stripe.Unread => [],
            Stripe.Inside => [Band(0, 22, 1.6, Ink.Full)],
            Stripe.Close => [Band(0, 14.5, 1.6, Ink.Full), Band(18.5, 22, 1.6, Ink.Full)],
            Stripe.Outside => [Band(0, 10, 4.4, Ink.Outside, 2.1), Band(12, 22, 4.4, Ink.Outside, -2.7)],
            Stripe.Unproven => Hatched(),
            Stripe.Marked => [Band(0, 22, 4.4, Ink.Mark)],
            Stripe.MarkedClose => [Band(0, 14.5, 4.4, Ink.Mark), Band(18.2, 22, 4.4, Ink.Mark)],
            Stripe.Again =>
            [
                Band(0, 22, 4.4, Ink.Soft),
                new Line(0.8, 7.2, 13.2, 14.8, Ink.Card, 3.4),
                new Line(0.8, 7.2, 13.2, 14.8, Ink.Full, 1.1),
            ],
            Stripe.Left => [new Line(7, 5, 7, 17, Ink.Full, 2)],
            _ => throw new ArgumentOutOfRangeException(nameof(stripe), stripe, $"A state without a drawing."),
        };

    /// <summary>A piece of paint between two heights, its middle shifted sideways.</summary>
    private static Patch Band(double from, double to, double width, Ink ink, double shift = 0)
    {
        var (a, b) = (Middle(from) + shift, Middle(to) + shift);
        var half = width / 2;
        return new([new(a - half, from), new(a + half, from), new(b + half, to), new(b - half, to)], ink);
    }

    /// <summary>Short bars that rise to the right within the outline of the paint.</summary>
    private static IEnumerable<Shape> Hatched()
    {
        const double half = 3;
        for (var y = 0.4; y < 18; y += 4.4)
        {
            var (left, right) = (Middle(y + 3) - half, Middle(y) + half);
            yield return new Patch(
                [new(left, y + 2.2), new(right, y), new(right - 2 * Lean, y + 2), new(left - 2 * Lean, y + 4.2)],
                Ink.Unproven
            );
        }
    }

    private static double Middle(double y) => Top - Lean * y;
}
