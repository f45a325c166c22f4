using Witnessmark.Bench.AtThePoint;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Corrections;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.SecondChecks;

namespace Witnessmark.Bench.Jobs;

/// <summary>
/// One point's state. A reading counts while it had seen all the work that moves the point; a mark stands while it had
/// seen the reading that counts, every other that does, and its figure where the bench gave it. What a device could not have
/// seen is asked again.
/// </summary>
internal static class PointFold
{
    public static PointState Of(Point point, string why, Opening opening, DoneByPoint done, BenchBook book) =>
        done.IsUntouched(point) && !opening.SecondCheck.Contains(point.Id) && !Advise.IsAsked(point)
            ? Untouched(point, why, opening)
            : Worked(point, why, opening, done, book);

    // most points of a job at most times; what is done elsewhere can ask nothing again where nothing was read
    private static PointState Untouched(Point point, string why, Opening opening) =>
        new(point, why, opening.Figure(point), Stripe.Unread, [], [], null, null, null, null, [], [])
        {
            Given = opening.GivenAt(point),
            Disputed = Disputed(point, opening),
        };

    private static PointState Worked(Point point, string why, Opening opening, DoneByPoint done, BenchBook book)
    {
        var readings = done.Readings(point);
        var work = done
            .Work.Where(d => Touches(d, point) || (opening.Settling && Settling.Moves(d, point, done.All)))
            .ToList();
        var fresh = readings.Where(r => work.All(w => CausalOrder.Saw(r.Entry, w.Entry()))).ToList();
        var disagree = Disagree(fresh);
        var read = disagree ? null : fresh.LastOrDefault();
        var facts = done.Said(point);
        var second = SecondFold.Of(point, opening, done.Seconds, read, work, facts);
        var current = second is { Differs: true } ? null : read;
        var left = point.Safety ? null : facts.OfType<LeftFact>().LastOrDefault(l => SawAll(l.Entry, readings, work));
        var given = opening.GivenAt(point);
        var mark = Mark(facts, current, fresh, work, given);
        var everMarked = facts.OfType<MarkFact>().Any();
        return new(
            point,
            why,
            opening.Figure(point),
            left is not null ? Stripe.Left : Drawn(mark is not null, current, readings, everMarked),
            readings,
            done.Corrections(point),
            current,
            Advise.On(new(point, opening.Figure(point), opening.Arrival.Sheet, book, done.All, current)),
            mark?.Entry,
            left is null ? null : (left.Entry, left.Why),
            current is not null ? []
                : second is { Differs: true } ? [SecondFold.BothAgain(second)]
                : AgainBecause.Of(point, readings, work, disagree),
            [.. facts.OfType<NoteFact>().Select(n => new Note(n.Entry, n.Text))]
        )
        {
            Given = given,
            Disputed = Disputed(point, opening),
            Vouched = Vouching.For(point, opening.Figure(point), facts),
            Second = second is null
                ? null
                : second with
                {
                    Awaited = mark is not null && second.Second is null,
                    Unread = Advise.On(
                        new(
                            point,
                            opening.Figure(point),
                            opening.Arrival.Sheet,
                            book,
                            [.. done.All.Where(d => d.Point.Id != point.Id)],
                            null
                        )
                    ),
                },
        };
    }

    private static IReadOnlyList<GivenFigure> Disputed(Point point, Opening opening) =>
        point.JudgedBy is { } key ? opening.Given.Disputed.GetValueOrDefault(key, []) : [];

    private static bool Touches(Deed deed, Point point) =>
        deed.Point.Id == point.Id ? deed is WasCorrected : deed.IsWork() && point.AgainAfter.Contains(deed.Point.Id);

    /// <summary>Two people read at the same time, neither knowing of the other, and came to different verdicts.</summary>
    private static bool Disagree(IReadOnlyList<ReadingTaken> fresh) =>
        fresh
            .Where(r => fresh.All(o => o == r || !CausalOrder.Saw(o.Entry, r.Entry)))
            .Select(r => r.Opinion.Verdict)
            .Distinct()
            .Count() > 1;

    private static MarkFact? Mark(
        IReadOnlyList<Fact> facts,
        ReadingTaken? current,
        IReadOnlyList<ReadingTaken> fresh,
        IReadOnlyList<Deed> work,
        GivenFigure? given
    ) =>
        current is { Opinion.Verdict: VerdictWord.Inside or VerdictWord.Close }
            ? facts
                .OfType<MarkFact>()
                .LastOrDefault(m =>
                    SawAll(m.Entry, fresh, work) && (given is null || CausalOrder.Saw(m.Entry, given.Entry))
                )
            : null;

    private static bool SawAll(Entry entry, IReadOnlyList<ReadingTaken> readings, IReadOnlyList<Deed> work) =>
        readings.All(r => CausalOrder.Saw(entry, r.Entry)) && work.All(w => CausalOrder.Saw(entry, w.Entry()));

    private static Stripe Drawn(
        bool marked,
        ReadingTaken? current,
        IReadOnlyList<ReadingTaken> readings,
        bool everMarked
    ) =>
        (current?.Opinion.Verdict, marked) switch
        {
            (VerdictWord.Inside, true) => Stripe.Marked,
            (VerdictWord.Close, true) => Stripe.MarkedClose,
            (null or VerdictWord.Unread, _) => NotCurrent(readings, everMarked),
            ({ } verdict, _) => Stripes.Unmarked(verdict),
        };

    // corrected but not read again: what was last known stays loud
    private static Stripe NotCurrent(IReadOnlyList<ReadingTaken> readings, bool everMarked) =>
        readings.Count == 0 ? Stripe.Unread
        : everMarked ? Stripe.Again
        : readings[^1].Opinion.Verdict switch
        {
            VerdictWord.Outside => Stripe.Outside,
            VerdictWord.Unproven => Stripe.Unproven,
            _ => Stripe.Again,
        };
}
