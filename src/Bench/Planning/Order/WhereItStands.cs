using System.Globalization;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// From where the rest of a job is planned: the states that the machine was last worked in, what is in hand, and waits that still
/// run. Told from the entries in their causal order; their clocks are only asked how long ago something was.
/// </summary>
public static class WhereItStands
{
    /// <summary>What is still to do in a job, and from where.</summary>
    public static OrderQuestion Of(JobState job, BenchBook book, DateTimeOffset now)
    {
        var open = job.Points.Where(p => p.Marked is null && p.Left is null).Select(p => p.Point).ToList();
        var touched = Touched(job).ToList();
        var states = States(touched, book);
        var cooling = Cooling(states, now);
        return new(book, open)
        {
            Now =
            [
                .. states
                    .Keys.Select(s => s.Name)
                    .Where(s => !cooling.TryGetValue(s, out var left) || left > TimeSpan.Zero),
            ],
            Cooling = cooling
                .Where(c => c.Value > TimeSpan.Zero && !open.Any(p => p.Reach.Contains(c.Key)))
                .ToDictionary(),
            InHand = touched.Count > 0 && open.Contains(touched[^1].Point) ? touched[^1].Point.Id : null,
            Waiting = Waiting(job, now),
        };
    }

    private static IEnumerable<(Point Point, DateTimeOffset? At)> Touched(JobState job)
    {
        var points = job.Points.Select(p => p.Point).Concat(job.Dropped.Select(d => d.Point)).ToDictionary(p => p.Id);
        foreach (var entry in job.Entries)
            if (
                entry.Kind is EntryKind.Reading or EntryKind.Correction or EntryKind.Mark
                && entry.Body.TryGetProperty("point", out var id)
                && id.ValueKind == System.Text.Json.JsonValueKind.String
                && points.TryGetValue(id.GetString()!, out var point)
            )
                yield return (point, Time(entry.At));
    }

    /// <summary>States that are so, with the moment when they were last needed.</summary>
    private static Dictionary<ReachState, DateTimeOffset?> States(
        IEnumerable<(Point Point, DateTimeOffset? At)> touched,
        BenchBook book
    )
    {
        Dictionary<ReachState, DateTimeOffset?> states = [];
        foreach (var (point, at) in touched)
        foreach (var state in point.Reach.Select(r => book.Reach.GetValueOrDefault(r)).OfType<ReachState>())
        {
            foreach (
                var other in states
                    .Keys.Where(o => o.Never.Contains(state.Name) || state.Never.Contains(o.Name))
                    .ToList()
            )
                states.Remove(other);
            if (!ReachMap.IsAbsence(state))
                states[state] = at;
        }
        return states;
    }

    /// <summary>What is left of the time until a state ends by itself; without a clock nothing has passed.</summary>
    private static Dictionary<string, TimeSpan> Cooling(
        Dictionary<ReachState, DateTimeOffset?> states,
        DateTimeOffset now
    ) =>
        states
            .Where(s => s.Key.ClearsAfter > TimeSpan.Zero)
            .ToDictionary(s => s.Key.Name, s => Left(s.Key.ClearsAfter, s.Value, now));

    private static Dictionary<string, TimeSpan> Waiting(JobState job, DateTimeOffset now) =>
        job
            .Points.Where(p => p is { Marked: not null } && p.Point.Waits > TimeSpan.Zero)
            .Select(p => (p.Point.Id, Left: Left(p.Point.Waits, Time(p.Current?.Entry.At ?? p.Marked!.At), now)))
            .Where(w => w.Left > TimeSpan.Zero)
            .ToDictionary(w => w.Id, w => w.Left);

    // a clock that is wrong can neither lengthen a wait nor make it negative
    private static TimeSpan Left(TimeSpan whole, DateTimeOffset? since, DateTimeOffset now)
    {
        var left = whole - (since is { } then && then < now ? now - then : TimeSpan.Zero);
        return left > TimeSpan.Zero ? left : TimeSpan.Zero;
    }

    private static DateTimeOffset? Time(string at) =>
        DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.AssumeLocal, out var time)
            ? time
            : null;
}
