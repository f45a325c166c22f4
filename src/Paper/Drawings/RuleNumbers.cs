namespace Witnessmark.Paper.Drawings;

/// <summary>The numbers on a rule. The ends of the limit come first; a tick whose number would touch another, or the edge, has none.</summary>
internal static class RuleNumbers
{
    private const double Gap = 5;

    public static IEnumerable<Shape> Of(RuleView view, RuleScale scale, RuleSize size) =>
        [.. OverNeedles(view, scale, size), .. Under(view, scale, size)];

    private static List<Words> OverNeedles(RuleView view, RuleScale scale, RuleSize size)
    {
        var written = new List<Words>();
        if (size.NeedleText == 0)
            return written;
        var line = size.NeedleTop - 5;
        if (view.Now is { } now)
            written.Add(
                Pushed(
                    now.Number,
                    scale.At(now.Value),
                    line,
                    size.NeedleText,
                    RuleDrawing.InkOf(now.Verdict),
                    true,
                    size
                )
            );
        if (view.Expected is { } expected)
            AddIfFree(
                written,
                Pushed(expected.Number, scale.At(expected.Value), line, size.Text, Ink.Soft, false, size)
            );
        return written;
    }

    private static List<Words> Under(RuleView view, RuleScale scale, RuleSize size)
    {
        var line = size.Bottom + size.Text + 1;
        var written = new List<Words>();
        foreach (var (value, text) in Ends(view))
            AddIfFree(written, Pushed(text, scale.At(value), line, size.Text, Ink.Full, true, size));
        if (size.NeedleText == 0 || view.Level)
            return written;
        foreach (var value in scale.Ticks(scale.Step(size.NumberRoom)))
        {
            var number = new Words(scale.At(value), line, Spoken.Of(value), size.Text, Ink.Soft);
            if (number.Left >= 0 && number.Right <= size.Width)
                AddIfFree(written, number);
        }
        return written;
    }

    private static IEnumerable<(double, Sentence)> Ends(RuleView view)
    {
        if (view.Level)
            return [(0, $"low mark"), (1, $"high mark")];
        var ends = (double?[])[view.Limit?.Min, view.Limit?.Max];
        return ends.OfType<double>().Select(v => (v, Spoken.Of(v)));
    }

    /// <summary>Centred on its place, pushed inwards where it would leave the surface; shrunk where it is wider than that.</summary>
    private static Words Pushed(Sentence text, double x, double y, double height, Ink ink, bool bold, RuleSize size)
    {
        var fitting = Math.Min(height, height * size.Width / Words.RoomFor(text, height));
        var half = Words.RoomFor(text, fitting) / 2;
        return new(RuleDrawing.Within(x, half, size.Width - half), y, text, fitting, ink, bold);
    }

    private static void AddIfFree(List<Words> written, Words number)
    {
        if (written.All(w => w.Right + Gap <= number.Left || number.Right + Gap <= w.Left))
            written.Add(number);
    }
}
