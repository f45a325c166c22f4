using System.Text.Json;
using Witnessmark.Ledger;

namespace Witnessmark.Serve;

/// <summary>The envelope round a batch of entries. The entries themselves are never a reason to refuse it.</summary>
public static class BatchJson
{
    private const int MostEntries = 200;
    private const int LongestDevice = 200;

    /// <summary>The batch, or the answer that says what is wrong with the envelope.</summary>
    public static (Batch? Batch, IResult? Refused) Read(JsonElement json, Protocols spoken)
    {
        if (json.ValueKind != JsonValueKind.Object)
            return (null, Failure.Of(400, $"A batch is an object, not {json.ValueKind}."));
        if (!spoken.Has(Whole(json, "protocol")))
            return (null, Failure.Of(400, $"This server speaks {spoken}; load the page again."));
        if (Device(json) is not { } device)
            return (
                null,
                Failure.Of(400, $"\"device\" must be text of 1 to {LongestDevice} characters without U+0000.")
            );
        if (Whole(json, "epoch") is not >= 1 and var epoch)
            return (null, Failure.Of(400, $"\"epoch\" is {epoch}; a whole number from 1 is allowed."));
        if (!json.TryGetProperty("entries", out var entries) || entries.ValueKind != JsonValueKind.Array)
            return (null, Failure.Of(400, "\"entries\" must be a list."));
        if (entries.GetArrayLength() > MostEntries)
            return (null, Failure.Of(413, $"{entries.GetArrayLength()} entries; at most {MostEntries} at once."));
        return (new(device, Whole(json, "epoch")!.Value, [.. entries.EnumerateArray()]), null);
    }

    private static string? Device(JsonElement json)
    {
        if (!json.TryGetProperty("device", out var value) || value.ValueKind != JsonValueKind.String)
            return null;
        try
        {
            return value.GetString() is { Length: > 0 and <= LongestDevice } device && !device.Contains('\0')
                ? device
                : null;
        }
        catch (InvalidOperationException)
        {
            return null; // half a surrogate pair
        }
    }

    private static int? Whole(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.Number
        && value.TryGetInt32(out var whole)
            ? whole
            : null;
}
