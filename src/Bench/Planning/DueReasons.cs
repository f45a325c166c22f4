using Witnessmark.Bench.Figures;
using Witnessmark.Handbook.Due;

namespace Witnessmark.Bench.Planning;

/// <summary>What the sheet's schedule asks for by distance or date, whichever comes first.</summary>
internal static class DueReasons
{
    private const double Kilometre = 1e6; // mm
    private static Sentence NoDistance => $"Its distance is not known: read the odometer, and treat as due.";

    public static IEnumerable<(string Point, Reason Reason)> Of(PlanQuestion asked)
    {
        var schedule = asked.Sheet.Schedule;
        if (schedule.Count == 0)
            yield break;
        var known = DistanceToday.Of(asked).Kilometres is not null;
        foreach (var work in schedule.Where(w => !known && w.Rule.EveryDistance is not null))
            yield return (work.Point, new(Because.Due, InWords(Because.Due, work, NoDistance)));
        var rules = schedule.Where(w => known || w.Rule.EveryDistance is null).ToArray();
        foreach (var due in Counted(rules, asked))
            if (Kind(due) is { } because)
                yield return (
                    due.Point,
                    new(because, InWords(because, rules.First(w => w.Point == due.Point), due.Why))
                );
    }

    /// <summary>Lines of the schedule, the first due first.</summary>
    internal static IReadOnlyList<DuePoint> Counted(IReadOnlyList<ScheduledWork> schedule, PlanQuestion asked)
    {
        var distance = DistanceToday.Of(asked);
        return ServiceDue
            .On(
                [.. schedule.Select(w => w.Rule)],
                [.. Done(asked, distance).Where(e => schedule.Any(w => w.Point == e.Point))],
                new(
                    asked.Day,
                    new(distance.Kilometres.GetValueOrDefault() * Kilometre),
                    new(distance.PerDay * Kilometre),
                    [.. distance.Known.Select(k => new OdometerReading(k.Day, new(k.Kilometres * Kilometre)))],
                    []
                )
            )
            .Due;
    }

    private static List<ServiceEntry> Done(PlanQuestion asked, DistanceToday distance) =>
        [
            .. asked
                .Visits.Where(v => v.Day <= asked.Day)
                .SelectMany(v => v.Points.Where(p => p.Marked), (v, p) => (PastVisit: v, p.Point))
                .Where(x => asked.Sheet.Schedule.Any(w => w.Point == x.Point))
                .Select(x => new ServiceEntry(
                    x.Point,
                    new(x.PastVisit.Day, new((x.PastVisit.Kilometres ?? distance.At(x.PastVisit.Day)) * Kilometre))
                )),
        ];

    private static Because? Kind(DuePoint due) =>
        due.State switch
        {
            DueState.Overdue => Because.Overdue,
            DueState.Due => Because.Due,
            DueState.Soon => Because.Soon,
            _ => null,
        };

    private static Sentence InWords(Because because, ScheduledWork work, Sentence why) =>
        because switch
        {
            Because.Soon => $"Due soon, every {work.Often} by {Source(work.Origin)}: {why.Inside()}",
            Because.Overdue => $"Overdue, every {work.Often} by {Source(work.Origin)}: {why.Inside()}",
            _ => $"Due, every {work.Often} by {Source(work.Origin)}: {why.Inside()}",
        };

    private static Sentence Source(Origin origin) =>
        origin.Place.Length > 0 ? (Sentence)$"{origin.Who} ({origin.Place})" : origin.Who;
}
