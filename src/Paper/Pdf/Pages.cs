using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Pdf;

/// <summary>A4 pages filled from the top. Rows stay whole; a heading goes with its first row and stands again on the next page.</summary>
internal sealed class Pages(PdfDocument document, string footer)
{
    private const double Left = 40;
    private const double Top = 38;
    private const double Bottom = 842 - 46; // A4 is 842 points high; the footer stands below

    /// <summary>Width of the text area.</summary>
    public const double Width = 595 - 2 * Left;

    private readonly List<XGraphics> pages = [];
    private IReadOnlyList<Cell>[] repeated = [];
    private double y = double.PositiveInfinity;

    /// <summary>Leaves room, but not at the top of a page.</summary>
    public void Gap(double height) => y = y <= Top ? y : y + height;

    /// <summary>Begins a part: its heading and columns, kept with the first row, and repeated where the rows go on.</summary>
    public void Begin(string heading, double firstRow, IReadOnlyList<Cell>? columns = null)
    {
        repeated = [];
        Gap(13);
        var title = (IReadOnlyList<Cell>)[Cell.Of(0, Width, (heading, Typeface.Heading))];
        Ask(title.Max(c => c.Height) + 22 + firstRow);
        Row(title, 2, false);
        if (columns is not null)
            Row(columns, 3);
        repeated = columns is null
            ?
            [
                [Cell.Of(0, Width, ($"{heading}, continued", Typeface.Heading))],
            ]
            :
            [
                [Cell.Of(0, Width, ($"{heading}, continued", Typeface.Heading))],
                columns,
            ];
    }

    /// <summary>Ends the part: nothing is repeated any more.</summary>
    public void End() => repeated = [];

    /// <summary>A row of cells, centred on each other, with a line under it.</summary>
    public void Row(IReadOnlyList<Cell> cells, double padding = 4, bool ruled = true)
    {
        var height = HeightOf(cells, padding);
        if (height > Bottom - Top - 60)
        {
            InPieces(cells, padding, ruled);
            return;
        }
        Ask(height);
        foreach (var cell in cells)
            Draw(cell, y + (height - cell.Height) / 2);
        y += height;
        if (ruled)
            pages[^1].DrawLine(new XPen(PdfPen.Grey(Ink.Steel), 0.5), Left, y, Left + Width, y);
    }

    /// <summary>Height of a row.</summary>
    public static double HeightOf(IReadOnlyList<Cell> cells, double padding = 4) =>
        cells.Max(c => c.Height) + 2 * padding;

    /// <summary>Makes sure that so much fits on the page, or begins a new one.</summary>
    public void Ask(double height)
    {
        if (y + height <= Bottom)
            return;
        pages.Add(XGraphics.FromPdfPage(document.AddPage(new PdfPage { Size = PdfSharp.PageSize.A4 })));
        y = Top;
        var again = repeated;
        repeated = [];
        foreach (var row in again)
            Row(row, 3, row.Count > 1);
        repeated = again;
    }

    /// <summary>Writes the footers and closes the pages.</summary>
    public void Close()
    {
        for (var i = 0; i < pages.Count; i++)
        {
            var number = string.Create(CultureInfo.InvariantCulture, $"{footer} · page {i + 1} of {pages.Count}");
            var cell = Cell.Of(0, Width, (number, new Typeface(7.5, false, Ink.Soft)));
            Text(pages[i], cell.Lines.Take(1), Left, 842 - 34);
            pages[i].Dispose();
        }
    }

    /// <summary>A row taller than a page flows over as many as it needs, line by line.</summary>
    private void InPieces(IReadOnlyList<Cell> cells, double padding, bool ruled)
    {
        const int piece = 12;
        var longest = cells.Max(c => c.Lines.Count);
        for (var from = 0; from < longest; from += piece)
        {
            var start = from;
            var part = cells.Select(c =>
                c with
                {
                    Lines = [.. c.Lines.Skip(start).Take(piece)],
                    Drawing = start == 0 ? c.Drawing : null,
                }
            );
            Row([.. part], padding, ruled && from + piece >= longest);
        }
    }

    private void Draw(Cell cell, double top)
    {
        if (cell.Drawing is { } drawing)
            PdfPen.Draw(pages[^1], drawing, Left + cell.X, top, cell.Scale);
        else if (cell.Picture is { } picture)
            pages[^1]
                .DrawImage(
                    picture,
                    Left + cell.X,
                    top,
                    picture.PixelWidth * cell.Scale,
                    picture.PixelHeight * cell.Scale
                );
        else
            Text(pages[^1], cell.Lines, Left + cell.X, top);
    }

    private static void Text(XGraphics page, IEnumerable<TextLine> lines, double x, double top)
    {
        foreach (var line in lines)
        {
            page.DrawString(
                line.Text,
                line.Face.Font,
                new XSolidBrush(PdfPen.Grey(line.Face.Ink)),
                x,
                top + line.Face.Size
            );
            top += line.Face.Leading;
        }
    }
}
