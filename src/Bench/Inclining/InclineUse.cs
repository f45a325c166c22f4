using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Inclining;

/// <summary>What an inclination is for at a point.</summary>
public enum InclineUse
{
    /// <summary>Whether the machine stands upright while a level is read.</summary>
    Lean,

    /// <summary>How far a lamp points down, as the reading.</summary>
    Aim,
}

/// <summary>At which points an inclination helps.</summary>
public static class InclineUses
{
    /// <summary>The use at a point, from the calculation that the book names there; null where there is none.</summary>
    public static InclineUse? Of(Point point) =>
        (point.Calculation, point.Reading.Kind, point.Reading.Unit?.Dimension) switch
        {
            ("oil-tilt", ReadingKind.Level or ReadingKind.Seen, _) => InclineUse.Lean,
            ("headlamp-aim", ReadingKind.Value, Dimension.Number) => InclineUse.Aim,
            _ => null,
        };
}
