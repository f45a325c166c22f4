using Witnessmark.Keys;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Verify;

/// <summary>Checks a log book, or a handover sheet with the log book inside, and says what it found.</summary>
public static class VerifyLogBook
{
    /// <summary>The exit code.</summary>
    /// <param name="file">JSON or PDF.</param>
    /// <param name="keys">Folder with the public keys that are known; null: none.</param>
    /// <param name="code">What was scanned from the paper; null: not compared.</param>
    /// <param name="output">For what was found.</param>
    /// <param name="errors">For what cannot be read.</param>
    /// <param name="json">As one JSON object, whatever was found, and nothing to <paramref name="errors"/>.</param>
    public static int Run(
        FileInfo file,
        string? keys,
        string? code,
        TextWriter output,
        TextWriter errors,
        bool json = false
    )
    {
        try
        {
            var finding = Finding(file, keys, code);
            if (json)
                output.WriteLine(VerifyJson.Of(finding));
            else
                Say(finding, output);
            return VerifyCommand.CodeOf(finding.Word);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or FormatException)
        {
            if (json)
                output.WriteLine(VerifyJson.Unreadable(broken.Message));
            else
                errors.WriteLine(broken.Message);
            return VerifyCommand.Unreadable;
        }
    }

    private static LogBookFinding Finding(FileInfo file, string? keys, string? code)
    {
        var (logBook, sheet) = CarriedLogBook.Read(file);
        var finding = LogBookFile.Verify(logBook, keys is null ? KnownKeys.None : KeyFolder.Known(keys));
        return finding.Visits is null
            ? finding
            : PaperFault(logBook, sheet) ?? (code is null ? null : PaperCode.Fault(code, logBook)) ?? finding;
    }

    private static LogBookFinding? PaperFault(string logBook, string? sheet)
    {
        if (sheet is null)
            return null;
        if (PaperLines.In(logBook) is not { } lines)
            return null; // sheets printed before lines were kept
        return PaperLines.Difference(lines, sheet) is { } difference ? new(LogBookWord.Changed, difference) : null;
    }

    private static void Say(LogBookFinding finding, TextWriter output)
    {
        output.WriteLine(finding.Says);
        foreach (var visit in finding.Visits ?? [])
            output.WriteLine(
                $"  job {visit.Job}, {visit.Workshop ?? "a workshop without a name"}: {Signed(visit)}, seal {visit.Head[..8]} … {visit.Head[^8..]}"
            );
    }

    private static string Signed(VisitFinding visit) =>
        visit.KeyId is null ? "not signed"
        : visit.KeyName is { } name ? $"signed by {name} ({visit.KeyId})"
        : $"signed by the unknown key {visit.KeyId}";
}
