using Witnessmark.Bench.Book;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Listening;

/// <summary>What a pitch becomes at a point.</summary>
public enum PitchUse
{
    /// <summary>The reading itself.</summary>
    Pitch,

    /// <summary>The tension of a belt, from its free span and its mass.</summary>
    Tension,

    /// <summary>The speed of an engine, from its cylinders.</summary>
    EngineSpeed,

    /// <summary>One of several that are compared: spokes.</summary>
    Compare,
}

/// <summary>At which points there is something to hear.</summary>
public static class PitchUses
{
    /// <summary>The use of a pitch at a point, from the calculation that the book names there; null where there is nothing to hear.</summary>
    public static PitchUse? Of(Point point) =>
        (point.Calculation, point.Reading.Kind, point.Reading.Unit?.Dimension) switch
        {
            ("idle-speed", ReadingKind.Value, Dimension.Frequency) => PitchUse.EngineSpeed,
            ("belt-tension", ReadingKind.Value, Dimension.Force) => PitchUse.Tension,
            ("belt-tension" or "tone", ReadingKind.Value, Dimension.Frequency) => PitchUse.Pitch,
            ("belt-tension" or "tone", ReadingKind.Seen, _) => PitchUse.Compare,
            _ => null,
        };
}
