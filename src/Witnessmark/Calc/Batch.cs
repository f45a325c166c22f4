using System.Text.Json;
using System.Text.Unicode;
using Witnessmark.Handbook.Catalogue;

namespace Witnessmark.Calc;

/// <summary><c>calc stream</c>: one request a line in, one reply a line out, in the same order.</summary>
/// <remarks>A broken line costs its own reply only. What is written leaves the program whenever the input pauses.</remarks>
public static class Batch
{
    private static readonly Input<JsonElement> Id = new(
        "id",
        "text or number",
        "comes back with the reply",
        (e, _) => e
    );
    private static readonly Input<string> Name = Take.Words("calculation", "name of the calculation");
    private static readonly Input<JsonElement> Request = new("given", "object", "the request", (e, _) => e);
    private static readonly Input[] Keys = [Id, Name, Request];

    public static int Run(Stream input, Stream output)
    {
        var lines = new Lines(input);
        using var buffered = new BufferedStream(output, 1 << 16);
        using var writer = new Utf8JsonWriter(buffered, JsonText.Line);
        do
        {
            while (lines.TryTake(out var line))
            {
                if (line.Span.Trim(" \t\r"u8).IsEmpty)
                    continue;
                Answer(line, writer);
                writer.Flush();
                buffered.WriteByte((byte)'\n');
                writer.Reset();
            }
            buffered.Flush();
        } while (lines.ReadMore());
        return ExitCode.Ok;
    }

    private static void Answer(ReadOnlyMemory<byte> line, Utf8JsonWriter writer)
    {
        try
        {
            using var parsed = JsonDocument.Parse(line);
            Answer(parsed.RootElement, IsText(parsed.RootElement, line.Span), writer);
        }
        catch (JsonException failure)
        {
            var where = $"byte {failure.BytePositionInLine + 1}";
            Write(writer, null, Reply.Wrong($"not JSON, {where}: {JsonText.FirstSentence(failure)}."));
        }
    }

    private static void Answer(JsonElement line, bool readable, Utf8JsonWriter writer)
    {
        if (!readable)
            Write(writer, null, Reply.Wrong(BrokenText.Complaint));
        else
            Write(writer, IdOf(line), Ask(line));
    }

    // Only an escape can break text that is valid UTF-8, and escapes are rare: the walk is for them alone.
    private static bool IsText(JsonElement parsed, ReadOnlySpan<byte> line) =>
        Utf8.IsValid(line) && (line.IndexOf("\\u"u8) < 0 || !BrokenText.In(parsed));

    private static JsonElement? IdOf(JsonElement line) =>
        line.ValueKind == JsonValueKind.Object && line.TryGetProperty(Id.Name, out var id) ? id : null;

    private static Reply Ask(JsonElement line)
    {
        try
        {
            var given = new Given(line, "", Keys);
            var name = given.Of(Name);
            return Calculations.Named(name) is { } calculation
                ? WavPath.Ask(calculation, given.Of(Request))
                : Reply.Wrong(Calc.Ask.Unknown(name));
        }
        catch (MalformedGiven malformed)
        {
            return Reply.Wrong(malformed.Message);
        }
    }

    private static void Write(Utf8JsonWriter writer, JsonElement? id, Reply reply)
    {
        writer.WriteStartObject();
        writer.WritePropertyName("id"u8);
        if (id is { } known)
            known.WriteTo(writer);
        else
            writer.WriteNullValue();
        if (reply is { Malformed: null, Refusal: null })
        {
            writer.WritePropertyName("gives"u8);
            reply.Outputs!.WriteTo(writer);
        }
        else
            foreach (var (name, value) in reply.ToJson())
            {
                writer.WritePropertyName(name);
                value!.WriteTo(writer);
            }
        writer.WriteEndObject();
    }
}
