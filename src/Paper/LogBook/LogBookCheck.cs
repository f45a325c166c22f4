using System.Text;
using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Paper.LogBook;

/// <summary>Checks a log book file against its own hashes.</summary>
internal static class LogBookCheck
{
    public static LogBookFinding Of(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            return Of(document.RootElement);
        }
        catch (JsonException broken)
        {
            return BeginsAsOne(text)
                ? new(
                    LogBookWord.Truncated,
                    $"The end of the file is missing: it breaks off after {text.Length} characters."
                )
                : Unreadable($"it is not JSON ({broken.Message})");
        }
        catch (FormatException strange)
        {
            return Unreadable(strange.Message);
        }
    }

    /// <summary>Whether everything up to the end is right so far, and names of the format stand first, in their order.</summary>
    private static bool BeginsAsOne(string text)
    {
        if (
            !text.StartsWith("{\"arrived\":", StringComparison.Ordinal)
            && !text.StartsWith("{\"chains\":", StringComparison.Ordinal)
        )
            return false;
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(text), isFinalBlock: false, state: default);
        try
        {
            while (reader.Read()) { }
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static LogBookFinding Of(JsonElement file)
    {
        if (file.ValueKind != JsonValueKind.Object || TextOf(file, "format") != LogBookFile.Format)
            return Unreadable($"it does not say that it is a \"{LogBookFile.Format}\"");
        if (!file.TryGetProperty("version", out var version) || version.ToString() != $"{LogBookFile.Version}")
            return Unreadable($"its version is {version}; this program reads version {LogBookFile.Version}");
        if (!file.TryGetProperty("entries", out var entries) || entries.ValueKind != JsonValueKind.Array)
            return Missing("the entries are");
        return Changed(entries) ?? Missing(file, entries.GetArrayLength()) ?? Sealed(file);
    }

    private static LogBookFinding? Changed(JsonElement entries)
    {
        var read = new List<Entry>();
        foreach (var json in entries.EnumerateArray())
        {
            try
            {
                read.Add(EntryJson.Read(json));
            }
            catch (MalformedEntry malformed)
            {
                return ChangedAt(TextOf(json, "id"), malformed.Message);
            }
        }
        // A device writes entries of other jobs between these: a gap in its numbers is no fault here.
        var fault = ChainCheck.Of(read).FirstOrDefault(f => f.Kind is not ChainFaultKind.Gap);
        return fault is null ? null : new(LogBookWord.Changed, fault.Says, fault.Entry.Id);
    }

    private static LogBookFinding? Missing(JsonElement file, int there)
    {
        if (!file.TryGetProperty("count", out var counted) || !counted.TryGetInt32(out var count))
            return Missing("the count of the entries is");
        return there < count ? Missing($"{count - there} of {count} entries are")
            : there > count ? new(LogBookWord.Changed, $"The file counts {count} entries, but {there} stand in it.")
            : null;
    }

    private static LogBookFinding Sealed(JsonElement file)
    {
        if (TextOf(file, "head") is not { } head)
            return Missing("the seal is");
        var open = LogBookFile.Value(json =>
        {
            foreach (var member in file.EnumerateObject().Where(m => m.Name != "head"))
                member.WriteTo(json);
        });
        return LogBookFile.HeadOf(open) == head
            ? new(LogBookWord.Intact, "The file is as it was written. Compare its seal with the paper.", Head: head)
            : new(
                LogBookWord.Changed,
                "Something outside of the entries was changed: the content does not fit the seal."
            );
    }

    private static LogBookFinding ChangedAt(string? id, string why) =>
        new(LogBookWord.Changed, $"Entry {id ?? "without an id"} was changed: {why}", id);

    private static LogBookFinding Missing(string what) =>
        new(LogBookWord.Truncated, $"The file is not whole: {what} missing.");

    private static LogBookFinding Unreadable(string why) =>
        new(LogBookWord.Unreadable, $"This is no log book that can be read: {why}.");

    private static string? TextOf(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object
        && json.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.String
            ? value.GetString()
            : null;
}
