using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Witnessmark.Client.Device;

/// <summary>What is sent to the shop as JSON. System.Net.Http.Json does the same and would have to be fetched.</summary>
internal static class JsonBody
{
    public static HttpContent Of<T>(T value, JsonTypeInfo<T> type)
    {
        ByteArrayContent body = new(JsonSerializer.SerializeToUtf8Bytes(value, type));
        body.Headers.ContentType = new("application/json");
        return body;
    }
}
