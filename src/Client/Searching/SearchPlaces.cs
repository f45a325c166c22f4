using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Searching;
using Witnessmark.Bench.Visits;
using Witnessmark.Client.Device;
using Witnessmark.Client.Jobs;

namespace Witnessmark.Client.Searching;

/// <summary>Everything on this device that a search leads to, the nearest first: of equal matches the earlier one wins.</summary>
internal sealed class SearchPlaces(AtHand hand)
{
    private readonly Workbench bench = hand.Workbench!;

    /// <summary>All of it.</summary>
    /// <param name="job">The job that is looked at now, or null; its points come before all else.</param>
    public IReadOnlyList<SearchEntry> All(string? job)
    {
        var jobs = hand.Jobs();
        var open = jobs.Where(j => j.Release is null).OrderBy(j => j.Job != job).ToList();
        var visits = hand.Visits();
        var machines = MachineVisits.Known(visits, bench.Workshop);
        return
        [
            .. open.Take(1).SelectMany(Points),
            .. open.Select(j => Of(j, SearchKind.Job)),
            .. open.Skip(1).SelectMany(Points),
            .. SearchAreas.All,
            .. machines.Select(Of),
            .. new SearchFigures(bench).All(),
            .. SearchCalculations.All,
            .. jobs.Where(j => j.Release is not null).Select(j => Of(j, SearchKind.JobDone)),
            .. machines.SelectMany(m => Before(m, visits)),
        ];
    }

    private static IEnumerable<SearchEntry> Points(JobState job) =>
        job.Points.Select(p => new SearchEntry(
            SearchKind.Point,
            Known(p.Point.Title),
            $"{job.Arrival?.Machine.Name} · {JobWords.Number(job.Job)}",
            $"jobs/{job.Job}/bench/{p.Point.Id}"
        )
        {
            Also = p.Point.Id,
            Numbers = [.. Plate(job.Arrival?.Machine)],
        });

    private static SearchEntry Of(JobState job, SearchKind kind) =>
        new(
            kind,
            $"{JobWords.Number(job.Job)} · {job.Arrival?.Machine.Name}",
            string.Join(
                " · ",
                (
                    (string?[])
                        [job.Arrival is { } a ? JobWords.Purpose(a.Purpose) : null, .. Plate(job.Arrival?.Machine)]
                ).OfType<string>()
            ),
            $"jobs/{job.Job}"
        )
        {
            Numbers = [job.Job, .. Plate(job.Arrival?.Machine), .. Frame(job.Arrival?.Machine)],
        };

    private static SearchEntry Of(Machine machine) =>
        new(
            SearchKind.Machine,
            Called(machine),
            string.Join(" · ", [.. Frame(machine), .. Plate(machine)]),
            $"machines/{Uri.EscapeDataString(machine.Id)}"
        )
        {
            Numbers = [machine.Id, .. Frame(machine), .. Plate(machine)],
        };

    // a point of the book has a page only where it was read
    private IEnumerable<SearchEntry> Before(Machine machine, IReadOnlyList<Visit> visits) =>
        MachineVisits
            .Of(machine.Id, machine.Vin, visits, bench.Workshop)
            .SelectMany(v => v.ReadAt)
            .Distinct()
            .Where(bench.Book.Points.ContainsKey)
            .Select(p => new SearchEntry(
                SearchKind.PointBefore,
                Known(bench.Book.Points[p].Title),
                SearchWords.OverVisits(Called(machine)),
                $"machines/{Uri.EscapeDataString(machine.Id)}/points/{p}"
            ));

    private static string Called(Machine machine) => $"{machine.Make} {machine.Name} {machine.Year}".Trim();

    private static IEnumerable<string> Plate(Machine? machine) =>
        machine?.Plate is { Length: > 0 } plate ? [plate] : [];

    private static IEnumerable<string> Frame(Machine? machine) =>
        ((string?[])[machine?.Vin, machine?.Frame]).Where(n => !string.IsNullOrEmpty(n)).OfType<string>();
}
