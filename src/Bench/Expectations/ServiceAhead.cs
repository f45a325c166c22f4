using Witnessmark.Bench.Book;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Planning;
using Witnessmark.Handbook.Due;

namespace Witnessmark.Bench.Expectations;

/// <summary>One line of the schedule, and when it comes.</summary>
/// <param name="Point">What is worked on.</param>
/// <param name="Title">The same for people.</param>
/// <param name="Every">As it stands in the sheet.</param>
/// <param name="Origin">Who asks for it.</param>
/// <param name="State">How urgent it is on the job's day.</param>
/// <param name="AtKilometres">What the odometer shows then; null when it does not go by distance, or nobody can tell.</param>
/// <param name="ByDay">The day; null when it does not go by date, or nobody can tell.</param>
/// <param name="Unknown">Why neither is known, or what else is not; null when nothing is missing.</param>
public sealed record ServiceAhead(
    string Point,
    string Title,
    Sentence Every,
    Origin Origin,
    DueState State,
    double? AtKilometres,
    DateOnly? ByDay,
    Sentence? Unknown
);

/// <summary>Asks <see cref="ServiceDue"/> of the handbook for the whole schedule.</summary>
internal static class ServicesAhead
{
    private const double MillimetresInKilometre = 1e6;

    private static Sentence NoDistance => $"the odometer was never read here, so by distance nobody can tell";

    public static IReadOnlyList<ServiceAhead> Of(PlanQuestion asked, BenchBook book)
    {
        var known = DistanceToday.Of(asked).Kilometres is not null;
        var schedule = asked.Sheet.Schedule.ToDictionary(w => w.Point);
        // Where no distance is known, what goes by date too is counted by date alone.
        var counted = asked
            .Sheet.Schedule.Where(w => known || w.Rule.EveryMonths is not null)
            .Select(w => ByDate(w, known));
        var due = DueReasons.Counted([.. counted], asked);
        return
        [
            .. due.Where(d => !Finished(d)).Select(d => Ahead(schedule[d.Point], d, known, book)),
            .. schedule
                .Values.Where(w => due.All(d => d.Point != w.Point))
                .Select(w => Line(w, DueState.Due, null, null, NoDistance, book)),
        ];
    }

    private static ScheduledWork ByDate(ScheduledWork work, bool known) =>
        known ? work : work with { Rule = work.Rule with { EveryDistance = null, FirstAt = null } };

    private static ServiceAhead Ahead(ScheduledWork work, DuePoint due, bool known, BenchBook book)
    {
        var unknown =
            !known && work.Rule.EveryDistance is not null ? NoDistance
            : due is { ByDistance: null, State: DueState.Due } && (due.ByDate is null || Goes(work))
                ? due.Why.Inside().Open()
            : null;
        return Line(work, due.State, due.ByDistance?.Millimetres / MillimetresInKilometre, due.ByDate, unknown, book);
    }

    /// <summary>Done for good: it does not repeat.</summary>
    private static bool Finished(DuePoint due) =>
        due is { ByDistance: null, ByDate: null } && double.IsPositiveInfinity(due.DaysLeft);

    private static bool Goes(ScheduledWork work) => (work.Rule.EveryDistance ?? work.Rule.FirstAt) is not null;

    private static ServiceAhead Line(
        ScheduledWork work,
        DueState state,
        double? kilometres,
        DateOnly? day,
        Sentence? unknown,
        BenchBook book
    ) =>
        new(
            work.Point,
            book.Points.GetValueOrDefault(work.Point)?.Title ?? work.Point,
            work.Often,
            work.Origin,
            state,
            kilometres,
            day,
            unknown
        );
}
