using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Wording;

namespace Witnessmark.Bench.Jobs;

/// <summary>Readings, judged, and corrections, in order.</summary>
internal static class Deeds
{
    public static IReadOnlyList<Deed> Of(
        IReadOnlyList<Fact> live,
        Opening opening,
        Workbench bench,
        FoldMemory memory,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        List<Deed> deeds = [];
        foreach (var fact in live.Where(f => f is ReadingFact or CorrectionFact))
        {
            var (deed, why) = opening.Point(fact.Point) is { } point
                ? memory.Deed(fact.Entry, By(point, opening), () => Done(fact, point, opening, bench))
                : (null, (Sentence)$"\"{fact.Point}\" is no point of this job");
            if (deed is not null)
                deeds.Add(deed);
            else
                notUnderstood.Add((fact.Entry, why!));
        }
        return deeds;
    }

    /// <summary>Second readings, judged, in order. They are no deeds of the first person: nothing is learnt from them and they move nothing.</summary>
    public static IReadOnlyList<Deed> Seconds(
        IReadOnlyList<Fact> live,
        Opening opening,
        Workbench bench,
        FoldMemory memory,
        List<(Entry, Sentence)> notUnderstood
    )
    {
        List<Deed> seconds = [];
        foreach (var fact in live.OfType<SecondReadingFact>())
        {
            var (read, why) = opening.Point(fact.Point) is { } point
                ? memory.Deed(fact.Entry, By(point, opening), () => Taken(fact.Reading, point, opening, bench))
                : (null, (Sentence)$"\"{fact.Point}\" is no point of this job");
            if (read is not null)
                seconds.Add(read);
            else
                notUnderstood.Add((fact.Entry, why!));
        }
        return seconds;
    }

    /// <summary>Whether a deed moves what its neighbours were read at: a reading is no work, a correction, a tightening or a filling is.</summary>
    public static bool IsWork(this Deed deed) => deed is WasCorrected || deed.Point.Reading.IsWork;

    public static Entry Entry(this Deed deed) =>
        deed switch
        {
            WasRead read => read.Reading.Entry,
            WasCorrected corrected => corrected.Correction.Entry,
            _ => throw new ArgumentOutOfRangeException(nameof(deed), deed, null),
        };

    private static FoldMemory.JudgedBy By(Point point, Opening opening) =>
        new(point, opening.Figure(point), opening.Arrival.Machine);

    private static (Deed? Deed, Sentence? Why) Done(Fact fact, Point point, Opening opening, Workbench bench)
    {
        if (fact is CorrectionFact correction)
            return (new WasCorrected(point, Made(correction, point)), null);
        return Taken((ReadingFact)fact, point, opening, bench);
    }

    private static (WasRead? Read, Sentence? Why) Taken(
        ReadingFact reading,
        Point point,
        Opening opening,
        Workbench bench
    )
    {
        var (instrument, unknown) = TakenWith.Of(reading, bench.Workshop);
        if (unknown is not null)
            return (null, unknown);
        var (opinion, why) = Judge.Reading(
            new(
                point,
                opening.Figure(point),
                opening.Arrival.Machine,
                reading.Raw,
                reading.Places,
                instrument,
                Day(reading.Entry.At)
            )
        );
        return opinion is null
            ? (null, why)
            : (new WasRead(point, new(reading.Entry, reading.Raw, reading.Places, instrument, opinion)), null);
    }

    private static CorrectionMade Made(CorrectionFact fact, Point point) =>
        new(fact.Entry, fact.Left, fact.Right, fact.AddedLitres, CorrectionWords.Of(fact, point));

    private static DateOnly? Day(string at) =>
        DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time)
            ? DateOnly.FromDateTime(time.DateTime)
            : null;
}
