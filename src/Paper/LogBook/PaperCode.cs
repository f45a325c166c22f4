namespace Witnessmark.Paper.LogBook;

/// <summary>Compares the code on a paper, as it was scanned, with a log book.</summary>
public static class PaperCode
{
    private const string Plain = "witnessmark job:";
    private const string SealIn = " log-book-sha256:";

    /// <summary>What is wrong with the code, or null where it belongs to the last visit of the file.</summary>
    /// <param name="code">The text that was scanned.</param>
    /// <param name="logBook">A file that was found whole.</param>
    public static LogBookFinding? Fault(string code, string logBook)
    {
        var visits = EarlierVisits.In(logBook);
        var last = visits.Visits[^1];
        var head = LogBookFile.HeadIn(last);
        if (code.StartsWith(Plain, StringComparison.Ordinal))
            return code == $"{Plain}{LogBookCheck.TextOf(last, "job")}{SealIn}{head}" ? null : Another;
        try
        {
            var jws = Jws.Read(code.Trim());
            var key = visits.Keys.FirstOrDefault(k => k.Id == jws.KeyId);
            return key?.Verifies(jws.Signed, jws.Signature) != true
                    ? new(
                        LogBookWord.Changed,
                        "The code on the paper was changed: its signature does not fit what it says."
                    )
                : jws.Says("head") == head ? null
                : Another;
        }
        catch (FormatException strange)
        {
            return new(LogBookWord.Changed, $"The code on the paper is none of a handover sheet: {strange.Message}");
        }
    }

    private static LogBookFinding Another =>
        new(LogBookWord.Changed, "The code on the paper belongs to another record than this file.");
}
