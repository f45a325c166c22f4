using Witnessmark.Paper.LogBook;

namespace Witnessmark.Verify;

/// <summary>Walks the chains of a log book file and says what it found.</summary>
public static class VerifyLogBook
{
    private const int Intact = 0;
    private const int Changed = 1;
    private const int Unreadable = 2;

    /// <summary>The exit code.</summary>
    public static int Run(FileInfo file, TextWriter output, TextWriter errors)
    {
        string text;
        try
        {
            text = File.ReadAllText(file.FullName);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(broken.Message);
            return Unreadable;
        }
        var finding = LogBookFile.Verify(text);
        output.WriteLine(finding.Says);
        return finding.Word switch
        {
            LogBookWord.Intact => Intact,
            LogBookWord.Unreadable => Unreadable,
            _ => Changed,
        };
    }
}
