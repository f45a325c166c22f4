using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Paper.LogBook;

/// <summary>Checks one visit against its own hashes: its entries, their number, its seal.</summary>
internal static class VisitCheck
{
    /// <summary>What is wrong, or null.</summary>
    public static LogBookFinding? Of(JsonElement visit)
    {
        if (!visit.TryGetProperty("entries", out var entries) || entries.ValueKind != JsonValueKind.Array)
            return Missing("the entries are");
        return Changed(entries) ?? Missing(visit, entries.GetArrayLength()) ?? Sealed(visit);
    }

    public static LogBookFinding Missing(string what) =>
        new(LogBookWord.Truncated, $"The file is not whole: {what} missing.");

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
                var id = LogBookCheck.TextOf(json, "id");
                return new(LogBookWord.Changed, $"Entry {id ?? "without an id"} was changed: {malformed.Message}", id);
            }
        }
        // A device writes entries of other jobs between these: a gap in its numbers is no fault here.
        var fault = ChainCheck.Of(read).FirstOrDefault(f => f.Kind is not ChainFaultKind.Gap);
        return fault is null ? null : new(LogBookWord.Changed, fault.Says, fault.Entry.Id);
    }

    private static LogBookFinding? Missing(JsonElement visit, int there)
    {
        if (!visit.TryGetProperty("count", out var counted) || !counted.TryGetInt32(out var count))
            return Missing("the count of the entries is");
        return there < count ? Missing($"{count - there} of {count} entries are")
            : there > count ? new(LogBookWord.Changed, $"The file counts {count} entries, but {there} stand in it.")
            : null;
    }

    private static LogBookFinding? Sealed(JsonElement visit)
    {
        if (LogBookCheck.TextOf(visit, "head") is not { } head)
            return Missing("the seal is");
        var open = LogBookFile.Value(json =>
        {
            foreach (var member in visit.EnumerateObject().Where(m => m.Name is not "head" and not "signature"))
                member.WriteTo(json);
        });
        return LogBookFile.HeadOf(open) == head
            ? null
            : new(
                LogBookWord.Changed,
                "Something outside of the entries was changed: the content does not fit the seal."
            );
    }
}
