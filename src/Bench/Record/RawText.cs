using System.Text.Json;

namespace Witnessmark.Bench.Record;

/// <summary>Text in JSON that somebody sent and nobody has checked yet.</summary>
public static class RawText
{
    /// <summary>The text of a member; null when it has none that could be kept: such an entry is set aside for it.</summary>
    public static string? In(JsonElement json, string name)
    {
        if (
            json.ValueKind != JsonValueKind.Object
            || !json.TryGetProperty(name, out var value)
            || value.ValueKind != JsonValueKind.String
        )
            return null;
        try
        {
            return value.GetString() is { } text && !text.Contains('\0') ? text : null;
        }
        catch (InvalidOperationException)
        {
            return null; // half a surrogate pair
        }
    }
}
