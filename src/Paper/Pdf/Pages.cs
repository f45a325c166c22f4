using PdfSharp.Pdf;

namespace Witnessmark.Paper.Pdf;

/// <summary>Pages filled from the top. Rows stay whole; a heading goes with its first row and stands again on the next page.</summary>
/// <remarks>Rows are placed first and drawn at the end: only then is it known what all pages say, and the file's tags follow the reading order.</remarks>
internal sealed class Pages(PaperSize size, Sentence footer, Tongue tongue)
{
    private const double Top = 34;
    private const double Foot = 42; // the footer stands in it

    /// <summary>Width of the text area, the same on every paper.</summary>
    public const double Width = 527;

    private const double ColumnGap = 12;
    private const double Between = 4; // one thing in a column and the next

    /// <summary>Width of one of two columns.</summary>
    public const double ColumnWidth = (Width - ColumnGap) / 2;

    private readonly List<PlacedRow> placed = [];
    private IReadOnlyList<Cell>[] repeated = [];
    private RowKind kind = RowKind.Text;
    private int page = -1;
    private double y = double.PositiveInfinity;

    private double Bottom => size.Height - Foot;

    /// <summary>What a page holds under a heading that stands on it again.</summary>
    private double Room => Bottom - Top - 60;

    /// <summary>For whom the pages are written.</summary>
    public Tongue Tongue => tongue;

    /// <summary>Leaves room, but not at the top of a page.</summary>
    public void Gap(double height) => y = y <= Top ? y : y + height;

    /// <summary>Begins a part: its heading and columns, kept with the first row, and repeated where the rows go on.</summary>
    public void Begin(Sentence heading, double firstRow, IReadOnlyList<Cell>? columns = null) =>
        Begin(heading, Typeface.Heading, 10, firstRow, columns);

    /// <summary>Begins a part of the part before.</summary>
    public void BeginWithin(Sentence heading, double firstRow) =>
        Begin(heading, Typeface.Subheading, 4, firstRow, null);

    private void Begin(Sentence heading, Typeface face, double gap, double firstRow, IReadOnlyList<Cell>? columns)
    {
        End();
        Gap(gap);
        var title = (IReadOnlyList<Cell>)[Cell.Of(0, Width, (heading, face)).In(tongue)];
        Ask(title.Max(c => c.Height) + (columns is null ? 4 : 22) + firstRow);
        Row(title, face == Typeface.Heading ? 2 : 1, false);
        if (columns is not null)
            Place(columns, 3, true, RowKind.Columns);
        var goingOn = (IReadOnlyList<Cell>)[Cell.Of(0, Width, ($"{heading}, continued", face))];
        repeated = columns is null ? [goingOn] : [goingOn, columns];
        kind = columns is null ? RowKind.Text : RowKind.TableRow;
    }

    /// <summary>Ends the part: nothing is repeated any more.</summary>
    public void End() => (repeated, kind) = ([], RowKind.Text);

    /// <summary>A row of cells, centred on each other, with a line under it.</summary>
    public void Row(IReadOnlyList<Cell> cells, double padding = 4, bool ruled = true)
    {
        cells = [.. cells.Select(c => c.In(tongue))];
        if (HeightOf(cells, padding) > Room)
            InPieces(cells, padding, ruled);
        else
            Place(cells, padding, ruled, kind);
    }

    /// <summary>Things as wide as a column, in two columns, down the left one first.</summary>
    public void InColumns(IReadOnlyList<IReadOnlyList<Cell>> things)
    {
        List<IReadOnlyList<Cell>> left = [.. things.Select(t => t.Select(c => c.In(tongue)).ToList())];
        while (left.Count > 0)
        {
            double[] heights = [.. left.Select(t => HeightOf(t, 0) + Between)];
            Ask(Math.Min(heights[0], Room));
            var (first, second) = TwoColumns.Of(heights, Bottom - y);
            if (first == 0)
                Row(left[0], 0, false); // taller than a page
            else
                Place([
                    .. Stacked(left.Take(first), 0),
                    .. Stacked(left.Skip(first).Take(second), ColumnWidth + ColumnGap),
                ]);
            left.RemoveRange(0, Math.Max(1, first + second));
        }
    }

    /// <summary>Rows one under the other with a tall cell at their side, kept together under a heading where a page has room for that.</summary>
    public void Beside(Sentence heading, IReadOnlyList<IReadOnlyList<Cell>> rows, Cell tall)
    {
        var set = rows.Select(r => (IReadOnlyList<Cell>)[.. r.Select(c => c.In(tongue))]).ToList();
        var height = Math.Max(set.Sum(r => HeightOf(r, 0) + Between), tall.Height);
        Begin(heading, Math.Min(height, Room));
        if (height > Room)
        {
            foreach (var row in set.Append([tall]))
                Row(row, 0, false);
            return;
        }
        Ask(height);
        Place([.. Stacked(set, 0), (tall, y)]);
    }

    /// <summary>One under the other from where the page is filled to.</summary>
    private IEnumerable<(Cell Cell, double Top)> Stacked(IEnumerable<IReadOnlyList<Cell>> rows, double x)
    {
        var at = y;
        foreach (var row in rows)
        {
            foreach (var cell in row)
                yield return (cell with { X = cell.X + x }, at);
            at += HeightOf(row, 0) + Between;
        }
    }

    private void Place(IReadOnlyList<(Cell Cell, double Top)> cells)
    {
        placed.Add(new(page, kind, cells, null));
        y = cells.Max(c => c.Top + c.Cell.Height);
    }

    /// <summary>Height of a row.</summary>
    public double HeightOf(IReadOnlyList<Cell> cells, double padding = 4) =>
        cells.Max(c => c.In(tongue).Height) + 2 * padding;

    /// <summary>Makes sure that so much fits on the page, or begins a new one.</summary>
    public void Ask(double height)
    {
        if (y + height <= Bottom)
            return;
        page++;
        y = Top;
        var again = repeated;
        repeated = [];
        foreach (var row in again)
            Place(row, 3, row.Count > 1, row.Count > 1 ? RowKind.Columns : RowKind.Text);
        repeated = again;
    }

    /// <summary>All that the pages say, in the order in which they say it.</summary>
    public IEnumerable<string> Lines() =>
        Enumerable
            .Range(0, page + 1)
            .SelectMany(n =>
                placed
                    .Where(r => r.Page == n)
                    .SelectMany(r => r.Cells)
                    .SelectMany(c => c.Cell.Said(tongue))
                    .Append(Footer(n))
            );

    /// <summary>Draws the pages into a file.</summary>
    public void Draw(PdfDocument document)
    {
        var drawn = new TaggedPages(document, size, tongue);
        for (var n = 0; n <= page; n++)
            drawn.Draw([.. placed.Where(r => r.Page == n)], Footer(n));
    }

    private string Footer(int n)
    {
        Sentence foot = $"{footer} · page {n + 1} of {page + 1}";
        return foot.In(tongue);
    }

    private void Place(IReadOnlyList<Cell> cells, double padding, bool ruled, RowKind kindOf)
    {
        cells = [.. cells.Select(c => c.In(tongue))];
        var height = HeightOf(cells, padding);
        Ask(height);
        var at = y;
        y += height;
        placed.Add(new(page, kindOf, [.. cells.Select(c => (c, at + (height - c.Height) / 2))], ruled ? y : null));
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
            Place([.. part], padding, ruled && from + piece >= longest, kind);
        }
    }
}
