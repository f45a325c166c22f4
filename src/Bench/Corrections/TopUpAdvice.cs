using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Fluids;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>
/// How much oil to add after a dipstick reading. The reading is joined with what was poured, each weighted by the inverse
/// of its variance, so that a doubtful look at the stick cannot overfill the engine.
/// </summary>
internal static class TopUpAdvice
{
    private static readonly Unit Litre = UnitTable.Named("L");

    public static Advice? Of(Situation situation)
    {
        if (situation.Current is not { Opinion: { Value: { } read, StandardUncertainty: > 0 and { } u } } current)
            return null;
        if (Sump.FillPoint(situation.Book) is not { } fill || Sump.Of(situation, fill) is not { } sump)
            return situation.IsOutside()
                ? Advise.Cannot($"The figure sheet lacks the volume between the marks.")
                : null;
        if (
            situation.Point.Quantity<Volume>("between-marks-deviation") is not { } deviation
            || situation.Point.Number("target-level") is not { } target
            || situation.Point.Number("overfill-risk") is not { } risk
        )
            return Advise.Cannot(
                $"The bench book lacks the settings of this correction: target level, risk, deviation of the volume between the marks."
            );
        sump = sump with { TargetLevel = target, Risk = risk };
        var level = Joined(situation, sump, fill, new(read, u));
        if (read > 1)
            return TooFull(read, sump);
        var topUp = OilTopUp.Of(level, sump.TargetLevel, new(sump.BetweenMarks, deviation), sump.Risk);
        var wanted = current.Opinion.Verdict is VerdictWord.Outside or VerdictWord.Unproven;
        return topUp.Add.Litres >= 0.01 ? Add(topUp, level, read, sump, wanted) : null;
    }

    private static Advice Add(TopUp topUp, OilLevel level, double read, Sump sump, bool wanted) =>
        new(
            $"To bring it to {Percent(topUp.LevelAfter)} between the marks",
            $"Add {FirstFillAdvice.Both(topUp.Add)}, then read again",
            [
                Math.Abs(level.Value - read) > 0.005
                    ? (Sentence)
                        $"The stick says {Percent(read)}; with what was poured, {Percent(level.Value)} is likeliest."
                    : (Sentence)$"From {Percent(read)} on the stick.",
                $"Chance of standing over the high mark then: {Numerals.Plain(topUp.OverfillProbability * 100, 1)} %.",
            ],
            wanted,
            topUp.LevelAfter,
            topUp.LevelAfterDeviation,
            [
                $"level {Numerals.Plain(level.Value, 3)} ± {Numerals.Plain(2 * level.Deviation)}, {Numerals.With(sump.BetweenMarks.Litres, Litre)} between the marks",
                $"add = ({Numerals.Plain(sump.TargetLevel)} − {Numerals.Plain(level.Value, 3)}) × {Numerals.Plain(sump.BetweenMarks.Litres)} L, at most what overfills once in {Numerals.Plain(1 / sump.Risk, 0)} = {Numerals.With(topUp.Add.Litres, Litre, 3)}",
                $"handbook, oil-top-up",
            ],
            new(null, null, Math.Floor(topUp.Add.Litres * 100) / 100, null),
            null
        );

    private static Advice TooFull(double read, Sump sump) =>
        new(
            $"To bring it below the high mark",
            $"Draw off about {Numerals.With((read - sump.TargetLevel) * sump.BetweenMarks.Litres, Litre)}, then read again",
            [$"Too much oil foams and is thrown into the air box: never leave it over the high mark."],
            true,
            sump.TargetLevel,
            null,
            [
                $"({Numerals.Plain(read)} − {Numerals.Plain(sump.TargetLevel)}) × {Numerals.Plain(sump.BetweenMarks.Litres)} L",
            ],
            null,
            null
        );

    private static OilLevel Joined(Situation situation, Sump sump, Point fill, OilLevel read)
    {
        var poured = Poured(situation, fill);
        if (poured is null || sump.Deviation <= 0)
            return read;
        var expected = 1 - (sump.Drained.VolumeToHigh.Litres - poured.Value) / sump.BetweenMarks.Litres;
        var deviation = sump.Deviation / sump.BetweenMarks.Litres;
        var (wr, we) = (1 / (read.Deviation * read.Deviation), 1 / (deviation * deviation));
        return new((wr * read.Value + we * expected) / (wr + we), read.Deviation);
    }

    /// <summary>All that went in before the reading that counts, or null when no filling is on record.</summary>
    private static double? Poured(Situation situation, Point fill)
    {
        double? sum = null;
        foreach (var deed in situation.Deeds)
        {
            if (deed is WasRead { Reading: var reading } && reading == situation.Current)
                break;
            sum = deed switch
            {
                WasRead read when read.Point.Id == fill.Id => (sum ?? 0) + Litres(read.Reading),
                WasCorrected { Correction.AddedLitres: { } added } corrected
                    when corrected.Point.Id == situation.Point.Id => sum + added,
                _ => sum,
            };
        }
        return sum;
    }

    private static double Litres(ReadingTaken reading) =>
        reading.Opinion is { Value: { } value, Unit: { } unit } ? unit.ToBase(value) : 0;

    private static Sentence Percent(double level) => $"{Numerals.Plain(level * 100, 0)} %";
}
