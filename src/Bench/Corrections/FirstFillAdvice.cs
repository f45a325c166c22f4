using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>How much oil to pour first: as much as reaches the target, never so much that it may stand over the high mark.</summary>
internal static class FirstFillAdvice
{
    private static readonly Unit Litre = UnitTable.Named("L");

    public static Advice? Of(Situation situation)
    {
        if (situation.Current is not null)
            return null;
        if (Sump.Of(situation, situation.Point) is not { } sump)
            return Advise.Cannot(
                $"The figure sheet lacks oil capacity, filter volume or the volume between the marks."
            );
        var fill = OilFirstFill.Of(sump.Drained, sump.BetweenMarks, sump.TargetLevel, sump.Risk);
        return new(
            $"To reach {Numerals.Plain(sump.TargetLevel * 100, 0)} % between the marks",
            $"Pour at most {Both(fill.FirstDose)} first",
            [$"Less is fine: run the engine, let it settle, read the dipstick, and the tool gives the rest."],
            true,
            null,
            null,
            [
                $"to the high mark: capacity {Numerals.With(sump.Drained.Capacity.Litres, Litre, 3)} − retained {Numerals.With(sump.Drained.Retained.Litres, Litre)}{OldFilter(sump)} = {Numerals.With(fill.VolumeToHigh.Litres, Litre, 3)}",
                $"dose for the target: {Numerals.With(fill.DoseForTarget.Litres, Litre, 3)}",
                $"first dose, overfilling at most once in {Numerals.Plain(1 / sump.Risk, 0)}: {Numerals.With(fill.FirstDose.Litres, Litre, 3)}",
                $"handbook, oil-first-fill",
            ],
            new(null, null, fill.FirstDose.Litres, null),
            null
        );
    }

    private static Sentence OldFilter(Sump sump) =>
        sump.Drained.FilterReplaced
            ? Sentence.Empty
            : (Sentence)$" − old filter {Numerals.With(sump.Drained.FilterVolume.Litres, Litre, 3)}";

    internal static Sentence Both(Volume volume) =>
        // both are there already, whichever the reader wants
        (
            (Sentence)
                $"{Numerals.With(Down(volume.Litres), Litre)} ({Numerals.With(Down(volume.Litres / UnitTable.Named("US qt").Factor), UnitTable.Named("US qt"))})"
        ).AsWritten();

    // rounding up could overfill
    private static double Down(double value) => Math.Floor(value * 100) / 100;
}
