using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Visits;

/// <summary>Days and distances of a forecast as people say them: no finer than it is.</summary>
internal static class VisitWords
{
    private const double MillimetresInKilometre = 1e6;

    public static Sentence Day(DateOnly? day) =>
        day is { } known ? Sentence.Day(DayForm.Figures, known) : (Sentence)$"a day unknown";

    public static Sentence Month(DateOnly day) => Sentence.Day(DayForm.Month, day);

    /// <summary>Two figures: <c>6700 km</c>.</summary>
    public static Sentence Rough(Length distance) => $"{TwoFigures(distance):0} km";

    private static double TwoFigures(Length distance)
    {
        var kilometres = distance.Millimetres / MillimetresInKilometre;
        if (kilometres < 10)
            return Math.Round(kilometres);
        var step = Math.Pow(10, Math.Floor(Math.Log10(kilometres)) - 1);
        return Math.Round(kilometres / step) * step;
    }
}
