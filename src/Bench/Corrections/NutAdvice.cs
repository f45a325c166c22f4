using Witnessmark.Bench.Book;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>What tightening the axle nut does to the slack, learnt from readings before and after it.</summary>
internal static class NutAdvice
{
    private static readonly Unit Millimetre = UnitTable.Named("mm");

    /// <summary>The shift, once the nut was tightened between two readings in this job; null before, or when the workshop gives no prior.</summary>
    public static NutShift? Shift(Situation situation, ChainRun run, Length target)
    {
        if (run.NutPairs.Count == 0 || run.Uncertainty is not { } u || Nut(situation) is not { } nut)
            return null;
        if (
            nut.Quantity<Area>("shift-prior-mean") is not { } mean
            || nut.Quantity<Area>("shift-prior-deviation") is not { } deviation
            || nut.Quantity<Area>("job-scatter") is not { } scatter
        )
            return null;
        return AxleNutShift.From([.. run.NutPairs], target, new(mean, deviation), scatter, u).Value;
    }

    public static IReadOnlyList<Sentence> Notes(Situation situation, ChainRun run, Length middle)
    {
        if (Shift(situation, run, middle) is not { SetTo: { } setTo })
            return [];
        var pair = run.NutPairs[^1];
        return
        [
            $"Tightening the axle nut moved the slack from {Numerals.With(pair.Before.Millimetres, Millimetre, 1)} to {Numerals.With(pair.After.Millimetres, Millimetre, 1)}.",
            $"To end at {Numerals.With(middle.Millimetres, Millimetre, 1)} set {Numerals.With(setTo.Millimetres, Millimetre, 1)} before the nut is tightened.",
        ];
    }

    public static IReadOnlyList<Sentence> Working(Situation situation, ChainRun run, Length middle) =>
        Shift(situation, run, middle) is { SetTo: { } setTo, FinalDeviation: { } final } shift
            ?
            [
                $"shift q = {Numerals.Plain(shift.Shift.SquareMillimetres, 0)} ± {Numerals.Plain(shift.ShiftDeviation.SquareMillimetres, 0)} mm², from {Sentence.Count(run.NutPairs.Count, $"1 pair", $"{run.NutPairs.Count} pairs")} and the workshop's prior",
                $"set to √(St² + q) = √({Numerals.Plain(middle.Millimetres, 1)}² {(shift.Shift.SquareMillimetres < 0 ? '−' : '+')} {Numerals.Plain(Math.Abs(shift.Shift.SquareMillimetres), 0)}) = {Numerals.With(setTo.Millimetres, Millimetre, 1)}, ending within ± {Numerals.With(2 * final.Millimetres, Millimetre, 1)}",
                $"q = before² − after²: handbook, axle-nut-shift",
            ]
            : [];

    private static Point? Nut(Situation situation) =>
        situation
            .Point.AgainAfter.Select(id => situation.Book.Points.GetValueOrDefault(id))
            .FirstOrDefault(p => p?.Reading.Kind == ReadingKind.Tighten);
}
