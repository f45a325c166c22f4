using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Jobs;

/// <summary>Why a point that was read has to be read again.</summary>
internal static class AgainBecause
{
    public static IReadOnlyList<Sentence> Of(
        Point point,
        IReadOnlyList<ReadingTaken> readings,
        IReadOnlyList<Deed> work,
        bool disagree
    )
    {
        if (readings.Count == 0)
            return [];
        if (disagree)
            return [$"Two devices read this point at the same time and disagree: both look again."];
        return
        [
            .. work.Where(w => !CausalOrder.Saw(readings[^1].Entry, w.Entry()))
                .Select(w => InWords(w, point))
                .Distinct(),
        ];
    }

    private static Sentence InWords(Deed deed, Point point) =>
        (deed, deed.Point.Reading.Kind) switch
        {
            (WasCorrected corrected, _) when deed.Point.Id == point.Id =>
                $"Corrected since: {corrected.Correction.Words}.",
            (WasCorrected corrected, _) => $"{deed.Point.Title} was corrected since: {corrected.Correction.Words}.",
            _ when point.SettlesAfter.Contains(deed.Point.Id) && !point.AgainAfter.Contains(deed.Point.Id) =>
                $"What is new here was ridden since: it settles.",
            (_, ReadingKind.Tighten) => $"{deed.Point.Title} was tightened since: that moves it.",
            _ => $"{deed.Point.Title} was done since.",
        };
}
