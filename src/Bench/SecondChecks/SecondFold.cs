using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.SecondChecks;

/// <summary>
/// The second check of a point from the entries. A second reading counts beside the first one that it was not seen by: work on the point, or
/// a first reading made after it, asks for it anew. It is another person's than the first reading and the mark.
/// </summary>
internal static class SecondFold
{
    /// <summary>The second reading that stands beside the first, or null; null too where the shop asks for none here.</summary>
    public static SecondCheck? Of(
        Point point,
        Opening opening,
        IReadOnlyList<Deed> seconds,
        ReadingTaken? first,
        IReadOnlyList<Deed> work,
        IReadOnlyList<Fact> facts
    )
    {
        if (!opening.SecondCheck.Contains(point.Id))
            return null;
        var second = first is null
            ? null
            : seconds
                .OfType<WasRead>()
                .Where(d => d.Point.Id == point.Id)
                .Select(d => d.Reading)
                .LastOrDefault(s => StandsBeside(s, first, work, facts));
        return new(first, second, second is null ? null : Agreement.Of(point, first!, second));
    }

    private static bool StandsBeside(
        ReadingTaken second,
        ReadingTaken first,
        IReadOnlyList<Deed> work,
        IReadOnlyList<Fact> facts
    ) =>
        !CausalOrder.Saw(first.Entry, second.Entry)
        && work.All(w => CausalOrder.Saw(second.Entry, w.Entry()))
        && !SecondCheck.IsSame(second.Entry.By, first.Entry.By)
        && !facts
            .OfType<MarkFact>()
            .Any(m => CausalOrder.Saw(m.Entry, first.Entry) && SecondCheck.IsSame(m.Entry.By, second.Entry.By));

    /// <summary>Why both look again.</summary>
    public static Sentence BothAgain(SecondCheck check) =>
        $"{check.First!.Entry.By} read {Shown(check.First)}, {check.Second!.Entry.By} read {Shown(check.Second)}: {check.Agreement!.Words}. Both look again.";

    /// <summary>A reading as people say it; as it was typed where no verdict put it into words.</summary>
    public static Sentence Shown(ReadingTaken reading) =>
        reading.Opinion.Shown is { Length: > 0 } shown ? shown : Sentence.List(reading.Raw.Select(Sentence.Number));
}
