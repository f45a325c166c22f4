using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Visits;

/// <summary>Days and distances of a forecast as people say them: no finer than it is.</summary>
internal static class VisitWords
{
    private static readonly Unit Kilometre = UnitTable.Named("km");

    public static Sentence Day(DateOnly? day) =>
        day is { } known ? Sentence.Day(DayForm.Figures, known) : (Sentence)$"a day unknown";

    public static Sentence Month(DateOnly day) => Sentence.Day(DayForm.Month, day);

    /// <summary>Two figures: <c>6700 km</c>.</summary>
    public static Sentence Rough(Length distance) =>
        InUnits.Of(RoughIn(Kilometre, distance), Kilometre, other => RoughIn(other, distance));

    private static Sentence RoughIn(Unit unit, Length distance) =>
        $"{TwoFigures(unit.FromBase(distance.Millimetres)):0} {unit}";

    private static double TwoFigures(double distance)
    {
        if (distance < 10)
            return Math.Round(distance);
        var step = Math.Pow(10, Math.Floor(Math.Log10(distance)) - 1);
        return Math.Round(distance / step) * step;
    }
}
