using System.Globalization;
using System.Text;
using Witnessmark.Handbook;

namespace Witnessmark.Bench.Findings;

/// <summary>A point of a stroke, in a field of 300 by 100.</summary>
public readonly record struct StrokePoint(int X, int Y);

/// <summary>A signature drawn with the finger: strokes of straight pieces, as the path data of an SVG drawing.</summary>
/// <remarks>
/// <b>Source.</b> W3C, Scalable Vector Graphics 2, 9.3 Path data, of which only <c>M</c> and <c>L</c> with whole absolute coordinates are
/// read. Strokes are thinned by Douglas and Peucker, Cartographica 10 (1973) 112: a point that lies within the tolerance of the line
/// between its neighbours is left out; the tolerance doubles until the text is short enough.
/// </remarks>
/// <param name="Strokes">Each of two points or more.</param>
public sealed record SignaturePath(IReadOnlyList<IReadOnlyList<StrokePoint>> Strokes)
{
    /// <summary>Width of the field.</summary>
    public const int Width = 300;

    /// <summary>Height of the field.</summary>
    public const int Height = 100;

    /// <summary>The longest text, in bytes.</summary>
    public const int MostBytes = 2048;

    /// <summary>Less than this is no signature but a slip of the finger: the length of all strokes together.</summary>
    public const int ShortestInk = 40;

    private const int CoarsestTolerance = 8;

    /// <summary>The path data: <c>M12 30L14 33L18 40M…</c>.</summary>
    public string Text
    {
        get
        {
            var text = new StringBuilder();
            foreach (var stroke in Strokes)
                for (var i = 0; i < stroke.Count; i++)
                    text.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{stroke[i].X} {stroke[i].Y}");
            return text.ToString();
        }
    }

    /// <summary>Reads path data; refused when it is anything but strokes inside the field, or too long.</summary>
    public static Answer<SignaturePath> Read(string text)
    {
        if (text.Length > MostBytes)
            return Refuse($"it has {text.Length} bytes; at most {MostBytes} are kept");
        if (text.Length == 0 || text[0] != 'M')
            return Refuse($"it does not begin with M");
        List<IReadOnlyList<StrokePoint>> strokes = [];
        foreach (var stroke in text[1..].Split('M'))
        {
            List<StrokePoint> points = [];
            foreach (var pair in stroke.Split('L'))
                if (Point(pair) is { } point)
                    points.Add(point);
                else
                    return Refuse($"\"{pair}\" is no point inside {Width} × {Height}");
            if (points.Count < 2)
                return Refuse($"a stroke of a single point");
            strokes.Add(points);
        }
        return Checked(new(strokes));
    }

    /// <summary>The strokes of a finger, thinned until they fit; refused when there is no signature in them, or too much.</summary>
    public static Answer<SignaturePath> Of(IEnumerable<IReadOnlyList<StrokePoint>> drawn)
    {
        var strokes = drawn.Where(s => s.Count > 1).ToList();
        for (var tolerance = 1; tolerance <= CoarsestTolerance; tolerance *= 2)
        {
            var thinned = new SignaturePath([.. strokes.Select(s => Thinned(s, tolerance))]);
            if (thinned.Text.Length <= MostBytes)
                return Checked(thinned);
        }
        return Refuse($"there are too many strokes in it; sign once more, in fewer");
    }

    /// <inheritdoc/>
    public bool Equals(SignaturePath? other) => other is not null && other.Text == Text;

    /// <inheritdoc/>
    public override int GetHashCode() => Text.GetHashCode(StringComparison.Ordinal);

    private static Answer<SignaturePath> Checked(SignaturePath path) =>
        path.Strokes.Sum(Ink) < ShortestInk ? Refuse($"nothing is signed yet") : path;

    private static long Ink(IReadOnlyList<StrokePoint> stroke) =>
        stroke.Zip(stroke.Skip(1), (a, b) => (long)Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y)).Sum();

    private static StrokePoint? Point(string pair)
    {
        var space = pair.IndexOf(' ');
        return
            space > 0 && Coordinate(pair[..space], Width) is { } x && Coordinate(pair[(space + 1)..], Height) is { } y
            ? new(x, y)
            : null;
    }

    private static int? Coordinate(string text, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value) && value <= most
            ? value
            : null;

    private static IReadOnlyList<StrokePoint> Thinned(IReadOnlyList<StrokePoint> stroke, int tolerance)
    {
        var kept = new bool[stroke.Count];
        kept[0] = kept[^1] = true;
        var open = new Stack<(int From, int To)>([(0, stroke.Count - 1)]);
        while (open.TryPop(out var piece))
        {
            var (far, square) = (0, -1L);
            for (var i = piece.From + 1; i < piece.To; i++)
                if (SquareOff(stroke[i], stroke[piece.From], stroke[piece.To]) is var off && off > square)
                    (far, square) = (i, off);
            if (square <= (long)tolerance * tolerance)
                continue;
            kept[far] = true;
            open.Push((piece.From, far));
            open.Push((far, piece.To));
        }
        return [.. stroke.Where((_, i) => kept[i])];
    }

    /// <summary>Square of the distance of a point from the line through two others, rounded up; from the point itself where the two are one.</summary>
    private static long SquareOff(StrokePoint p, StrokePoint a, StrokePoint b)
    {
        long dx = b.X - a.X,
            dy = b.Y - a.Y,
            px = p.X - a.X,
            py = p.Y - a.Y;
        var square = dx * dx + dy * dy;
        if (square == 0)
            return px * px + py * py;
        var cross = dx * py - dy * px;
        return (cross * cross + square - 1) / square;
    }

    private static Answer<SignaturePath> Refuse(Sentence why) =>
        Answer<SignaturePath>.Refuse("signature", $"The signature cannot be kept: {why}.");
}
