using System.Text.Json;
using System.Text.Json.Serialization;

namespace Witnessmark.Handbook.Languages;

/// <summary>A sentence in a file or between programs: English, as it was before there were languages.</summary>
internal sealed class SentenceJson : JsonConverter<Sentence>
{
    public override Sentence Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Sentence.Of(reader.GetString());

    public override void Write(Utf8JsonWriter writer, Sentence value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
