using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Listening;

/// <summary>What a pitch has to be told before it becomes a reading; nothing of it is guessed.</summary>
public sealed record PitchGiven
{
    /// <summary>Cylinders that fire one after the other.</summary>
    public int? Cylinders { get; init; }

    /// <summary>Whether they fire at even intervals.</summary>
    public bool? Even { get; init; }

    /// <summary>Strokes of a cycle, 4 or 2.</summary>
    public int? Strokes { get; init; }

    /// <summary>From where the belt leaves one pulley to where it meets the other.</summary>
    public Length? FreeSpan { get; init; }

    /// <summary>Mass of the belt for each length.</summary>
    public LinearDensity? Mass { get; init; }

    /// <summary>Whether all is said that this use needs.</summary>
    public bool IsEnoughFor(PitchUse use) =>
        use switch
        {
            PitchUse.EngineSpeed => (Cylinders, Even, Strokes) is ({ }, { }, { }),
            PitchUse.Tension => (FreeSpan, Mass) is ({ }, { }),
            _ => true,
        };

    /// <summary>Revolutions of the crankshaft in one period of the sound.</summary>
    internal double TurnsInPeriod => Strokes!.Value / 2.0 / (Even!.Value ? Cylinders!.Value : 1);
}
