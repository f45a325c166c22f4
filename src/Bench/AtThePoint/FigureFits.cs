using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;

namespace Witnessmark.Bench.AtThePoint;

/// <summary>Whether a figure can judge a point: by what it measures, and by setting a limit.</summary>
internal static class FigureFits
{
    /// <summary>Why it cannot, and what would be right; null when it can.</summary>
    public static (Sentence Found, Sentence Right)? WhyNot(Point point, Figure figure)
    {
        if (point.Reading.JudgedIn is not { } dimension)
            return null;
        if (figure.Unit.Dimension != dimension)
            return (
                $"figure \"{figure.Key}\" is in {figure.Unit}, but point \"{point.Id}\", which it judges, is read in {point.Reading.ReadIn}",
                $"a unit of that kind"
            );
        if (figure.Limit is null && figure.Kind != FigureKind.Torque)
            return (
                $"figure \"{figure.Key}\" is an amount and sets no limit, but point \"{point.Id}\" is judged by it",
                $"range, min, max or target"
            );
        return null;
    }
}
