using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Handover;

namespace Witnessmark.Paper.LogBook;

/// <summary>Writes what a log book holds.</summary>
internal static class LogBookContent
{
    private static readonly string[] Known = ["format", "keys", "paper", "signature", "version", "visits"];

    /// <summary>Members of a file that this program does not know. They are kept and signed as they are.</summary>
    public static IReadOnlyDictionary<string, JsonElement> OthersIn(JsonElement file) =>
        file.EnumerateObject().Where(m => !Known.Contains(m.Name)).ToDictionary(m => m.Name, m => m.Value);

    /// <summary>The file of all visits, in canonical form.</summary>
    public static string File(EarlierVisits whole, ShopSeal? seal, IReadOnlyList<string>? paper)
    {
        var lines = paper is null ? (JsonElement?)null : Lines(paper);
        var keys = seal is null ? whole.Keys : [.. whole.Keys, seal.Key];
        return CanonicalJson.Of(
            LogBookFile.Value(json =>
            {
                json.WriteString("format", LogBookFile.Format);
                json.WriteNumber("version", LogBookFile.Version);
                Array(json, "visits", whole.Visits, v => v.WriteTo(json));
                Array(json, "keys", keys.Distinct().OrderBy(k => k.Id, StringComparer.Ordinal), k => k.Write(json));
                Member(json, "paper", lines);
                foreach (var (name, value) in whole.Others)
                    Member(json, name, value);
                Text(json, "signature", seal is null ? null : Whole(whole, lines, seal));
            })
        );
    }

    /// <summary>What the signature over the file binds of a part: its hash, or null where there is none.</summary>
    public static string? HeadOf(JsonElement? part) => part is { } there ? LogBookFile.HeadOf(there) : null;

    /// <summary>The members that this program does not know as one object; null when there are none.</summary>
    public static JsonElement? Together(IReadOnlyDictionary<string, JsonElement> others) =>
        others.Count == 0
            ? null
            : LogBookFile.Value(json =>
            {
                foreach (var (name, value) in others)
                    Member(json, name, value);
            });

    /// <summary>The signature over the file: which visits it holds, in which order, and what the paper around it says.</summary>
    private static string Whole(EarlierVisits whole, JsonElement? paper, ShopSeal seal) =>
        seal.Signed(json =>
        {
            Array(json, "heads", whole.Visits, v => json.WriteStringValue(LogBookFile.HeadIn(v)));
            Text(json, "paper", HeadOf(paper));
            Text(json, "others", HeadOf(Together(whole.Others)));
        });

    private static void Member(Utf8JsonWriter json, string name, JsonElement? value)
    {
        if (value is not { } there)
            return;
        json.WritePropertyName(name);
        there.WriteTo(json);
    }

    private static JsonElement Lines(IReadOnlyList<string> paper) =>
        LogBookFile.Value(json => Array(json, "lines", paper, json.WriteStringValue));

    /// <summary>One visit. By itself, with its seal, it is a log book of version 1.</summary>
    public static void Visit(Utf8JsonWriter json, JobState state, Workbench bench)
    {
        json.WriteString("format", LogBookFile.Format);
        json.WriteNumber("version", 1);
        json.WriteString("job", state.Job);
        Object(json, "workshop", () => Texts(json, ("id", bench.Workshop.Id), ("name", bench.Workshop.Name)));
        if (state.Arrival is { } arrival)
            Write(json, arrival);
        Text(json, "released", state.Release?.Names);
        Array(json, "holds", state.Holds.Select(h => h.Words.ToString()), json.WriteStringValue);
        Array(json, "points", state.Points, p => Write(json, p));
        // absent where there is none: the seals of jobs that knew no findings stay what they were
        if (state.Findings.Count > 0)
            Array(json, "findings", state.Findings, f => Write(json, f));
        Array(json, "entries", state.Entries, e => EntryJson.Write(json, e));
        json.WriteNumber("count", state.Entries.Count);
        Object(json, "chains", () => Chains(json, state.Entries));
    }

    private static void Write(Utf8JsonWriter json, Arrival arrival)
    {
        var machine = arrival.Machine;
        Object(
            json,
            "machine",
            () =>
                Texts(
                    json,
                    ("id", machine.Id),
                    ("name", machine.Name),
                    ("vin", machine.Vin),
                    ("frame", machine.Frame),
                    ("plate", machine.Plate),
                    ("year", machine.Year?.ToString(CultureInfo.InvariantCulture))
                )
        );
        Object(
            json,
            "sheet",
            () =>
            {
                Texts(json, ("id", arrival.Sheet.Id), ("name", arrival.Sheet.Name));
                json.WriteNumber("revision", arrival.Sheet.Revision);
            }
        );
        Texts(json, ("purpose", arrival.Purpose), ("arrived", arrival.At));
    }

    private static void Write(Utf8JsonWriter json, PointState point)
    {
        json.WriteStartObject();
        Texts(
            json,
            ("point", point.Point.Id),
            ("title", point.Point.Title),
            ("state", Spoken.Of(point.Stripe)),
            ("limit", point.Figure?.Short),
            ("origin", point.Figure is null ? null : PointWords.Origin(point)),
            ("vouchedBy", point.Vouched?.Name),
            ("found", point.Found is { } found ? PointWords.Shown(found) : null),
            ("leftAt", point.Current is { } now ? PointWords.Shown(now) : null),
            ("grounds", point.Current?.Opinion.Grounds),
            ("leftBecause", point.Left?.Why)
        );
        json.WriteBoolean("safety", point.Point.Safety);
        Array(json, "corrections", point.Corrections.Select(c => c.Words.ToString()), json.WriteStringValue);
        Array(json, "notes", point.Notes.Select(n => n.Text), json.WriteStringValue);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Finding finding)
    {
        json.WriteStartObject();
        Texts(
            json,
            ("finding", finding.Id),
            ("point", finding.Point.Length > 0 ? finding.Point : null),
            ("what", finding.What),
            ("urgency", finding.Urgency.InWords()),
            ("estimate", finding.Estimate?.Total.ToString()),
            ("decision", FindingWords.Decided(finding)),
            ("outcome", FindingWords.Outcome(finding))
        );
        Array(json, "photographs", finding.Photographs.Select(p => p.Picture.Sha256), json.WriteStringValue);
        json.WriteEndObject();
    }

    /// <summary>The last entry of this job in each device's chain.</summary>
    private static void Chains(Utf8JsonWriter json, IEnumerable<Entry> entries)
    {
        foreach (var chain in entries.GroupBy(e => e.Chain).OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            var last = chain.MaxBy(e => e.Seq)!;
            json.WriteStartObject(chain.Key);
            json.WriteNumber("seq", last.Seq);
            json.WriteString("hash", last.Hash);
            json.WriteEndObject();
        }
    }

    private static void Object(Utf8JsonWriter json, string name, Action members)
    {
        json.WriteStartObject(name);
        members();
        json.WriteEndObject();
    }

    private static void Array<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
            write(item);
        json.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter json, params ReadOnlySpan<(string Name, string? Value)> members)
    {
        foreach (var (name, value) in members)
            Text(json, name, value);
    }

    private static void Text(Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
            json.WriteString(name, value);
    }
}
