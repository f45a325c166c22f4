using PdfSharp.Drawing;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Pdf;

/// <summary>A way to set text.</summary>
/// <param name="Size">Of the font, in points.</param>
/// <param name="Bold">Whether bold.</param>
/// <param name="Ink">Its ink.</param>
internal sealed record Typeface(double Size, bool Bold = false, Ink Ink = Ink.Full)
{
    public static readonly Typeface Title = new(20, true);
    public static readonly Typeface Heading = new(11.5, true);
    public static readonly Typeface Subheading = new(9.5, true);
    public static readonly Typeface Body = new(9);
    public static readonly Typeface Strong = new(9, true);
    public static readonly Typeface Aside = new(8, false, Ink.Soft);

    /// <summary>The font itself.</summary>
    public XFont Font { get; } = SheetFonts.Of(Size, Bold);

    /// <summary>From one line to the next.</summary>
    public double Leading => Size * 1.23;
}
