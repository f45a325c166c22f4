using Witnessmark.Bench.Jobs;

namespace Witnessmark.Bench.SecondChecks;

/// <summary>
/// A job as somebody sees it who is to read a point without knowing what was read there. The entries are on the device all the same: this keeps
/// an honest eye free, it is no lock.
/// </summary>
public static class Blind
{
    /// <summary>The job without what this person is not to see yet.</summary>
    public static JobState SeenBy(this JobState job, string? person)
    {
        var hidden = job.Points.Where(p => p.IsHiddenFrom(person)).Select(p => p.Point.Id).ToHashSet();
        return hidden.Count == 0
            ? job
            : job with
            {
                Points = [.. job.Points.Select(p => hidden.Contains(p.Point.Id) ? Unread(p) : p)],
                Photographs = [.. job.Photographs.Where(p => !hidden.Contains(p.Point))],
            };
    }

    /// <summary>
    /// Whether a point waits for a reading that this person may make: the shop asks for a second one, somebody else's is right, and no other
    /// stands beside it. What is outside or unproven is nothing to be checked yet, and whoever puts it right has to see it.
    /// </summary>
    public static bool IsHiddenFrom(this PointState point, string? person) =>
        point is { Second: { Second: null, First: { } first }, Left: null, Current: not null }
        && (point.Marked is not null || point.CanBeMarked)
        && !SecondCheck.IsSame(first.Entry.By, person)
        && !SecondCheck.IsSame(point.Marked?.By, person);

    private static PointState Unread(PointState point) =>
        point with
        {
            Stripe = Stripe.Unread,
            Readings = [],
            Corrections = [],
            Current = null,
            Advice = point.Second!.Unread,
            Marked = null,
            AgainBecause = [],
            Notes = [],
            Second = point.Second with { First = null, Hidden = true },
        };
}
