using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Pdf;

/// <summary>Draws placed rows page by page, and tags them: headings, tables, text and pictures in words.</summary>
/// <remarks><b>Source.</b> ISO 32000-1:2008, 14.8 Tagged PDF: structure types H1, H2, H3, P, Table, TR, TH, TD, Figure; anything else is an artifact.</remarks>
internal sealed class TaggedPages
{
    private readonly PdfDocument document;
    private readonly PaperSize size;
    private readonly Tongue tongue;
    private readonly StructureBuilder tags;

    public TaggedPages(PdfDocument document, PaperSize size, Tongue tongue)
    {
        this.tongue = tongue;
        this.document = document;
        this.size = size;
        tags = UAManager.ForDocument(document).StructureBuilder;
    }

    private double Left => (size.Width - Pages.Width) / 2;

    public void Draw(IReadOnlyList<PlacedRow> rows, string footer)
    {
        var page = document.AddPage(
            new PdfPage { Width = XUnitPt.FromPoint(size.Width), Height = XUnitPt.FromPoint(size.Height) }
        );
        using var canvas = XGraphics.FromPdfPage(page);
        var at = 0;
        while (at < rows.Count)
            at = rows[at].Kind is RowKind.Text ? Text(canvas, rows, at) : Table(canvas, rows, at);
        tags.BeginArtifact();
        Write(
            canvas,
            Cell.Set(0, Pages.Width, [(footer, new Typeface(7.5, false, Ink.Soft))]).Lines.Take(1),
            Left,
            size.Height - 31
        );
        tags.End();
    }

    private int Text(XGraphics canvas, IReadOnlyList<PlacedRow> rows, int at)
    {
        foreach (var (cell, top) in rows[at].Cells)
            Put(canvas, cell, top, TagOf);
        Rule(canvas, rows[at]);
        return at + 1;
    }

    /// <summary>The rows up to the next that belongs to no table, as one table.</summary>
    private int Table(XGraphics canvas, IReadOnlyList<PlacedRow> rows, int at)
    {
        tags.BeginElement(PdfBlockLevelElementTag.Table);
        do
        {
            var name =
                rows[at].Kind is RowKind.Columns
                    ? PdfBlockLevelElementTag.TableHeaderCell
                    : PdfBlockLevelElementTag.TableDataCell;
            tags.BeginElement(PdfBlockLevelElementTag.TableRow);
            foreach (var (cell, top) in rows[at].Cells)
            {
                tags.BeginElement(name);
                Put(canvas, cell, top, _ => PdfBlockLevelElementTag.Paragraph);
                tags.End();
            }
            tags.End();
            Rule(canvas, rows[at]);
            at++;
        } while (at < rows.Count && rows[at].Kind is RowKind.TableRow);
        tags.End();
        return at;
    }

    private void Put(XGraphics canvas, Cell cell, double top, Func<Typeface, PdfBlockLevelElementTag> tagOf)
    {
        if (cell.Drawing is { } drawing)
            Picture(canvas, cell, drawing, top);
        if (cell.Picture is { } photograph)
            Photograph(canvas, cell, photograph, top);
        for (var from = 0; from < cell.Lines.Count; )
        {
            var tag = tagOf(cell.Lines[from].Face);
            var run = cell.Lines.Skip(from).TakeWhile(l => tagOf(l.Face) == tag).ToList();
            tags.BeginElement(tag);
            top = Write(canvas, run, Left + cell.X, top);
            tags.End();
            from += run.Count;
        }
    }

    private void Picture(XGraphics canvas, Cell cell, Drawing drawing, double top)
    {
        var box = new XRect(Left + cell.X, top, drawing.Width * cell.Scale, drawing.Height * cell.Scale);
        tags.BeginElement(PdfIllustrationElementTag.Figure, drawing.Label.In(tongue), box);
        PdfPen.Draw(canvas, drawing, tongue, Left + cell.X, top, cell.Scale);
        tags.End();
    }

    private void Photograph(XGraphics canvas, Cell cell, XImage picture, double top)
    {
        var box = new XRect(Left + cell.X, top, picture.PixelWidth * cell.Scale, picture.PixelHeight * cell.Scale);
        tags.BeginElement(
            PdfIllustrationElementTag.Figure,
            ((Sentence)$"Photograph, described beside it").In(tongue),
            box
        );
        canvas.DrawImage(picture, box);
        tags.End();
    }

    private static PdfBlockLevelElementTag TagOf(Typeface face) =>
        face == Typeface.Title ? PdfBlockLevelElementTag.Heading1
        : face == Typeface.Heading ? PdfBlockLevelElementTag.Heading2
        : face == Typeface.Subheading ? PdfBlockLevelElementTag.Heading3
        : PdfBlockLevelElementTag.Paragraph;

    private void Rule(XGraphics canvas, PlacedRow row)
    {
        if (row.Rule is not { } y)
            return;
        tags.BeginArtifact();
        canvas.DrawLine(new XPen(PdfPen.Grey(Ink.Steel), 0.5), Left, y, Left + Pages.Width, y);
        tags.End();
    }

    /// <summary>Draws lines one under the other; each ends with a space, so that read aloud the last word of one is not joined to the next.</summary>
    private static double Write(XGraphics canvas, IEnumerable<TextLine> lines, double x, double top)
    {
        foreach (var line in lines)
        {
            var from = line.Before is { } before ? Write(canvas, before, x, top + before.Face.Size) : x;
            Write(canvas, line, from, top + (line.Before ?? line).Face.Size);
            top += line.Leading;
        }
        return top;
    }

    /// <summary>Draws words on a base line; where the next begin.</summary>
    private static double Write(XGraphics canvas, TextLine words, double x, double baseLine)
    {
        var text = $"{words.Text} ";
        canvas.DrawString(text, words.Face.Font, new XSolidBrush(PdfPen.Grey(words.Face.Ink)), x, baseLine);
        return x + Cell.WidthOf(text, words.Face);
    }
}
