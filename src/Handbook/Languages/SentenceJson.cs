using System.Text.Json;
using System.Text.Json.Serialization;

namespace Witnessmark.Handbook.Languages;

/// <summary>A sentence in a file or between programs: English, as it was before there were languages.</summary>
public sealed class SentenceJson : JsonConverter<Sentence>
{
    /// <inheritdoc/>
    public override Sentence Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Sentence.Of(reader.GetString());

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Sentence value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value.ToString());
}
