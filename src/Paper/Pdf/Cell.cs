using PdfSharp.Drawing;
using Witnessmark.Paper.Drawings;

namespace Witnessmark.Paper.Pdf;

/// <summary>One line of text.</summary>
/// <param name="Text">The line, or what is left of it after the words before.</param>
/// <param name="Face">How it is set.</param>
/// <param name="Before">Words in another face that the line begins with, or null.</param>
internal sealed record TextLine(string Text, Typeface Face, TextLine? Before = null)
{
    /// <summary>All that the line says.</summary>
    public string Whole => Before is null ? Text : $"{Before.Text} {Text}";

    /// <summary>From this line to the next.</summary>
    public double Leading => Math.Max(Face.Leading, Before?.Face.Leading ?? 0);
}

/// <summary>One column of a row: lines of text, a drawing, or a picture.</summary>
/// <param name="X">From the left edge of the text area.</param>
/// <param name="Width">Its lines are broken to this.</param>
/// <param name="Lines">Broken lines.</param>
/// <param name="Drawing">A drawing instead, or null.</param>
/// <param name="Scale">Points in one unit of the drawing, or in one pixel of the picture.</param>
/// <param name="Picture">A picture instead, or null.</param>
/// <remarks>It is made of sentences, and becomes lines when the pages say in which language: <see cref="In"/>.</remarks>
internal sealed record Cell(
    double X,
    double Width,
    IReadOnlyList<TextLine> Lines,
    Drawing? Drawing = null,
    double Scale = 1,
    XImage? Picture = null
)
{
    private Func<Tongue, Cell>? Waiting { get; init; }

    private const double TallestPicture = 111;

    private const char Glue = '\u00A0'; // on paper an ordinary space

    public double Height =>
        Drawing is { } d ? d.Height * Scale
        : Picture is { } p ? p.PixelHeight * Scale
        : Lines.Sum(l => l.Leading);

    /// <summary>What it says in letters, in the order in which they are drawn.</summary>
    public IEnumerable<string> Said(Tongue tongue) =>
        Drawing is { } d
            ? d.Shapes.OfType<Words>().Select(w => Printable.Of(w.Text.In(tongue)))
            : Lines.Select(l => l.Whole);

    /// <summary>The cell in a language, its text broken to the width.</summary>
    public Cell In(Tongue tongue) => Waiting is null ? this : Waiting(tongue);

    /// <summary>Text, to be broken to the width; empty texts are left out.</summary>
    public static Cell Of(double x, double width, params (Sentence? Text, Typeface Face)[] texts) =>
        Later(x, width, t => Set(x, width, texts.Select(a => (a.Text?.In(t), a.Face))));

    /// <summary>Text in one language, broken to the width; empty texts are left out.</summary>
    public static Cell Set(double x, double width, IEnumerable<(string? Text, Typeface Face)> texts) =>
        new(
            x,
            width,
            [
                .. texts
                    .Where(t => !string.IsNullOrWhiteSpace(t.Text))
                    .SelectMany(t => Broken(Printable.Of(t.Text!), t.Face, width)),
            ]
        );

    /// <summary>A name, in the same line what is said of it, and under both what else is.</summary>
    public static Cell RunIn(
        double x,
        double width,
        (Sentence Text, Typeface Face) name,
        (Sentence Text, Typeface Face) said,
        params (Sentence? Text, Typeface Face)[] under
    ) =>
        Later(
            x,
            width,
            tongue =>
                new(
                    x,
                    width,
                    [
                        .. RunIn(
                            Set(x, width, [(name.Text.In(tongue), name.Face)]).Lines,
                            Printable.Of(said.Text.In(tongue)),
                            said.Face,
                            width
                        ),
                        .. Of(x, width, under).In(tongue).Lines,
                    ]
                )
        );

    /// <summary>Lines, with a text that begins in the last of them.</summary>
    private static IEnumerable<TextLine> RunIn(IReadOnlyList<TextLine> lines, string text, Typeface face, double width)
    {
        if (lines.Count == 0 || text.Length == 0)
            return lines;
        var taken = WidthOf($"{lines[^1].Text} ", lines[^1].Face);
        var broken = Broken(text, face, width, taken).ToList();
        return broken[0].Text.Length == 0
            ? [.. lines, .. broken.Skip(1)]
            : [.. lines.SkipLast(1), broken[0] with { Before = lines[^1] }, .. broken.Skip(1)];
    }

    /// <summary>A cell that is set when its language is known.</summary>
    public static Cell Later(double x, double width, Func<Tongue, Cell> set) => new(x, width, []) { Waiting = set };

    /// <summary>A drawing as wide as the column.</summary>
    public static Cell Of(double x, double width, Drawing drawing) => new(x, width, [], drawing, width / drawing.Width);

    /// <summary>One line of text that ends at the right edge of its column: numbers under numbers.</summary>
    public static Cell AtRight(double right, Sentence text, Typeface face) =>
        Later(
            right,
            0,
            tongue =>
            {
                var shown = Printable.Of(text.In(tongue));
                var width = WidthOf(shown, face);
                return new(right - width, width, shown.Length == 0 ? [] : [new(shown, face)]);
            }
        );

    /// <summary>A picture, as wide as the column or as tall as a picture may be.</summary>
    public static Cell Of(double x, double width, XImage picture) =>
        new(
            x,
            width,
            [],
            Scale: Math.Min(width / picture.PixelWidth, TallestPicture / picture.PixelHeight),
            Picture: picture
        );

    /// <summary>The text line by line; the first is as much shorter as is taken already, and empty where no word fits into it.</summary>
    private static IEnumerable<TextLine> Broken(string text, Typeface face, double width, double taken = 0)
    {
        var line = "";
        var free = width - taken;
        foreach (
            var word in text.Split([' ', '\n', '\r', '\t'], StringSplitOptions.RemoveEmptyEntries)
                .SelectMany(w => Pieces(w, face, width))
        )
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if ((line.Length == 0 && free == width) || WidthOf(longer, face) <= free)
            {
                line = longer;
                continue;
            }
            yield return new(Plain(line), face);
            (line, free) = (word, width);
        }
        if (line.Length > 0)
            yield return new(Plain(line), face);
    }

    /// <summary>A text that is kept in one line where it fits: a number with its unit. What stands in brackets may have the next line.</summary>
    public static Sentence Whole(Sentence text) =>
        text.Written(said => said.Replace(' ', Glue).Replace($"{Glue}(", " ("));

    private static string Plain(string line) => line.Replace(Glue, ' ');

    /// <summary>A word that is wider than the column is cut where it must be, so that nothing is lost.</summary>
    private static IEnumerable<string> Pieces(string word, Typeface face, double width)
    {
        if (word.Contains(Glue) && WidthOf(word, face) > width)
        {
            foreach (var piece in word.Split(Glue).SelectMany(w => Pieces(w, face, width)))
                yield return piece;
            yield break;
        }
        while (word.Length > 1 && WidthOf(word, face) > width)
        {
            var fits = 1;
            while (WidthOf(word[..(fits + 1)], face) <= width)
                fits++;
            yield return word[..fits];
            word = word[fits..];
        }
        yield return word;
    }

    internal static double WidthOf(string text, Typeface face) => Measure.MeasureString(text, face.Font).Width;

    private static XGraphics Measure =>
        field ??= XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Point, XPageDirection.Downwards);
}
