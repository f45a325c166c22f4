using System.Text;
using System.Text.Json;

namespace Witnessmark.Paper.LogBook;

/// <summary>Checks a log book file against its own hashes and signatures.</summary>
internal static class LogBookCheck
{
    public static LogBookFinding Of(string text, KnownKeys known)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            return Of(document.RootElement, known);
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

    /// <summary>The public keys that a file carries.</summary>
    public static IEnumerable<PublicKey> KeysIn(JsonElement file) =>
        file.TryGetProperty("keys", out var keys) && keys.ValueKind == JsonValueKind.Array
            ? keys.EnumerateArray().Select(PublicKey.Read)
            : [];

    public static string? TextOf(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object
        && json.TryGetProperty(name, out var value)
        && value.ValueKind == JsonValueKind.String
            ? value.GetString()
            : null;

    /// <summary>Whether everything up to the end is right so far, and names of the format stand first, in their order.</summary>
    private static bool BeginsAsOne(string text)
    {
        string[] first = ["{\"arrived\":", "{\"chains\":", $"{{\"format\":\"{LogBookFile.Format}\""];
        if (!first.Any(f => text.StartsWith(f, StringComparison.Ordinal)))
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

    private static LogBookFinding Of(JsonElement file, KnownKeys known)
    {
        if (file.ValueKind != JsonValueKind.Object || TextOf(file, "format") != LogBookFile.Format)
            return Unreadable($"it does not say that it is a \"{LogBookFile.Format}\"");
        var version = file.TryGetProperty("version", out var written) ? written.ToString() : "missing";
        return version switch
        {
            "1" => VisitCheck.Of(file) ?? Whole([new(TextOf(file, "job"), null, TextOf(file, "head")!, null, null)]),
            "2" => OfVisits(file, known),
            _ => Unreadable($"its version is {version}; this program reads versions 1 and {LogBookFile.Version}"),
        };
    }

    private static LogBookFinding OfVisits(JsonElement file, KnownKeys known)
    {
        if (
            !file.TryGetProperty("visits", out var visits)
            || visits.ValueKind != JsonValueKind.Array
            || visits.GetArrayLength() == 0
        )
            return VisitCheck.Missing("the visits are");
        var signatures = new SignatureCheck([.. KeysIn(file)], known);
        var found = new List<VisitFinding>();
        foreach (var visit in visits.EnumerateArray())
        {
            if (visit.ValueKind != JsonValueKind.Object)
                return Unreadable("a visit in it is no object");
            if (VisitCheck.Of(visit) is { } wrong)
                return wrong with { Says = $"Job {TextOf(visit, "job")}: {wrong.Says}" };
            var (read, fault) = signatures.Of(visit);
            if (fault is not null)
                return fault;
            found.Add(read);
        }
        return signatures.OfWhole(file, found) ?? Whole(found);
    }

    private static LogBookFinding Whole(IReadOnlyList<VisitFinding> visits)
    {
        var strangers = visits
            .Where(v => v is { KeyId: not null, KeyName: null })
            .Select(v => v.KeyId)
            .Distinct()
            .ToList();
        var says =
            strangers.Count > 0
                ? $"The file is whole, but the key {string.Join(" and the key ", strangers)} is not known here: ask the workshop for its public key by another way."
            : visits.All(v => v.KeyId is null)
                ? "The file is as it was written. Nobody signed it: compare its seal with the paper."
            : "The file is as it was written, and signed by a known key.";
        return new(
            strangers.Count > 0 ? LogBookWord.UnknownKey : LogBookWord.Intact,
            says,
            null,
            visits[^1].Head,
            visits
        );
    }

    private static LogBookFinding Unreadable(string why) =>
        new(LogBookWord.Unreadable, $"This is no log book that can be read: {why}.");
}
