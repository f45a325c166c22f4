using System.Text.Json;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Record;

namespace Witnessmark.Browser.Tests;

/// <summary>A job with the points that a device can read by itself, and one that a second person reads again, as another device would have opened it.</summary>
internal static partial class InstrumentJob
{
    public const string Number = "i1";
    private const string Device = "d-instruments";

    private static readonly string[] Points =
    [
        "belt-tone",
        "idle-speed",
        "spokes",
        "oil-level",
        "headlamp-aim",
        "axle-nut",
        "distance",
    ];

    /// <summary>The batch as it is posted: the job opened, nothing done.</summary>
    public static string[] Batch { get; } = [Written(false)];

    /// <summary>The same with the axle nut tightened and marked by the one who opened it.</summary>
    public static string[] Tightened { get; } = [Written(true)];

    private static string Written(bool tightened)
    {
        List<Entry> entries = [];
        Add(
            EntryKind.Arrival,
            EntryBody.Arrival(
                "fell-640-0412",
                "fell-640",
                4,
                "service",
                Points.Select(p => new PlannedPoint(p, "asked for")),
                secondCheck: ["axle-nut", "distance"]
            )
        );
        if (tightened)
        {
            Add(EntryKind.Reading, EntryBody.Reading("axle-nut", ["110 N·m"], null, "torque-wrench-120"));
            Add(EntryKind.Mark, EntryBody.Mark("axle-nut"));
        }
        var all = string.Join(',', entries.Select(e => EntryJson.Write(e).GetRawText()));
        return $"{{\"protocol\":1,\"device\":\"{Device}\",\"epoch\":1,\"entries\":[{all}]}}";

        void Add(string kind, JsonElement body) =>
            entries.Add(
                Entries.Sealed(
                    new(
                        $"{Device}-{entries.Count + 1}",
                        "harrow-lane",
                        Number,
                        kind,
                        body,
                        null,
                        null,
                        "2026-11-28T09:00:00.000+00:00",
                        "Bram Okello"
                    ),
                    Device,
                    1,
                    entries.Count + 1,
                    entries.LastOrDefault()?.Hash
                )
            );
    }
}
