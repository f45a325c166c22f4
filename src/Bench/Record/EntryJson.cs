using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>The form of an entry on the wire and in files: an object with the fields in camel case, absent when null.</summary>
public static class EntryJson
{
    private static readonly HashSet<string> Names =
    [
        "id",
        "shop",
        "job",
        "device",
        "epoch",
        "seq",
        "kind",
        "body",
        "strikes",
        "covers",
        "at",
        "by",
        "devicePrevious",
        "hash",
    ];

    /// <summary>Reads an entry. Its hash is not checked here: see <see cref="EntryHash"/>.</summary>
    /// <exception cref="MalformedEntry">A field is missing, of the wrong type, out of range or unknown. An unknown
    /// field is refused because the hash would not hold it.</exception>
    public static Entry Read(JsonElement json)
    {
        var fields = new EntryFields(json, Names);
        return new(
            fields.Text("id"),
            fields.Text("shop"),
            fields.Text("job"),
            fields.Text("device"),
            fields.Count("epoch"),
            fields.Count("seq"),
            fields.Text("kind"),
            fields.Object("body"),
            fields.TextOrNull("strikes"),
            fields.CountsOrNull("covers"),
            fields.AnyText("at"),
            fields.Text("by"),
            fields.TextOrNull("devicePrevious"),
            fields.Text("hash")
        );
    }

    /// <summary>The entry as a JSON value.</summary>
    public static JsonElement Write(Entry entry) => Value(writer => Write(writer, entry));

    /// <summary>The same as text.</summary>
    public static string Text(Entry entry) => Encoding.UTF8.GetString(Written(writer => Write(writer, entry)).Span);

    /// <summary>Writes the entry as the next value of a writer.</summary>
    public static void Write(Utf8JsonWriter writer, Entry entry)
    {
        writer.WriteStartObject();
        writer.WriteString("id", entry.Id);
        writer.WriteString("shop", entry.Shop);
        writer.WriteString("job", entry.Job);
        writer.WriteString("device", entry.Device);
        writer.WriteNumber("epoch", entry.Epoch);
        writer.WriteNumber("seq", entry.Seq);
        writer.WriteString("kind", entry.Kind);
        writer.WritePropertyName("body");
        entry.Body.WriteTo(writer);
        WriteUnlessNull(writer, "strikes", entry.Strikes);
        WriteCovers(writer, entry.Covers);
        writer.WriteString("at", entry.At);
        writer.WriteString("by", entry.By);
        WriteUnlessNull(writer, "devicePrevious", entry.DevicePrevious);
        writer.WriteString("hash", entry.Hash);
        writer.WriteEndObject();
    }

    /// <summary>A JSON value from what is written.</summary>
    internal static JsonElement Value(Action<Utf8JsonWriter> write)
    {
        using var document = JsonDocument.Parse(Written(write));
        return document.RootElement.Clone();
    }

    private static ReadOnlyMemory<byte> Written(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            write(writer);
        return buffer.WrittenMemory;
    }

    private static void WriteCovers(Utf8JsonWriter writer, IReadOnlyDictionary<string, int>? covers)
    {
        if (covers is null)
            return;
        writer.WriteStartObject("covers");
        foreach (var (chain, seq) in covers.OrderBy(c => c.Key, StringComparer.Ordinal))
            writer.WriteNumber(chain, seq);
        writer.WriteEndObject();
    }

    private static void WriteUnlessNull(Utf8JsonWriter writer, string name, string? value)
    {
        if (value is not null)
            writer.WriteString(name, value);
    }
}
