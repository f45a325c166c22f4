using Witnessmark.Bench.Judging;

namespace Witnessmark.Paper.Drawings;

/// <summary>The rule: a reading against its limit as a steel rule, the permitted band bright, the reading a needle as wide as its uncertainty.</summary>
public static class RuleDrawing
{
    /// <summary>As SVG for a screen.</summary>
    public static string Svg(RuleView view, Tongue? tongue = null) => SvgPen.Draw(Of(view, RuleSize.Screen), tongue);

    /// <summary>The geometry.</summary>
    public static Drawing Of(RuleView view, RuleSize size)
    {
        var scale = RuleScale.For(view, size.Width);
        return new(
            size.Width,
            size.Height,
            view.Label,
            [
                .. Metal(view, scale, size),
                .. Ticks(view, scale, size),
                .. view.Earlier.Select(v => Upright(scale.At(v), size.Top, size, Ink.Soft, size.Line * 0.5)),
                .. Expected(view, scale, size),
                .. Now(view, scale, size),
                .. RuleNumbers.Of(view, scale, size),
            ]
        );
    }

    private static IEnumerable<Shape> Metal(RuleView view, RuleScale scale, RuleSize size)
    {
        var tall = size.Bottom - size.Top;
        yield return new Box(0, size.Top, size.Width, tall, size.Radius, Ink.SteelLight);
        if (view.Limit is { } limit)
        {
            var left = limit.Min is { } min ? scale.At(min) : 0;
            var right = limit.Max is { } max ? scale.At(max) : size.Width;
            yield return new Box(left, size.Top, Math.Max(right - left, 0), tall, 0, Ink.Card);
        }
        var edge = size.Line * 0.3;
        yield return new Box(edge / 2, size.Top, size.Width - edge, tall, size.Radius, null, Ink.Steel, edge);
        foreach (var end in ((double?[])[view.Limit?.Min, view.Limit?.Max]).OfType<double>())
            yield return Upright(scale.At(end), size.Top, size, Ink.Mark, size.Line * 0.7);
    }

    private static IEnumerable<Shape> Ticks(RuleView view, RuleScale scale, RuleSize size)
    {
        var great = view.Level ? 0.5 : scale.Step(size.NumberRoom);
        var small = view.Level ? 0.25 : Fine(great, scale, size);
        foreach (var value in scale.Ticks(small))
        {
            var whole = Math.Abs(value / great - Math.Round(value / great)) < 1e-6;
            var x = Within(scale.At(value), 0.5, size.Width - 0.5);
            yield return Upright(
                x,
                size.Bottom - (whole ? size.Tick : size.Tick * 0.5),
                size,
                Ink.Soft,
                size.Line * 0.3
            );
        }
    }

    /// <summary>A tenth of the great step where the eye can still part the ticks, else a fifth or a half.</summary>
    private static double Fine(double great, RuleScale scale, RuleSize size)
    {
        var step = scale.Step(size.FinestTick);
        return ((double[])[step, 2 * step, 5 * step]).FirstOrDefault(s => Divides(s, great), great);
    }

    private static bool Divides(double part, double whole) =>
        part < whole && Math.Abs(whole / part - Math.Round(whole / part)) < 1e-6;

    private static IEnumerable<Shape> Expected(RuleView view, RuleScale scale, RuleSize size)
    {
        if (view.Expected is not { } needle)
            yield break;
        if (Blur(needle, Ink.Full, scale, size, 0.1) is { } blur)
            yield return blur;
        yield return new Line(
            scale.At(needle.Value),
            size.NeedleTop,
            scale.At(needle.Value),
            size.Bottom,
            Ink.Full,
            size.Line * 0.6,
            true
        );
    }

    private static IEnumerable<Shape> Now(RuleView view, RuleScale scale, RuleSize size)
    {
        if (view.Now is not { } needle)
            yield break;
        var ink = InkOf(needle.Verdict);
        if (Blur(needle, ink, scale, size, 0.22) is { } blur)
            yield return blur;
        yield return Upright(scale.At(needle.Value), size.NeedleTop, size, ink, size.Line);
    }

    private static Box? Blur(Needle needle, Ink ink, RuleScale scale, RuleSize size, double opacity)
    {
        if (needle.Uncertainty is not > 0)
            return null;
        var left = scale.At(needle.Value - needle.Uncertainty.Value);
        var right = scale.At(needle.Value + needle.Uncertainty.Value);
        return new Box(left, size.Top, right - left, size.Bottom - size.Top, 0, ink, Opacity: opacity);
    }

    private static Line Upright(double x, double from, RuleSize size, Ink ink, double width) =>
        new(x, from, x, size.Bottom, ink, width);

    internal static double Within(double x, double least, double most) => Math.Max(least, Math.Min(most, x));

    internal static Ink InkOf(VerdictWord verdict) =>
        verdict switch
        {
            VerdictWord.Outside => Ink.Outside,
            VerdictWord.Unproven => Ink.Unproven,
            _ => Ink.Full,
        };
}
