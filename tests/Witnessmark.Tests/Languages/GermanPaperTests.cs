using System.Text;
using UglyToad.PdfPig;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;
using Witnessmark.Tests.Papers;

namespace Witnessmark.Tests.Languages;

/// <summary>Papers in German: all of their words, the same record, and proven as the English ones are.</summary>
public sealed class GermanPaperTests : IDisposable
{
    private readonly JobOnPaper job = new();

    private string Sheet => Path.Combine(job.Out, "handover-412.pdf");

    [Fact]
    public void The_handover_sheet_speaks_German_and_says_so()
    {
        Judged("--language", "de");
        var text = Text(Sheet);
        foreach (
            var words in (string[])
                [
                    "Übergabeblatt",
                    "Was wir gefunden und wie wir es verlassen haben",
                    "Kettendurchhang, unteres Trum",
                    "Hinterachsmutter",
                    "beide Spanner",
                    "Hersteller, handbook p. 87",
                    "Vor der nächsten Fahrt",
                    "freigegeben von",
                    "Seite 1 von",
                    "25. November 2026",
                ]
        )
            Assert.Contains(Bare(words), text);
        Assert.Contains("0,", text);
        foreach (var words in (string[])["handover sheet", "What we found", "Left at", "released by"])
            Assert.DoesNotContain(Bare(words), text);
        Assert.Contains("/Lang(de)", Raw(Sheet));
    }

    [Fact]
    public void It_is_verified_by_its_German_words()
    {
        Judged("--language", "de");
        Assert.Equal(0, RealProgram.Run("", "verify", Sheet).ExitCode);
        // the visible words alone, as somebody would who leaves the record inside as it was
        var bytes = File.ReadAllBytes(Sheet);
        Judged("--language", "en");
        Assert.NotEqual(bytes, File.ReadAllBytes(Sheet));
    }

    [Fact]
    public void The_record_inside_is_the_same_in_both()
    {
        Judged();
        var (english, log) = (File.ReadAllBytes(Sheet), File.ReadAllText(Path.Combine(job.Out, "log-book-412.json")));
        Judged("--language", "de");
        Assert.Equal(log, File.ReadAllText(Path.Combine(job.Out, "log-book-412.json")));
        var german = File.ReadAllBytes(Sheet);
        Judged("--language", "de");
        Assert.Equal(german, File.ReadAllBytes(Sheet));
        Judged("--language", "en");
        Assert.Equal(english, File.ReadAllBytes(Sheet));
    }

    [Fact]
    public void The_shop_says_once_in_which_language_its_papers_are_and_one_paper_may_be_another()
    {
        PaperSizeTests.Shop(job, "language = \"de\"");
        Judged();
        Assert.Contains("Übergabeblatt", Text(Sheet));
        Judged("--language", "en");
        Assert.Contains("handoversheet", Text(Sheet));
    }

    [Fact]
    public void A_language_that_there_is_not_is_told_with_those_there_are()
    {
        PaperSizeTests.Shop(job, "language = \"fr\"");
        var ended = RealProgram.Run("", "judge", job.JobFile, "--out", job.Out);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("\"en\" or \"de\"", ended.Errors);
    }

    [Fact]
    public void Label_and_record_speak_German_too()
    {
        var label = Path.Combine(job.Out, "label.pdf");
        Assert.Equal(0, Run("label", job.JobFile, "--kind", "key", "--out", label, "--language", "de"));
        Assert.Contains("FINendetauf", Text(label));
        var record = Path.Combine(job.Out, "record.html");
        Assert.Equal(0, Run("record", job.JobFile, "--out", record, "--language", "de"));
        var page = System.Net.WebUtility.HtmlDecode(File.ReadAllText(record));
        Assert.Contains("<html lang=\"de\">", page);
        Assert.Contains("<h2 dir=\"auto\">Vor der nächsten Fahrt</h2>", page);
        Assert.DoesNotContain("Before you ride", page);
    }

    public void Dispose() => job.Dispose();

    private void Judged(params string[] more) =>
        Assert.Equal(0, RealProgram.Run("", ["judge", job.JobFile, "--out", job.Out, .. more]).ExitCode);

    private static int Run(params string[] arguments) => RealProgram.Run("", arguments).ExitCode;

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private static string Raw(string file) => Bare(Encoding.Latin1.GetString(File.ReadAllBytes(file)));

    private static string Text(string file)
    {
        using var pdf = PdfDocument.Open(file);
        return Bare(string.Concat(pdf.GetPages().Select(p => p.Text)));
    }
}
