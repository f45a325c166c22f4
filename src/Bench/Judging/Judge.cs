using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Judging;

/// <summary>The verdict on one reading of one point. Pure: the day it was read is an argument.</summary>
public static class Judge
{
    /// <summary>Judges a reading, or says why it cannot be one.</summary>
    public static (Opinion? Opinion, Sentence? Why) Reading(ReadingToJudge judged)
    {
        var (opinion, why) = ByKind(judged);
        return (opinion is null ? null : Calibrated.Of(judged, opinion), why);
    }

    private static (Opinion? Opinion, Sentence? Why) ByKind(ReadingToJudge judged) =>
        judged.Point.Reading.Kind switch
        {
            ReadingKind.Seen => SeenJudge.Of(judged),
            ReadingKind.Done => (Plain(VerdictWord.Inside, $"done", $"Done", Sentence.Empty), null),
            ReadingKind.Vin => VinJudge.Of(judged),
            ReadingKind.TyreDate => TyreDateJudge.Of(judged),
            ReadingKind.Tighten => TightenJudge.Of(judged),
            ReadingKind.Amount => AmountJudge.Of(judged),
            ReadingKind.Sides => SidesJudge.Of(judged),
            _ => MeasuredJudge.Of(judged),
        };

    internal static Opinion Plain(VerdictWord verdict, Sentence shown, Sentence headline, Sentence grounds) =>
        new(verdict, null, null, null, null, null, shown, headline, grounds, [], []);
}

/// <summary>A reading on its way to its verdict.</summary>
/// <param name="Point">What was read.</param>
/// <param name="Figure">What judges it, or null.</param>
/// <param name="Machine">The machine of the job.</param>
/// <param name="Raw">As typed.</param>
/// <param name="Places">Where, in step with the raw values; empty for one place.</param>
/// <param name="Instrument">What it was read with, or null.</param>
/// <param name="On">The day, by the device's clock; null when that clock said nothing readable.</param>
public sealed record ReadingToJudge(
    Point Point,
    Figure? Figure,
    Machine Machine,
    IReadOnlyList<string> Raw,
    IReadOnlyList<string> Places,
    ShopInstrument? Instrument,
    DateOnly? On
);
