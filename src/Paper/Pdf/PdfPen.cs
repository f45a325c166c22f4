using PdfSharp.Drawing;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Pdf;

/// <summary>Draws on a PDF page in black ink and its greys.</summary>
internal static class PdfPen
{
    /// <summary>Puts a drawing on the page.</summary>
    /// <param name="page">The page.</param>
    /// <param name="drawing">What to draw.</param>
    /// <param name="tongue">The language of its words.</param>
    /// <param name="x">Left edge, in points.</param>
    /// <param name="y">Upper edge, in points.</param>
    /// <param name="scale">Points in one unit of the drawing.</param>
    public static void Draw(XGraphics page, Drawing drawing, Tongue tongue, double x, double y, double scale)
    {
        var before = page.Save();
        page.TranslateTransform(x, y);
        page.ScaleTransform(scale);
        foreach (var shape in drawing.Shapes)
            Draw(page, shape, tongue);
        page.Restore(before);
    }

    /// <summary>The grey of an ink.</summary>
    public static XColor Grey(Ink ink, double opacity = 1)
    {
        var level = ink switch
        {
            Ink.Full or Ink.Mark or Ink.Outside => 20,
            Ink.Unproven => 60,
            Ink.Soft => 85,
            Ink.Steel => 195,
            Ink.SteelLight => 226,
            Ink.Card => 255,
            _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "An ink without a grey."),
        };
        return XColor.FromArgb((int)Math.Round(opacity * 255), level, level, level);
    }

    private static void Draw(XGraphics page, Shape shape, Tongue tongue)
    {
        switch (shape)
        {
            case Line l:
                page.DrawLine(Pen(l.Ink, l.Width, l.Dashed), l.X1, l.Y1, l.X2, l.Y2);
                break;
            case Box b:
                var (edge, fill) = (b.Edge is { } e ? Pen(e, b.EdgeWidth) : null, Brush(b.Fill, b.Opacity));
                page.DrawRoundedRectangle(edge, fill, b.X, b.Y, b.Width, b.Height, 2 * b.Radius, 2 * b.Radius);
                break;
            case Disc d:
                var ring = d.Edge is { } r ? Pen(r, d.EdgeWidth) : null;
                page.DrawEllipse(ring, Brush(d.Fill), d.X - d.Radius, d.Y - d.Radius, 2 * d.Radius, 2 * d.Radius);
                break;
            case Patch p:
                page.DrawPolygon(Brush(p.Fill)!, [.. p.Corners.Select(Point)], XFillMode.Winding);
                break;
            case Loop l:
                page.DrawPolygon(Pen(l.Edge, l.EdgeWidth), [.. l.Corners.Select(Point)]);
                break;
            case Words w:
                var at = new XPoint(w.X, w.Y);
                page.DrawString(
                    Printable.Of(w.Text.In(tongue)),
                    SheetFonts.Of(w.Size, w.Bold),
                    Brush(w.Ink)!,
                    at,
                    w.Centred ? Middle : Start
                );
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(shape), shape, "A shape without a PDF form.");
        }
    }

    private static XStringFormat Middle => XStringFormats.BaseLineCenter;

    private static XStringFormat Start => XStringFormats.BaseLineLeft;

    private static XPoint Point(Spot spot) => new(spot.X, spot.Y);

    private static XSolidBrush? Brush(Ink? ink, double opacity = 1) =>
        ink is { } i ? new XSolidBrush(Grey(i, opacity)) : null;

    private static XPen Pen(Ink ink, double width, bool dashed = false) =>
        dashed
            ? new XPen(Grey(ink), width) { DashStyle = XDashStyle.Custom, DashPattern = [2, 1.6] }
            : new XPen(Grey(ink), width);
}
