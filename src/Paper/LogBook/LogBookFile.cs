using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Paper.LogBook;

/// <summary>The log book: a machine's visits as an open file that travels with it and that any shop can read, check and continue.</summary>
/// <remarks>
/// <para><b>Format.</b> Canonical JSON (RFC 8785) in UTF-8; every measured value is text. Described field by field in docs/log-book.md.</para>
/// <para><b>Seal.</b> A visit's <c>head</c> is the SHA-256 of the canonical JSON of everything else in it, in lower-case hex. Its
/// <c>signature</c> is a JWS over job, workshop and head; the code on the handover sheet is the same text. The file's own
/// <c>signature</c> binds the heads of all visits and the lines of the paper.</para>
/// </remarks>
public static class LogBookFile
{
    /// <summary>The name of the format, first thing in the file that a program looks at.</summary>
    public const string Format = "witnessmark log book";

    /// <summary>The version of the format that is written here. Version 1, one visit without signature, is still read.</summary>
    public const int Version = 2;

    /// <summary>The file's text.</summary>
    /// <param name="state">The job.</param>
    /// <param name="bench">The workbench that it was judged at.</param>
    /// <param name="seal">What the shop signs with; null: unsigned.</param>
    /// <param name="earlier">Visits before this one, oldest first; they are taken over as they are, with all that stands in them.</param>
    /// <param name="paper">The lines of the sheet that carries the file, or null.</param>
    public static string Write(
        JobState state,
        Workbench bench,
        ShopSeal? seal = null,
        EarlierVisits? earlier = null,
        IEnumerable<string>? paper = null
    )
    {
        var visit = Visit(state, bench, seal);
        earlier ??= EarlierVisits.None;
        IReadOnlyList<JsonElement> visits = [.. earlier.Visits.Where(v => HeadIn(v) != HeadIn(visit)), visit];
        return LogBookContent.File(earlier with { Visits = visits }, seal, paper?.ToList());
    }

    /// <summary>The file of visits that are kept for later, unsigned as a whole: each visit keeps its own signature.</summary>
    public static string Write(EarlierVisits visits) => LogBookContent.File(visits, null, null);

    /// <summary>The seal of a job's visit, as the handover sheet prints it.</summary>
    public static string Head(JobState state, Workbench bench) =>
        HeadOf(Value(json => LogBookContent.Visit(json, state, bench)));

    /// <summary>The signature of a job's visit, as the code on the handover sheet holds it.</summary>
    public static string Signature(string job, string workshop, string head, ShopSeal seal) =>
        seal.Signed(json =>
        {
            json.WriteString("head", head);
            json.WriteString("job", job);
            json.WriteString("workshop", workshop);
        });

    /// <summary>Whether a file is as it was written. Never throws on what a file may hold.</summary>
    public static LogBookFinding Verify(string text, KnownKeys? keys = null) =>
        LogBookCheck.Of(text, keys ?? KnownKeys.None);

    /// <summary>A visit with its seal and signature.</summary>
    public static JsonElement Visit(JobState state, Workbench bench, ShopSeal? seal)
    {
        var head = Head(state, bench);
        return Value(json =>
        {
            LogBookContent.Visit(json, state, bench);
            json.WriteString("head", head);
            if (seal is not null)
                json.WriteString("signature", Signature(state.Job, bench.Workshop.Id, head, seal));
        });
    }

    /// <summary>The seal over a visit's content without its fields <c>head</c> and <c>signature</c>.</summary>
    internal static string HeadOf(JsonElement content) => EntryHash.OfText(CanonicalJson.Of(content));

    internal static string? HeadIn(JsonElement visit) =>
        visit.TryGetProperty("head", out var head) ? head.GetString() : null;

    internal static JsonElement Value(Action<Utf8JsonWriter> members)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            members(json);
            json.WriteEndObject();
        }
        using var document = JsonDocument.Parse(buffer.WrittenMemory);
        return document.RootElement.Clone();
    }
}
