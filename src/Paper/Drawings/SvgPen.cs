using System.Globalization;
using System.Security;
using System.Text;

namespace Witnessmark.Paper.Drawings;

/// <summary>Draws as SVG. Colours are custom properties of the page, so that light and dark are the page's choice.</summary>
public static class SvgPen
{
    /// <summary>The drawing as one <c>svg</c> element without ids, so that any number of them fit into one page.</summary>
    public static string Draw(Drawing drawing, Tongue? tongue = null)
    {
        var said = tongue ?? Tongue.English;
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {N(drawing.Width)} {N(drawing.Height)}\" role=\"img\" aria-label=\"{Escaped(drawing.Label.In(said))}\">"
        );
        for (var at = 0; at < drawing.Shapes.Count; )
            if (drawing.Shapes[at] is Line pen)
                at += Lines(svg, drawing.Shapes, pen, at);
            else
                svg.Append(Element(drawing.Shapes[at++], said));
        return svg.Append("</svg>").ToString();
    }

    /// <summary>The lines of one pen that follow each other, as one path, and how many they are: a rule has fifty ticks, and each element costs a phone time.</summary>
    private static int Lines(StringBuilder svg, IReadOnlyList<Shape> shapes, Line pen, int from)
    {
        svg.Append("<path d=\"");
        var to = from;
        for (; to < shapes.Count && shapes[to] is Line l && HasPen(l, pen); to++)
            svg.Append('M')
                .Append(N(l.X1))
                .Append(' ')
                .Append(N(l.Y1))
                .Append('L')
                .Append(N(l.X2))
                .Append(' ')
                .Append(N(l.Y2));
        svg.Append(
            CultureInfo.InvariantCulture,
            $"\" stroke=\"{Colour(pen.Ink)}\" stroke-width=\"{N(pen.Width)}\"{(pen.Dashed ? " stroke-dasharray=\"3 2.5\"" : "")}/>"
        );
        return to - from;
    }

    private static bool HasPen(Line line, Line pen) =>
        line.Ink == pen.Ink && line.Width == pen.Width && line.Dashed == pen.Dashed;

    private static string Element(Shape shape, Tongue tongue) =>
        shape switch
        {
            Box b =>
                $"<rect x=\"{N(b.X)}\" y=\"{N(b.Y)}\" width=\"{N(b.Width)}\" height=\"{N(b.Height)}\" rx=\"{N(b.Radius)}\" {Painted(b.Fill, b.Edge, b.EdgeWidth)}{(b.Opacity < 1 ? $" opacity=\"{N(b.Opacity)}\"" : "")}/>",
            Disc d =>
                $"<circle cx=\"{N(d.X)}\" cy=\"{N(d.Y)}\" r=\"{N(d.Radius)}\" {Painted(d.Fill, d.Edge, d.EdgeWidth)}/>",
            Patch p => $"<path d=\"{Closed(p.Corners)}\" fill=\"{Colour(p.Fill)}\"/>",
            Loop l => $"<path d=\"{Closed(l.Corners)}\" {Painted(null, l.Edge, l.EdgeWidth)}/>",
            Words w =>
                $"<text x=\"{N(w.X)}\" y=\"{N(w.Y)}\" font-size=\"{N(w.Size)}\"{(w.Bold ? " font-weight=\"700\"" : "")}{(w.Centred ? " text-anchor=\"middle\"" : "")} fill=\"{Colour(w.Ink)}\">{Escaped(w.Text.In(tongue))}</text>",
            _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "A shape without an SVG form."),
        };

    private static string Painted(Ink? fill, Ink? edge, double width) =>
        $"fill=\"{(fill is { } f ? Colour(f) : "none")}\""
        + (edge is { } e ? $" stroke=\"{Colour(e)}\" stroke-width=\"{N(width)}\"" : "");

    private static string Closed(IReadOnlyList<Spot> corners) =>
        "M" + string.Join('L', corners.Select(c => $"{N(c.X)} {N(c.Y)}")) + "Z";

    private static string Colour(Ink ink) =>
        ink switch
        {
            Ink.Full => "var(--ink,#1d2226)",
            Ink.Soft => "var(--soft,#5b646b)",
            Ink.Steel => "var(--steel,#c9ced2)",
            Ink.SteelLight => "var(--steel2,#e4e7e9)",
            Ink.Card => "var(--card,#fff)",
            Ink.Mark => "var(--ok,#1f5f5b)",
            Ink.Outside => "var(--out,#b3261e)",
            Ink.Unproven => "var(--unsure,#5b4b8a)",
            _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "An ink without a colour."),
        };

    // hundredths as a whole number: a rule has hundreds of numbers, and a browser interprets what formats a floating one
    private static string N(double value)
    {
        if (!(Math.Abs(value) < 1e6))
            return Math.Round(value, 2).ToString("0.##", CultureInfo.InvariantCulture);
        var (whole, part) = Math.DivRem((int)Math.Round(Math.Abs(value) * 100), 100);
        var sign = value < 0 && (whole | part) != 0 ? "-" : "";
        var text = sign + whole.ToString(CultureInfo.InvariantCulture);
        var (tenth, hundredth) = ((char)('0' + part / 10), (char)('0' + part % 10));
        return part == 0 ? text
            : hundredth == '0' ? $"{text}.{tenth}"
            : $"{text}.{tenth}{hundredth}";
    }

    // XML 1.0 cannot hold control characters, not even escaped.
    private static string Escaped(string text) =>
        SecurityElement.Escape(text.All(IsWritten) ? text : string.Concat(text.Where(IsWritten)))!;

    private static bool IsWritten(char c) => c >= ' ' && !char.IsSurrogate(c) && c < '\uFFFE';
}
