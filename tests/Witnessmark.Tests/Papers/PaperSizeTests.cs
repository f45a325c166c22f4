using UglyToad.PdfPig;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;

namespace Witnessmark.Tests.Papers;

/// <summary>What the shop prints on, said once in shop.toml.</summary>
public sealed class PaperSizeTests
{
    // ISO 216: A4 is 210 mm × 297 mm; ANSI/ASME Y14.1 size A: 8.5 in × 11 in = 612 × 792 points
    [Theory]
    [InlineData(null, null, 595)]
    [InlineData("A4", null, 595)]
    [InlineData("Letter", null, 612)]
    [InlineData("Letter", "A4", 595)]
    [InlineData("A4", "Letter", 612)]
    public void The_sheet_is_as_the_shop_says_unless_one_asks_otherwise(string? shop, string? asked, double width)
    {
        using var job = new JobOnPaper();
        if (shop is not null)
            Shop(job, $"paper = \"{shop}\"");
        string[] more = asked is null ? [] : ["--paper", asked];
        Assert.Equal(0, RealProgram.Run("", ["judge", job.JobFile, "--out", job.Out, .. more]).ExitCode);
        using var pdf = PdfDocument.Open(Path.Combine(job.Out, "handover-412.pdf"));
        Assert.Equal(width, pdf.GetPage(1).Width, 0.5);
    }

    // what is handed over is a sheet of paper, printed on both sides
    [Theory]
    [InlineData("A4", "en", "as-written")]
    [InlineData("A4", "en", "us")]
    [InlineData("A4", "de", "as-written")]
    [InlineData("A4", "de", "us")]
    [InlineData("Letter", "en", "as-written")]
    [InlineData("Letter", "en", "us")]
    [InlineData("Letter", "de", "as-written")]
    public void A_whole_handover_takes_two_pages(string paper, string language, string units)
    {
        using var job = new JobOnPaper();
        string[] asked = ["--paper", paper, "--language", language, "--units", units];
        Assert.Equal(0, RealProgram.Run("", ["judge", job.JobFile, "--out", job.Out, .. asked]).ExitCode);
        using var pdf = PdfDocument.Open(Path.Combine(job.Out, "handover-412.pdf"));
        Assert.Equal(2, pdf.NumberOfPages);
    }

    [Theory]
    [InlineData("paper = \"A5\"", "\"A5\"", "\"A4\" or \"Letter\"")]
    [InlineData("paper = \"a4\"", "\"a4\"", "\"A4\" or \"Letter\"")]
    [InlineData("paper = 4", "the number 4", "paper = ")]
    [InlineData("label = \"A9\"", "\"A9\"", "\"A8\" or \"62x29\" or \"70x36\" or \"4x2in\"")]
    public void Another_is_told_with_what_is_allowed(string line, string found, string right)
    {
        using var job = new JobOnPaper();
        Shop(job, line);
        var ended = RealProgram.Run("", "judge", job.JobFile, "--out", job.Out);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("shop.toml:", ended.Errors);
        Assert.Contains(found, ended.Errors);
        Assert.Contains(right, ended.Errors);
    }

    internal static void Shop(JobOnPaper job, string lines)
    {
        var file = Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "shop.toml");
        File.WriteAllText(file, File.ReadAllText(file).Replace("[workshop]\n", $"[workshop]\n{lines}\n"));
    }
}
