using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.Wear;

namespace Witnessmark.Bench.Planning;

/// <summary>
/// Points whose wear forecast reaches the limit before the next visit with more than the set probability. Whatever has a least
/// thickness or depth wears: pads, discs, tread.
/// </summary>
internal static class WearReasons
{
    private const double Kilometre = 1e6; // mm
    private const double DaysInMonth = 365.25 / 12;

    public static IEnumerable<(string Point, Reason Reason)> Of(BenchBook book, PlanQuestion asked)
    {
        var distance = DistanceToday.Of(asked);
        if (distance.Kilometres is not { } now)
            yield break;
        var ahead = Ahead(asked.Settings, distance.PerDay);
        foreach (var point in book.Points.Values)
            if (
                Limit(point, asked.Sheet) is { } limit
                && WearSeries.Of(point.Id, asked) is { Parts.Count: > 0 } series
                && series.Parts[^1].Km <= now
                && Probability(series, limit, now, ahead, asked) is { } probability
                && probability > asked.Settings.WearProbability
            )
                yield return (point.Id, new(Because.Wear, InWords(probability, ahead, series.Parts.Count)));
    }

    private static Length? Limit(Point point, FigureSheet sheet) =>
        point is { JudgedBy: { } key, Reading.IsJudgedByNumber: true }
        && sheet.Figures.GetValueOrDefault(key) is { Kind: FigureKind.Min, Unit.Dimension: Dimension.Length } figure
            ? new Length(figure.Unit.ToBase(figure.Min!.Value))
            : null;

    /// <summary>As far as the shop lets a machine go until its next visit, by distance or by time, whichever comes first.</summary>
    private static double Ahead(PlanSettings settings, double perDay) =>
        perDay > 0
            ? Math.Min(settings.NextKilometres, settings.NextMonths * DaysInMonth * perDay)
            : settings.NextKilometres;

    private static double? Probability(WearSeries series, Length limit, double now, double ahead, PlanQuestion asked)
    {
        if (series.Prior(asked) is not { } fleet)
            return null;
        var from = series.Parts[0].Km;
        var answer = WearForecast.For(
            [.. series.Parts.Select(p => new WearReading(new((p.Km - from) * Kilometre), p.Value))],
            series.Deviation,
            fleet,
            new(limit, new((now - from) * Kilometre), new((now - from + ahead) * Kilometre))
        );
        // without an upper bound the readings cannot tell wear from none: no forecast is asked for then
        return answer.Holds ? answer.Certain.ByNextService : null;
    }

    private static Sentence InWords(double probability, double ahead, int readings) =>
        $"By its wear ({readings} readings) it reaches its limit within the next {Numerals.With(ahead, UnitTable.Named("km"), 0)} with a probability of {Numerals.Plain(100 * probability, 0)} %.";
}
