using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Record;

namespace Witnessmark.Browser.Tests;

/// <summary>Visits of the demo shop's first machine over the years: a tyre that wears and is renewed, pads, a chain that is adjusted.</summary>
public static class PastVisits
{
    private const string Device = "d-past";
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
    public static IEnumerable<string> Batches(int visits)
    {
        List<Entry> entries = [];
        for (var i = 0; i < visits; i++)
            Visit(entries, i, visits);
        return entries
            .Chunk(EntriesInBatch)
            .Select(chunk =>
                $"{{\"protocol\":1,\"device\":\"{Device}\",\"epoch\":1,\"entries\":[{string.Join(',', chunk.Select(e => EntryJson.Write(e).GetRawText()))}]}}"
            );
    }

    private static void Visit(List<Entry> entries, int number, int of)
    {
        var day = new DateOnly(2026, 4, 20).AddDays(-(of - number) * 7);
        var km = 1000 + (long)((11840.0 - 1000) * number / of);
        var machine = new Machine(
            "fell-640-0412",
            "Fell 640",
            "GZ0FE64C8RH000412",
            2024,
            "fell-640",
            null,
            null,
            null,
            "Tarnmoor"
        );
        var worn = number % TyreLasts / TyreLasts;
        Add(
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
        Read("tyre-rear-tread", "tread-gauge", Repeated(3, 6.5 - 4.5 * worn));
        Read("tyre-front-tread", "tread-gauge", Repeated(3, 5.5 - 2.5 * worn));
        Read("front-pads", "calliper", Repeated(4, 4.5 - 2 * worn));
        Read("rear-pads", "calliper", Repeated(2, 4.5 - 2.2 * worn));
        Read("chain-slack", "steel-rule", "60 mm", Text(38 - 4 * worn));
        Read("tyre-front-pressure", "pressure-gauge", "240 kPa");
        Read("tyre-rear-pressure", "pressure-gauge", "270 kPa");
        foreach (var point in Points.Skip(1).Take(7))
            Add(EntryKind.Mark, EntryBody.Mark(point));

        void Read(string point, string with, params string[] raw) =>
            Add(EntryKind.Reading, EntryBody.Reading(point, raw, null, with));

        void Add(string kind, JsonElement body)
        {
            var seq = entries.Count + 1;
            var draft = new EntryDraft(
                $"past-{seq}",
                "harrow-lane",
                $"p{number}",
                kind,
                body,
                null,
                null,
                $"{day:yyyy-MM-dd}T09:00:00.000+00:00",
                "Bram Okello"
            );
            entries.Add(Entries.Sealed(draft, Device, 1, seq, entries.LastOrDefault()?.Hash));
        }
    }

    private static string[] Repeated(int places, double value) => [.. Enumerable.Repeat(Text(value), places)];

    private static string Text(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.0} mm");
}
