using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Graphs;

/// <summary>A plane of two scales with its frame and numbers, in the style of the rule: ticks of 1, 2 or 5 times a power of ten.</summary>
/// <param name="X">Along the lower edge, to the right.</param>
/// <param name="Y">Along the left edge, upwards.</param>
internal sealed record Plane(RuleScale X, RuleScale Y)
{
    /// <summary>The surface, as wide as the rule.</summary>
    public const double Width = 354;

    /// <summary>Its height.</summary>
    public const double Height = 210;

    /// <summary>Size of numbers.</summary>
    public const double Text = 13;

    private const double Left = 58; // room for six digits
    private const double Right = 10;
    private const double Top = 12;
    private const double Bottom = 24;
    private const double NumberRoom = 62;
    private const double LineRoom = 30;

    /// <summary>A plane on which these values are visible, with some room beyond.</summary>
    public static Plane Of(double fromX, double toX, double fromY, double toY)
    {
        var (x, y) = (Wide(fromX, toX, 0.02), Wide(fromY, toY, 0.08));
        return new(
            new(x.From, x.To, Width - Left - Right),
            new(fromY >= 0 ? Math.Max(0, y.From) : y.From, y.To, Height - Top - Bottom)
        );
    }

    /// <summary>Where a pair of values stands.</summary>
    public Spot At(double x, double y) => new(XOf(x), YOf(y));

    /// <summary>Where a value stands from the left.</summary>
    public double XOf(double x) => Left + X.At(Math.Clamp(x, X.From, X.To));

    /// <summary>Where a value stands from the top.</summary>
    public double YOf(double y) => Height - Bottom - Y.At(Math.Clamp(y, Y.From, Y.To));

    /// <summary>A band between two values, from edge to edge.</summary>
    public Box Band(double low, double high, Ink ink)
    {
        var (top, bottom) = (YOf(Math.Min(high, Y.To)), YOf(Math.Max(low, Y.From)));
        return new(Left, top, Width - Left - Right, Math.Max(0, bottom - top), 0, ink);
    }

    /// <summary>A line from edge to edge at a value.</summary>
    public Line Across(double y, Ink ink, double width) => new(Left, YOf(y), Width - Right, YOf(y), ink, width);

    /// <summary>A line from top to bottom at a value.</summary>
    public Line Upright(double x, Ink ink, double width, bool dashed = false) =>
        new(XOf(x), Top, XOf(x), Height - Bottom, ink, width, dashed);

    /// <summary>A straight piece between two pairs of values.</summary>
    public Line Piece(double x1, double y1, double x2, double y2, Ink ink, double width, bool dashed = false) =>
        new(XOf(x1), YOf(y1), XOf(x2), YOf(y2), ink, width, dashed);

    /// <summary>The frame, drawn last.</summary>
    public Box Frame => new(Left, Top, Width - Left - Right, Height - Top - Bottom, 0, null, Ink.Steel, 1);

    /// <summary>Numbers along the left edge, with their ticks.</summary>
    public IEnumerable<Shape> Uprights()
    {
        foreach (var value in Y.Ticks(Y.Step(LineRoom)))
        {
            yield return new Line(Left - 4, YOf(value), Left, YOf(value), Ink.Soft, 1);
            var text = Spoken.Of(value);
            yield return new Words(
                Left - 6 - Words.RoomFor(text, Text) / 2,
                YOf(value) + Text * 0.36,
                text,
                Text,
                Ink.Soft
            );
        }
    }

    /// <summary>Numbers along the lower edge.</summary>
    public IEnumerable<Shape> Acrosses(string unit)
    {
        var free = Width - Right - Words.RoomFor(unit, Text);
        foreach (var value in X.Ticks(X.Step(NumberRoom)))
        foreach (var shape in Tick(value, Spoken.Of(value), free))
            yield return shape;
        if (unit.Length > 0)
            yield return new Words(free, Height - 5, Sentence.Of(unit), Text, Ink.Soft, Centred: false);
    }

    /// <summary>A tick with its words, unless they would stand beyond the edge or a place that is taken.</summary>
    public IEnumerable<Shape> Tick(double x, Sentence text, double free = Width)
    {
        yield return new Line(XOf(x), Height - Bottom, XOf(x), Height - Bottom + 4, Ink.Soft, 1);
        var words = new Words(XOf(x), Height - 5, text, Text, Ink.Soft);
        if (words.Left >= 0 && words.Right <= free - 4)
            yield return words;
    }

    private static (double From, double To) Wide(double from, double to, double share)
    {
        if (to - from < 1e-9 * Math.Max(1, Math.Abs(to)))
            (from, to) = (from - Math.Max(0.5, Math.Abs(from) / 10), to + Math.Max(0.5, Math.Abs(to) / 10));
        var margin = share * (to - from);
        return (from - margin, to + margin);
    }
}
