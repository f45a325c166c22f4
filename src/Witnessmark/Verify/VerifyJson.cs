using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Ledger;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Verify;

/// <summary>What was found as one JSON object, for <c>--json</c>: the verdict, and where it is not as it was written.</summary>
internal static class VerifyJson
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Of a log book, or of the handover sheet around it.</summary>
    public static string Of(LogBookFinding finding) =>
        Object(
            Word(finding.Word),
            VerifyCommand.CodeOf(finding.Word),
            finding.Says,
            finding.Word is LogBookWord.Intact or LogBookWord.UnknownKey ? [] : [(finding.Entry, finding.Says)],
            ("visits", new JsonArray([.. (finding.Visits ?? []).Select(v => (JsonNode)Visit(v))]))
        );

    /// <summary>Of a ledger.</summary>
    public static string Of(LedgerFinding finding) =>
        Object(
            finding.Faults.Count == 0 ? "intact" : "changed",
            finding.Faults.Count == 0 ? VerifyCommand.Intact : VerifyCommand.Changed,
            VerifyLedger.Summary(finding),
            finding.Faults.Select(f => ((string?)null, f)),
            ("entries", finding.Entries),
            ("jobs", finding.Jobs),
            ("setAside", finding.SetAside)
        );

    /// <summary>Of what cannot be read at all.</summary>
    public static string Unreadable(string why) => Object("unreadable", VerifyCommand.Unreadable, why, [(null, why)]);

    private static string Object(
        string verdict,
        int code,
        string says,
        IEnumerable<(string? Entry, string Says)> where,
        params ReadOnlySpan<(string Name, JsonNode Value)> more
    )
    {
        var whole = new JsonObject
        {
            ["verdict"] = verdict,
            ["exitCode"] = code,
            ["says"] = says,
            ["where"] = new JsonArray([
                .. where.Select(w => (JsonNode)new JsonObject { ["entry"] = w.Entry, ["says"] = w.Says }),
            ]),
        };
        foreach (var (name, value) in more)
            whole[name] = value;
        return whole.ToJsonString(Readable);
    }

    private static JsonObject Visit(VisitFinding visit) =>
        new()
        {
            ["job"] = visit.Job,
            ["workshop"] = visit.Workshop,
            ["head"] = visit.Head,
            ["keyId"] = visit.KeyId,
            ["keyName"] = visit.KeyName,
        };

    private static string Word(LogBookWord word) =>
        word switch
        {
            LogBookWord.Intact => "intact",
            LogBookWord.UnknownKey => "unknown-key",
            LogBookWord.Changed => "changed",
            LogBookWord.Truncated => "truncated",
            LogBookWord.Unreadable => "unreadable",
            _ => throw new ArgumentOutOfRangeException(nameof(word), word, "A finding without a word."),
        };
}
