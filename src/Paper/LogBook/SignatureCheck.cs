using System.Text.Json;

namespace Witnessmark.Paper.LogBook;

/// <summary>Checks what was signed against what stands in the file.</summary>
/// <param name="keys">The keys in the file.</param>
/// <param name="known">The keys that are trusted here.</param>
internal sealed class SignatureCheck(IReadOnlyList<PublicKey> keys, KnownKeys known)
{
    /// <summary>Who signed a visit; a fault where the signature does not fit it.</summary>
    public (VisitFinding Visit, LogBookFinding? Fault) Of(JsonElement visit)
    {
        var job = LogBookCheck.TextOf(visit, "job");
        var shop = visit.TryGetProperty("workshop", out var workshop) ? workshop : default;
        var found = new VisitFinding(job, LogBookCheck.TextOf(shop, "name"), LogBookFile.HeadIn(visit)!, null, null);
        if (LogBookCheck.TextOf(visit, "signature") is not { } compact)
            return (found, null);
        var (jws, key, fault) = Read(compact, $"of job {job}");
        if (fault is not null)
            return (found, fault);
        return
            jws!.Says("head") == found.Head
            && jws.Says("job") == job
            && jws.Says("workshop") == LogBookCheck.TextOf(shop, "id")
            ? (found with { KeyId = key!.Id, KeyName = known.NameOf(key) }, null)
            : (found, Changed($"The signature of job {job} belongs to another record."));
    }

    /// <summary>What is wrong with the signature of the whole, or null.</summary>
    public LogBookFinding? OfWhole(JsonElement file, IReadOnlyList<VisitFinding> visits)
    {
        if (LogBookCheck.TextOf(file, "signature") is not { } compact)
            return visits.Any(v => v.KeyId is not null) ? VisitCheck.Missing("the signature of the whole is") : null;
        var (jws, _, fault) = Read(compact, "of the whole");
        if (fault is not null)
            return fault;
        var heads =
            jws!.Content.TryGetProperty("heads", out var signed) && signed.ValueKind == JsonValueKind.Array
                ? [.. signed.EnumerateArray().Select(h => h.ToString())]
                : Array.Empty<string>();
        if (!heads.SequenceEqual(visits.Select(v => v.Head)))
            return heads.Length > visits.Count
                ? VisitCheck.Missing($"{heads.Length - visits.Count} of {heads.Length} visits are")
                : Changed("The visits are not those that were signed.");
        JsonElement? paper = file.TryGetProperty("paper", out var lines) ? lines : null;
        return LogBookContent.HeadOf(paper) != jws.Says("paper")
                ? Changed("The lines of the paper are not those that were signed.")
            : LogBookContent.HeadOf(LogBookContent.Together(LogBookContent.OthersIn(file))) != jws.Says("others")
                ? Changed("Something beside the visits was changed after it was signed.")
            : null;
    }

    private (Jws?, PublicKey?, LogBookFinding?) Read(string compact, string which)
    {
        try
        {
            var jws = Jws.Read(compact);
            if (keys.FirstOrDefault(k => k.Id == jws.KeyId) is not { } key)
                return (null, null, VisitCheck.Missing($"the key of the signature {which} ({jws.KeyId}) is"));
            return key.Verifies(jws.Signed, jws.Signature)
                ? (jws, key, null)
                : (null, null, Changed($"The signature {which} does not fit: it or what it signed was changed."));
        }
        catch (FormatException strange)
        {
            return (null, null, Changed($"The signature {which} cannot be read: {strange.Message}"));
        }
    }

    private static LogBookFinding Changed(string says) => new(LogBookWord.Changed, says);
}
