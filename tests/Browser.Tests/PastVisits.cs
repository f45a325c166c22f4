using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;

namespace Witnessmark.Browser.Tests;

/// <summary>Visits of the demo shop's first machine over the years: a tyre that wears and is renewed, pads, a chain that is adjusted.</summary>
public static class PastVisits
{
    private const int EntriesInBatch = 200;
    private const double TyreLasts = 8; // visits

    private static readonly string[] Points =
    [
        "identity",
        "distance",
        "tyre-front-tread",
        "tyre-rear-tread",
        "front-pads",
        "rear-pads",
        "chain-slack",
        "tyre-front-pressure",
        "tyre-rear-pressure",
        "leaks",
    ];

    /// <summary>Batches as they are posted.</summary>
    /// <param name="visits">How many.</param>
    /// <param name="like">0: the demo's own machine; else another one of its figure sheet, whose tyre wears slower with each number.</param>
    public static IEnumerable<string> Batches(int visits, int like = 0)
    {
        List<Entry> entries = [];
        for (var i = 0; i < visits; i++)
            Visit(entries, i, visits, like);
        return Batches(entries);
    }

    /// <summary>A visit of the demo's machine that was released, with three photographs that the shop never got.</summary>
    public static IEnumerable<string> Released()
    {
        List<Entry> entries = [];
        var write = new Writing(entries, "d-released", "r1", new(2026, 5, 4));
        write.Add(
            EntryKind.Arrival,
            EntryBody.Arrival(Fell.Id, "fell-640", 4, "handover", [new("distance", "each visit")], known: Fell)
        );
        write.Add(EntryKind.Reading, EntryBody.Reading("distance", ["11900 km"], null, "odometer"));
        write.Add(EntryKind.Mark, EntryBody.Mark("distance"));
        foreach (var (number, shows) in new[] { "rear tyre", "chain", "left side" }.Index())
            write.Add(
                EntryKind.Photograph,
                EntryBody.Photograph(null, null, new(new string((char)('a' + number), 64), 1600, 1200, 90_000), shows)
            );
        write.Add(EntryKind.Release, EntryBody.Release("Bram Okello"));
        return Batches(entries);
    }

    /// <summary>A visit of the demo's machine of which everything is done and nobody has signed.</summary>
    public static IEnumerable<string> Unsigned()
    {
        List<Entry> entries = [];
        var write = new Writing(entries, "d-unsigned", "u1", new(2026, 5, 4));
        write.Add(
            EntryKind.Arrival,
            EntryBody.Arrival(Fell.Id, "fell-640", 4, "handover", [new("distance", "each visit")], known: Fell)
        );
        write.Add(EntryKind.Reading, EntryBody.Reading("distance", ["11900 km"], null, "odometer"));
        write.Add(EntryKind.Mark, EntryBody.Mark("distance"));
        return Batches(entries);
    }

    private static Machine Fell { get; } =
        new("fell-640-0412", "Fell 640", "GZ0FE64C8RH000412", 2024, "fell-640", null, null, null, "Tarnmoor");

    private static IEnumerable<string> Batches(List<Entry> entries) =>
        entries
            .Chunk(EntriesInBatch)
            .Select(chunk =>
                $"{{\"protocol\":1,\"device\":\"{chunk[0].Device}\",\"epoch\":1,\"entries\":[{string.Join(',', chunk.Select(e => EntryJson.Write(e).GetRawText()))}]}}"
            );

    private static void Visit(List<Entry> entries, int number, int of, int like)
    {
        var day = new DateOnly(2026, 4, 20).AddDays(-(of - number) * 7);
        var km = 1000 + (long)((11840.0 - 1000) * number / of);
        var machine = like == 0 ? Fell : Fell with { Id = $"like-{like}", Vin = "" };
        var write = new Writing(entries, $"d-past-{like}", $"p{(like == 0 ? "" : $"{like}-")}{number}", day);
        var worn = number % TyreLasts / TyreLasts;
        write.Add(
            EntryKind.Arrival,
            EntryBody.Arrival(
                machine.Id,
                "fell-640",
                4,
                "handover",
                Points.Select(p => new PlannedPoint(p, "each visit")),
                known: machine
            )
        );
        Read("distance", "odometer", $"{km} km");
        Read("tyre-rear-tread", "tread-gauge", Repeated(3, 6.5 - (4.5 - 0.3 * like) * worn));
        Read("tyre-front-tread", "tread-gauge", Repeated(3, 5.5 - 2.5 * worn));
        Read("front-pads", "calliper", Repeated(4, 4.5 - 2 * worn));
        Read("rear-pads", "calliper", Repeated(2, 4.5 - 2.2 * worn));
        Read("chain-slack", "steel-rule", "60 mm", Text(38 - 4 * worn));
        Read("tyre-front-pressure", "pressure-gauge", "240 kPa");
        Read("tyre-rear-pressure", "pressure-gauge", "270 kPa");
        foreach (var point in Points.Skip(1).Take(7))
            write.Add(EntryKind.Mark, EntryBody.Mark(point));

        void Read(string point, string with, params string[] raw) =>
            write.Add(EntryKind.Reading, EntryBody.Reading(point, raw, null, with));
    }

    /// <summary>One job on one device.</summary>
    private sealed record Writing(List<Entry> Entries, string Device, string Job, DateOnly Day)
    {
        public void Add(string kind, JsonElement body)
        {
            var seq = Entries.Count + 1;
            var draft = new EntryDraft(
                $"{Device}-{seq}",
                "harrow-lane",
                Job,
                kind,
                body,
                null,
                null,
                $"{Day:yyyy-MM-dd}T09:00:00.000+00:00",
                "Bram Okello"
            );
            Entries.Add(Bench.Record.Entries.Sealed(draft, Device, 1, seq, Entries.LastOrDefault()?.Hash));
        }
    }

    private static string[] Repeated(int places, double value) => [.. Enumerable.Repeat(Text(value), places)];

    private static string Text(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.0} mm");
}
