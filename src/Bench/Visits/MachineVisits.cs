using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;

namespace Witnessmark.Bench.Visits;

/// <summary>The visits of one machine among all jobs.</summary>
public static class MachineVisits
{
    /// <summary>Its visits, oldest first: those under its id, and those of the same VIN under whatever id.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="vin">Its VIN, or null.</param>
    /// <param name="all">Visits of any machine.</param>
    /// <param name="workshop">Knows the VINs of machines whose arrivals do not carry them.</param>
    public static IReadOnlyList<Visit> Of(string id, string? vin, IEnumerable<Visit> all, Workshop workshop) =>
        [
            .. all.Where(v => v.Head.Machine == id || (vin is { Length: > 0 } && VinOf(v, workshop) == vin))
                .OrderBy(v => v.Arrival.At, StringComparer.Ordinal)
                .ThenBy(v => v.Job, StringComparer.Ordinal),
        ];

    /// <summary>The visits of every other machine under a figure sheet, each machine's by itself, oldest first.</summary>
    /// <param name="id">The machine that is none of them.</param>
    /// <param name="vin">Its VIN, or null.</param>
    /// <param name="sheet">Id of the figure sheet.</param>
    /// <param name="all">Visits of any machine.</param>
    /// <param name="workshop">Knows the VINs of machines whose arrivals do not carry them.</param>
    public static IReadOnlyList<IReadOnlyList<Visit>> Others(
        string id,
        string? vin,
        string sheet,
        IReadOnlyList<Visit> all,
        Workshop workshop
    )
    {
        var own = Of(id, vin, all, workshop).ToHashSet();
        return
        [
            .. all.Where(v => v.Head.Sheet == sheet && !own.Contains(v))
                .GroupBy(v => VinOf(v, workshop) is { Length: > 0 } number ? number : v.Head.Machine)
                .Select(g => g.OrderBy(v => v.Arrival.At, StringComparer.Ordinal).ToArray()),
        ];
    }

    private static string? VinOf(Visit visit, Workshop workshop) =>
        visit.Head.Known?.Vin ?? workshop.Machines.GetValueOrDefault(visit.Head.Machine)?.Vin;

    /// <summary>The machine as it was known when the last of these jobs was opened, or as the shop's file has it.</summary>
    public static Machine? Last(string id, IEnumerable<Visit> all, Workshop workshop) =>
        workshop.Machines.GetValueOrDefault(id)
        ?? all.Where(v => v.Head.Machine == id && v.Head.Known is not null)
            .MaxBy(v => v.Arrival.At, StringComparer.Ordinal)
            ?.Head.Known;

    /// <summary>Every machine that the shop's file or a job knows, each once, the shop's own first.</summary>
    public static IReadOnlyList<Machine> Known(IEnumerable<Visit> all, Workshop workshop)
    {
        var vins = workshop.Machines.Values.Select(m => m.Vin).ToHashSet(StringComparer.Ordinal);
        var others = all.Where(v =>
                v.Head.Known is { } known
                && !workshop.Machines.ContainsKey(v.Head.Machine)
                && !(known.Vin.Length > 0 && vins.Contains(known.Vin))
            )
            .GroupBy(v => v.Head.Machine, StringComparer.Ordinal)
            .Select(g => g.MaxBy(v => v.Arrival.At, StringComparer.Ordinal)!.Head.Known!);
        return [.. workshop.Machines.Values, .. others];
    }

    /// <summary>What the odometer showed, by day: as the register has it, as the machine was known, as it was read in its visits.</summary>
    public static IReadOnlyList<DistanceSeen> Distances(
        IEnumerable<DistanceOnDay> onRecord,
        Machine? machine,
        IEnumerable<Visit> visits
    )
    {
        List<DistanceOnDay> all = [.. onRecord];
        Add(machine);
        foreach (var visit in visits)
        {
            Add(visit.Head.Known);
            if (visit is { Day: { } day, Kilometres: { } read })
                all.Add(new(day, read));
        }
        return DistanceHistory.Of(all);

        void Add(Machine? known)
        {
            if (known is { LastDistanceKilometres: { } last, LastDistanceOn: { } on })
                all.Add(new(on, last));
        }
    }

    /// <summary>The points at which numbers were read, in the order of the bench book.</summary>
    public static IReadOnlyList<PointSeen> Points(IReadOnlyList<Visit> visits, Workbench bench)
    {
        Dictionary<string, PointSeen> seen = new(StringComparer.Ordinal);
        foreach (var visit in visits)
        foreach (var id in visit.ReadAt)
            if (bench.Book.Points.TryGetValue(id, out var point) && PointHistory.IsDrawn(point))
                seen[id] = new(point, 1 + (seen.GetValueOrDefault(id)?.Visits ?? 0), visit);
        return [.. bench.Book.Points.Keys.Where(seen.ContainsKey).Select(id => seen[id])];
    }
}

/// <summary>A point at which numbers were read.</summary>
/// <param name="Point">The point.</param>
/// <param name="Visits">In how many visits.</param>
/// <param name="Last">The last of them.</param>
public sealed record PointSeen(Book.Point Point, int Visits, Visit Last);
