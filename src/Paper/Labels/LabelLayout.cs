using Witnessmark.Handbook;
using Witnessmark.Paper.Pdf;

namespace Witnessmark.Paper.Labels;

/// <summary>The lines of a label in the largest letters that leave nothing out.</summary>
internal static class LabelLayout
{
    /// <summary>Smaller letters are not printed: 6 points, which small print usually does not go below; from memory, no source.</summary>
    public const double LeastSize = 6;

    private const double Largest = 1.6;
    private const double Step = 0.05;
    private const int MostLetters = 1000;

    /// <summary>The text set to a width and height in points, or why it has no room.</summary>
    /// <returns>Refused as <c>no-room</c>.</returns>
    public static Answer<Cell> Of(
        IReadOnlyList<(string Text, LabelFace Face)> lines,
        double x,
        double width,
        double height,
        LabelSize size
    )
    {
        // A novel has no room in large letters: its search begins where it ends.
        var first = lines.Sum(l => l.Text.Length) > MostLetters ? LeastSize / Faces.Max(f => f.Size) : Largest;
        for (var scale = first; ; scale -= Step)
        {
            var least = Faces.All(f => f.Size * scale <= LeastSize);
            var cell = Cell.Set(x, width, lines.Select(l => ((string?)l.Text, Face(l.Face, scale))));
            // At the least size a word that is too long for its line goes on in the next one: nothing is lost.
            if (cell.Height <= height && (least || lines.All(l => Whole(l.Text, Face(l.Face, scale), width))))
                return cell;
            if (least)
                return Answer<Cell>.Refuse(
                    "no-room",
                    $"The label {size.Name} ({size.Width:0.#} mm × {size.Height:0.#} mm) has no room for its text at {LeastSize:0} pt, the least that is printed: {Millimetres(cell.Height)} mm high, {Millimetres(height)} mm are there. Take a larger one of {LabelSize.Names}."
                );
        }
    }

    private static readonly (LabelFace Face, double Size, bool Bold)[] Faces =
    [
        (LabelFace.Title, 11, true),
        (LabelFace.Strong, 10, true),
        (LabelFace.Body, 8, false),
        (LabelFace.Aside, 7, false),
    ];

    private static Typeface Face(LabelFace face, double scale)
    {
        var (_, size, bold) = Faces.First(f => f.Face == face);
        return new(Math.Max(LeastSize, size * scale), bold);
    }

    private static bool Whole(string text, Typeface face, double width) =>
        Printable.Of(text).Split(' ').All(word => Cell.WidthOf(word, face) <= width);

    private static string Millimetres(double points) =>
        (points / 72 * 25.4).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture);
}
