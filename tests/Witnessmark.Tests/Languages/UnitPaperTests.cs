using UglyToad.PdfPig;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;
using Witnessmark.Tests.Papers;

namespace Witnessmark.Tests.Languages;

/// <summary>Papers in the units of whoever reads them: converted, and in brackets what was read, which stays the record.</summary>
public sealed class UnitPaperTests : IDisposable
{
    private readonly JobOnPaper job = new();

    private string Sheet => Path.Combine(job.Out, "handover-412.pdf");

    // by hand with the factors of NIST SP 811 (2008), B.8: 13 mm = 0.51181 in, 32 mm = 1.25984 in, 110 N·m = 81.132 lbf·ft
    [Theory]
    [InlineData("0.52 – 1.25 in (13 – 32 mm)")]
    [InlineData("81.1 lbf·ft (110 N·m)")]
    [InlineData("In brackets and on the rules: as read or printed; that counts.")]
    public void The_sheet_converts_and_keeps_what_was_read(string words)
    {
        Assert.DoesNotContain(Bare(words), Judged());
        Assert.Contains(Bare(words), Judged("--units", "us"));
    }

    [Fact]
    public void What_was_read_in_metric_units_stays_as_it_is_on_a_metric_sheet()
    {
        var asRead = Judged();
        var metric = Judged("--units", "metric");
        Assert.Contains(Bare("13 – 32 mm"), metric);
        Assert.DoesNotContain("in(", metric);
        Assert.Contains("Convertedvaluesarerounded", metric);
        Assert.DoesNotContain("Convertedvaluesarerounded", asRead);
    }

    [Fact]
    public void The_record_inside_is_the_same_and_the_paper_is_proven()
    {
        Judged();
        var log = File.ReadAllText(Path.Combine(job.Out, "log-book-412.json"));
        Judged("--units", "us");
        Assert.Equal(log, File.ReadAllText(Path.Combine(job.Out, "log-book-412.json")));
        Assert.Equal(0, RealProgram.Run("", "verify", Sheet).ExitCode);
    }

    [Fact]
    public void Language_and_units_go_together()
    {
        var text = Judged("--units", "us", "--language", "de");
        Assert.Contains(Bare("0,52 – 1,25 in (13 – 32 mm)"), text);
        Assert.Contains("Umgerechnetesistgerundet", text);
    }

    [Fact]
    public void The_shop_says_once_in_which_units_and_one_paper_may_have_others()
    {
        PaperSizeTests.Shop(job, "units = \"us\"");
        Assert.Contains("0.52–1.25in", Judged());
        Assert.DoesNotContain("0.52–1.25in", Judged("--units", "as-written"));
    }

    [Fact]
    public void Units_that_there_are_not_are_told_with_those_there_are()
    {
        PaperSizeTests.Shop(job, "units = \"imperial\"");
        var ended = RealProgram.Run("", "judge", job.JobFile, "--out", job.Out);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("\"as-written\" or \"metric\" or \"us\"", ended.Errors);
    }

    [Fact]
    public void The_record_for_the_owner_is_converted_too()
    {
        var record = Path.Combine(job.Out, "record.html");
        Assert.Equal(0, RealProgram.Run("", "record", job.JobFile, "--out", record, "--units", "us").ExitCode);
        var page = System.Net.WebUtility.HtmlDecode(File.ReadAllText(record));
        Assert.Contains("0.52 – 1.25 in (13 – 32 mm)", page);
        Assert.Contains("Converted values are rounded", page);
    }

    public void Dispose() => job.Dispose();

    private string Judged(params string[] more)
    {
        Assert.Equal(0, RealProgram.Run("", ["judge", job.JobFile, "--out", job.Out, .. more]).ExitCode);
        using var pdf = PdfDocument.Open(Sheet);
        return Bare(string.Concat(pdf.GetPages().Select(p => p.Text)));
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
