using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;

namespace Witnessmark.Paper.Drawings;

/// <summary>What the round rule shows: readings round something that turns, all in one unit.</summary>
/// <param name="Label">In one sentence.</param>
/// <param name="Values">At equal angles, clockwise from the top.</param>
/// <param name="BandFrom">Inner ring of the band.</param>
/// <param name="BandTo">Outer ring of the band.</param>
/// <param name="Least">Name of the place with the smallest reading and its value.</param>
/// <param name="Most">Name of the place with the largest reading and its value.</param>
public sealed record RoundView(
    Sentence Label,
    IReadOnlyList<double> Values,
    double BandFrom,
    double BandTo,
    Sentence Least,
    Sentence Most
)
{
    /// <summary>The round rule of a point; null where nothing is read round it, or fewer than three readings stand.</summary>
    public static RoundView? Of(PointState state)
    {
        if (state.Point.Reading.Kind is not ReadingKind.Round || state.Current is not { } now)
            return null;
        var values = now.Opinion.Series;
        if (values.Count < 3 || values.Any(v => !(Math.Abs(v) <= RuleView.Reach)))
            return null;
        var unit = now.Opinion.Unit?.Symbol ?? "";
        var (from, to) = Band(values, now.Opinion.Limit?.Max);
        return new(
            LabelOf(state, now, unit),
            values,
            from,
            to,
            $"least {Spoken.With(values.Min(), unit)}{Place(state.Point, now, values.IndexOfMin())}",
            $"most {Spoken.With(values.Max(), unit)}{Place(state.Point, now, values.IndexOfMax())}"
        );
    }

    /// <summary>What the readings may spread over lies evenly about their middle: all within the rings means the spread is permitted.</summary>
    private static (double, double) Band(IReadOnlyList<double> values, double? spread)
    {
        var middle = (values.Min() + values.Max()) / 2;
        var half = (spread ?? values.Max() - values.Min()) / 2;
        return (middle - half, middle + half);
    }

    private static Sentence LabelOf(PointState state, ReadingTaken now, string unit)
    {
        Sentence limit = now.Opinion.Limit is { } l ? (Sentence)$", limit {Spoken.Of(l, unit)}" : Sentence.Empty;
        return $"{state.Point.Title} {now.Opinion.Shown}{limit}, {Spoken.Of(now.Opinion.Verdict)}, {now.Opinion.Series.Count} readings round";
    }

    private static Sentence Place(Point point, ReadingTaken reading, int index)
    {
        if (index < reading.Places.Count)
            return $", {reading.Places[index]}";
        var step = (point.Reading.Step ?? "").Split(' ', 2);
        var counted = double.TryParse(step[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var each);
        return counted && step.Length == 2
            ? (Sentence)$", {Spoken.Of(index * each)} {Counted(point.Reading.Step!)} on"
            : (Sentence)$", reading {index + 1} of {reading.Opinion.Series.Count}";
    }

    // the book says "9 links": what is counted, in the reader's language
    private static Sentence Counted(string step) => Sentence.Of(step).Written(said => said.Split(' ', 2)[^1]);
}

internal static class Extremes
{
    public static int IndexOfMin(this IReadOnlyList<double> values) =>
        Enumerable.Range(0, values.Count).MinBy(i => values[i]);

    public static int IndexOfMax(this IReadOnlyList<double> values) =>
        Enumerable.Range(0, values.Count).MaxBy(i => values[i]);
}
