using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Record;

namespace Witnessmark.Paper.LogBook;

/// <summary>The log book: one job's record as an open file that travels with the machine and that any shop can read and check.</summary>
/// <remarks>
/// <para><b>Format.</b> Canonical JSON (RFC 8785) in UTF-8; every measured value is text. Described field by field in docs/log-book.md.</para>
/// <para><b>Seal.</b> <c>head</c> is the SHA-256 of the canonical JSON of everything else in the file, in lower-case hex. The handover
/// sheet prints it: whoever has the paper can tell whether the file is the one that was handed over.</para>
/// </remarks>
public static class LogBookFile
{
    /// <summary>The name of the format, first thing in the file that a program looks at.</summary>
    public const string Format = "witnessmark log book";

    /// <summary>The version of the format that is written here.</summary>
    public const int Version = 1;

    /// <summary>The file's text.</summary>
    public static string Write(JobState state, Workbench bench)
    {
        var open = Value(json => LogBookContent.Write(json, state, bench, null));
        var head = HeadOf(open);
        return CanonicalJson.Of(Value(json => LogBookContent.Write(json, state, bench, head)));
    }

    /// <summary>The seal of a job's log book, as the handover sheet prints it.</summary>
    public static string Head(JobState state, Workbench bench) =>
        HeadOf(Value(json => LogBookContent.Write(json, state, bench, null)));

    /// <summary>Whether a file is as it was written. Never throws on what a file may hold.</summary>
    public static LogBookFinding Verify(string text) => LogBookCheck.Of(text);

    /// <summary>The seal over a file's content without its field <c>head</c>.</summary>
    internal static string HeadOf(JsonElement content) => EntryHash.OfText(CanonicalJson.Of(content));

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
