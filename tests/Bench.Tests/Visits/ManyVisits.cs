using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Jobs;
using Witnessmark.Bench.Visits;

namespace Witnessmark.Bench.Tests.Visits;

/// <summary>A machine of the demo workshop that comes again and again.</summary>
internal sealed class ManyVisits
{
    private readonly List<Entry> entries = [];
    private readonly Dictionary<string, List<Entry>> jobs = [];
    private string job = "";
    private DateOnly day;

    public static Workbench Bench => AtWork.Bench;

    public static Machine Machine { get; } =
        new("17", "Fell 640", "GZ0FE64C5PH000977", 2023, "fell-640", 100, new(2024, 1, 1), null, "Tarnmoor");

    public IReadOnlyList<Visit> All => [.. jobs.Select(j => Visit.Of(j.Key, j.Value)).OfType<Visit>()];

    public IReadOnlyList<Visit> Visits => MachineVisits.Of(Machine.Id, Machine.Vin, All, Bench.Workshop);

    public IReadOnlyList<DistanceSeen> Distances => MachineVisits.Distances([], Machine, Visits);

    public PointHistory History(string point) => PointHistory.Of(Bench.Book.Points[point], Visits, Bench);

    public PointForecast Forecast(string point) => PointForecast.Of(History(point), Distances);

    /// <summary>Each visit as a job, in the order in which it came.</summary>
    public IReadOnlyList<JobState> Jobs => [.. jobs.Select(j => JobFold.Of(j.Key, j.Value, Bench))];

    public Entry Last => entries[^1];

    /// <summary>Comes on a day, with this on the odometer; null: nobody reads it.</summary>
    public ManyVisits Comes(
        string on,
        double? kilometres,
        Machine? known = null,
        string machine = "17",
        string purpose = "handover"
    )
    {
        (job, day) = ($"{jobs.Count + 1}", DateOnly.ParseExact(on, "yyyy-MM-dd", CultureInfo.InvariantCulture));
        jobs[job] = [];
        Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine,
                "fell-640",
                Bench.Newest("fell-640")!.Revision,
                purpose,
                Bench.Book.Purposes[purpose],
                known: machine == "17" ? known ?? Machine : known
            )
        );
        if (kilometres is { } shown)
            Reads("distance", string.Create(CultureInfo.InvariantCulture, $"{shown:0} km"));
        return this;
    }

    public ManyVisits Reads(string point, params string[] raw) =>
        Writes(EntryKind.Reading, EntryBody.Reading(point, raw, null, Bench.Book.Points[point].Reading.Instrument));

    /// <summary>Reads the same at every place.</summary>
    public ManyVisits ReadsAll(string point, string raw) =>
        Reads(point, [.. Enumerable.Repeat(raw, Math.Max(1, Bench.Book.Points[point].Reading.Places.Count))]);

    public ManyVisits Marks(params ReadOnlySpan<string> points)
    {
        foreach (var point in points)
            Writes(EntryKind.Mark, EntryBody.Mark(point));
        return this;
    }

    public ManyVisits Does(string point, string words) => Writes(EntryKind.Correction, EntryBody.Did(point, words));

    public ManyVisits Writes(string kind, JsonElement body, string? strikes = null)
    {
        var seq = entries.Count + 1;
        var at = $"{day:yyyy-MM-dd}T09:00:00+00:00";
        var draft = new EntryDraft($"e{seq}", "harrow-lane", job, kind, body, strikes, null, at, "Ines Tallow");
        var entry = Witnessmark.Bench.Record.Entries.Sealed(draft, "tablet", 1, seq, entries.LastOrDefault()?.Hash);
        entries.Add(entry);
        jobs[job].Add(entry);
        return this;
    }
}
