using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Jobs;

/// <summary>Somebody at the bench of the demo workshop: writes entries as a device would.</summary>
internal sealed class AtWork(string device = "tablet", Workbench? at = null, string by = "Ines Tallow")
{
    public const string Job = "412";
    private readonly List<Entry> entries = [];
    private readonly Dictionary<string, int> seen = [];

    /// <summary>Who holds the device now.</summary>
    public string By { get; private set; } = by;

    public static Workbench Bench { get; } = DemoFiles.Bench;

    public IReadOnlyList<Entry> Entries => entries;

    public Entry Last => entries[^1];

    public JobState State => JobFold.Of(Job, entries, at ?? Bench);

    public PointState this[string point] => State.Points.Single(p => p.Point.Id == point);

    /// <summary>Has seen all that another device has written so far.</summary>
    public AtWork Sees(AtWork other)
    {
        if (other.entries.Count > 0)
            seen[other.Last.Chain] = other.Last.Seq;
        return this;
    }

    /// <summary>The device goes into another hand.</summary>
    public AtWork Hands(string to)
    {
        By = to;
        return this;
    }

    /// <summary>A job whose shop asks for a second check of some points.</summary>
    public AtWork ArrivesChecked(params string[] points)
    {
        var machine = Bench.Workshop.Machines["fell-640-0412"];
        return Writes(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                machine.Sheet,
                Bench.Newest(machine.Sheet)!.Revision,
                "handover",
                Bench.Book.Purposes["handover"],
                secondCheck: points
            )
        );
    }

    /// <summary>Reads a point as the second person.</summary>
    public AtWork ReadsSecond(string point, string? instrument, params string[] raw) =>
        Writes(EntryKind.SecondReading, EntryBody.Reading(point, raw, null, instrument));

    public AtWork Arrives() => ArrivesChecked();

    /// <summary>The job as an earlier program opened it, which did not write this word.</summary>
    public AtWork ArrivesWithout(string word)
    {
        var now = new AtWork().Arrives().Last.Body.GetRawText();
        Assert.Contains($",\"{word}\":true", now);
        using var then = JsonDocument.Parse(now.Replace($",\"{word}\":true", ""));
        return Writes(EntryKind.Arrival, then.RootElement.Clone());
    }

    /// <summary>Corrects a point by what was done, in words.</summary>
    public AtWork Does(string point, string words) => Writes(EntryKind.Correction, EntryBody.Did(point, words));

    public AtWork Reads(string point, params string[] raw) =>
        ReadsWith(Bench.Book.Points[point].Reading.Instrument, point, raw);

    public AtWork ReadsWith(string? instrument, string point, params string[] raw) =>
        Writes(EntryKind.Reading, EntryBody.Reading(point, raw, null, instrument));

    public AtWork ReadsSides(string[] left, string[] right) =>
        Writes(
            EntryKind.Reading,
            EntryBody.Reading(
                "axle-alignment",
                [.. left, .. right],
                [.. left.Select(_ => "left"), .. right.Select(_ => "right")],
                "calliper"
            )
        );

    public AtWork Tightens(string point, string torque) => ReadsWith("torque-wrench-120", point, torque);

    public AtWork Turns(string point, string turns) => Writes(EntryKind.Correction, EntryBody.Turns(point, turns));

    public AtWork Adds(string point, string litres) => Writes(EntryKind.Correction, EntryBody.Added(point, litres));

    public AtWork Marks(string point) => Writes(EntryKind.Mark, EntryBody.Mark(point));

    /// <summary>Vouches by name for the figure of the newest sheet, or for another one.</summary>
    public AtWork Vouches(string point, string name = "Ines Tallow", string? figure = null) =>
        Writes(
            EntryKind.Vouch,
            EntryBody.Vouch(
                point,
                name,
                figure ?? Bench.Newest("fell-640")!.Figures[Bench.Book.Points[point].JudgedBy!].InSheet
            )
        );

    public AtWork Leaves(string point, string why) => Writes(EntryKind.Left, EntryBody.Left(point, why));

    public AtWork Releases(string name, bool ofTwo = false) =>
        Writes(EntryKind.Release, EntryBody.Release(name, ofTwo));

    public AtWork Strikes(string id) => Writes(EntryKind.Strike, EntryBody.Strike("mistyped"), id);

    public AtWork Writes(string kind, JsonElement body, string? strikes = null)
    {
        var seq = entries.Count + 1;
        var draft = new EntryDraft(
            $"{device}-{seq}",
            "harrow-lane",
            Job,
            kind,
            body,
            strikes,
            seen.Count == 0 ? null : new Dictionary<string, int>(seen),
            "2026-11-25T09:00:00+00:00",
            By
        );
        entries.Add(Witnessmark.Bench.Record.Entries.Sealed(draft, device, 1, seq, entries.LastOrDefault()?.Hash));
        return this;
    }

    /// <summary>Reads a point so that it is inside, and marks it.</summary>
    public AtWork DoesWell(string point) =>
        (
            point switch
            {
                "identity" => Reads(point, "GZ0FE64C8RH000412"),
                "distance" => Reads(point, "12380 km"),
                "tyre-front-tread" or "tyre-rear-tread" => Reads(point, "4.0 mm", "4.1 mm", "4.0 mm"),
                "tyre-dates" => Reads(point, "3123", "1823"),
                "tyre-front-pressure" => Reads(point, "240 kPa"),
                "tyre-rear-pressure" => Reads(point, "270 kPa"),
                "front-pads" => Reads(point, "4.2 mm", "4.2 mm", "4.2 mm", "4.2 mm"),
                "rear-pads" => Reads(point, "4.2 mm", "4.2 mm"),
                "coolant-level" or "oil-level" => Reads(point, "0.75"),
                "chain-slack" => Reads(point, "60 mm", "37 mm"),
                "chain-round" => Reads(point, [.. Enumerable.Repeat("23 mm", 12)]),
                "axle-alignment" => Vouches(point)
                    .ReadsSides(["29.0 mm", "29.0 mm", "29.0 mm"], ["29.0 mm", "29.0 mm", "29.0 mm"]),
                "axle-nut" => Tightens(point, "110 N·m"),
                "drain-plug" => Tightens(point, "29 N·m"),
                "oil-first-fill" => Reads(point, "3 US qt"),
                "throttle-free-play" => Reads(point, "3 mm", "3 mm", "3 mm"),
                _ when Bench.Book.Points[point].Reading.Places is { Count: > 0 } things => Reads(
                    point,
                    [.. things.Select(_ => "yes")]
                ),
                _ => Reads(point),
            }
        ).Marks(point);
}
