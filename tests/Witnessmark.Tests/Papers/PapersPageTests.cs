using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;

namespace Witnessmark.Tests.Papers;

/// <summary>docs/papers.md: its examples as they stand there, and the commands that it names.</summary>
public sealed partial class PapersPageTests : IDisposable
{
    private static readonly string Page = File.ReadAllText(
        Path.Combine(AppContext.BaseDirectory, "Guides", "papers.md")
    );
    private readonly JobOnPaper job = new();

    [Fact]
    public void The_lines_for_the_shop_can_stand_in_its_file()
    {
        PaperSizeTests.Shop(job, Block("toml shop"));
        var label = Path.Combine(job.Out, "label.pdf");
        Assert.Equal(0, job.Judged().ExitCode);
        Assert.Equal(0, RealProgram.Run("", "label", job.JobFile, "--kind", "key", "--out", label).ExitCode);
        using var sheet = PdfDocument.Open(Path.Combine(job.Out, "handover-412.pdf"));
        Assert.Equal(612, sheet.GetPage(1).Width, 0.5);
        using var tag = PdfDocument.Open(label);
        Assert.Equal(62 / 25.4 * 72, tag.GetPage(1).Width, 0.5);
    }

    [Fact]
    public void The_figure_of_a_sheet_tells_how_far_a_caution_goes()
    {
        var sheet = Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "sheets", "fell-640.toml");
        File.AppendAllText(sheet, "\n" + Block("toml sheet"));
        Append("[[steps]]\npoint = \"rear-pads\"\ndid = \"new pads fitted\"\n");
        job.Judged();
        Assert.Contains("over200km,untiltheyhavebeddedin.(themaker,handbookp.73)", Text("handover-412.pdf"));
    }

    [Fact]
    public void The_example_of_a_label_prints_what_the_program_prints()
    {
        var example = Example().Match(Block("text example"));
        var arguments = example.Groups[1].Value.Replace("412.toml", job.JobFile).Split(' ');
        var ended = RealProgram.Run("", arguments);
        Assert.Equal((3, example.Groups[2].Value), (ended.ExitCode, ended.Errors));
    }

    [Fact]
    public void Visits_that_the_job_file_names_are_told_of_in_what_to_expect()
    {
        job.Judged();
        var alone = Text("handover-412.pdf");
        Assert.Contains("Frontbrakepads,lining", alone);
        Assert.DoesNotContain("About", alone[alone.IndexOf("Whattoexpect", StringComparison.Ordinal)..]);
        Earlier("391", "2025-11-25", "8380 km", "7.10", "6.6");
        Earlier("401", "2026-03-25", "10380 km", "5.60", "5.1");
        File.WriteAllText(
            job.JobFile,
            File.ReadAllText(job.JobFile).Replace("[job]\n", "earlier = [\"391.toml\", \"401.toml\"]\n\n[job]\n")
        );
        Assert.Equal("", job.Judged().Errors);
        Assert.Contains("Rearbrakepads,lining,limit≥1.5mm:About", Text("handover-412.pdf"));
    }

    [Fact]
    public void A_mistake_in_an_earlier_visit_is_told_with_its_file()
    {
        File.WriteAllText(
            job.JobFile,
            File.ReadAllText(job.JobFile).Replace("[job]\n", "earlier = [\"390.toml\"]\n\n[job]\n")
        );
        var ended = job.Judged();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("390.toml", ended.Errors);
        Assert.Contains("there is no such file", ended.Errors);
    }

    [Theory]
    [InlineData("service", "A8")]
    [InlineData("key", "4x2in")]
    public void A_label_is_put_where_it_is_asked_for(string kind, string size)
    {
        var file = Path.Combine(job.Out, "new", "label.pdf");
        var ended = RealProgram.Run("", "label", job.JobFile, "--kind", kind, "--size", size, "--out", file);
        Assert.Equal((0, $"Label: {file}\n", ""), (ended.ExitCode, ended.Output, ended.Errors));
        using var pdf = PdfDocument.Open(file);
        Assert.Equal(1, pdf.NumberOfPages);
    }

    [Theory]
    [InlineData("--kind", "wheel", "wheel")]
    [InlineData("--size", "A9", "A9")]
    public void Another_kind_or_size_is_told(string option, string value, string said)
    {
        string[] kind = option == "--kind" ? [] : ["--kind", "key"];
        var ended = RealProgram.Run("", ["label", job.JobFile, .. kind, option, value]);
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(said, ended.Errors);
    }

    [Fact]
    public void A_record_is_one_page_with_the_job_in_it()
    {
        var file = Path.Combine(job.Out, "record.html");
        var ended = RealProgram.Run("", "record", job.JobFile, "--out", file);
        Assert.Equal((0, $"Record: {file}\n", ""), (ended.ExitCode, ended.Output, ended.Errors));
        var page = File.ReadAllText(file);
        Assert.Contains("<title>Fell 640, ready to ride</title>", page);
        Assert.Contains("Rear brake pads, lining", page);
        Assert.DoesNotContain("<script", page);
    }

    [Fact]
    public void A_job_with_mistakes_has_no_papers()
    {
        using var wrong = new JobOnPaper(("point = \"rear-pads\"", "point = \"rear-pad\""));
        var file = Path.Combine(wrong.Out, "record.html");
        Assert.Equal(2, RealProgram.Run("", "record", wrong.JobFile, "--out", file).ExitCode);
        Assert.Equal(2, RealProgram.Run("", "label", wrong.JobFile, "--kind", "key", "--out", file).ExitCode);
        Assert.False(File.Exists(file));
    }

    public void Dispose() => job.Dispose();

    private void Append(string steps)
    {
        var text = File.ReadAllText(job.JobFile);
        File.WriteAllText(job.JobFile, text.Replace("[[steps]]\nrelease", $"{steps}\n[[steps]]\nrelease"));
    }

    private void Earlier(string number, string day, string distance, string pads, string tread)
    {
        var text = File.ReadAllText(job.JobFile)
            .Replace("number = \"412\"", $"number = \"{number}\"")
            .Replace("day = 2026-11-25", $"day = {day}")
            .Replace("promised = \"Friday 27 November, 16:00\"\npromised-at = 2026-11-27T16:00:00\n", "")
            .Replace("read = \"12380 km\"", $"read = \"{distance}\"\nsure = true")
            .Replace("read = [\"3.10 mm\", \"3.30 mm\"]", $"read = [\"{pads} mm\", \"{pads} mm\"]")
            .Replace(
                "read = [\"4.8 mm\", \"3.6 mm\", \"4.9 mm\"]",
                $"read = [\"{tread} mm\", \"{tread} mm\", \"{tread} mm\"]"
            );
        File.WriteAllText(Path.Combine(Path.GetDirectoryName(job.JobFile)!, $"{number}.toml"), text);
    }

    private string Text(string file)
    {
        using var pdf = PdfDocument.Open(Path.Combine(job.Out, file));
        return string.Concat(pdf.GetPages().SelectMany(p => p.Letters).Select(l => l.Value.Trim()));
    }

    private static string Block(string language) =>
        Regex
            .Match(Page, $"^```{language}\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)
            .Groups[1]
            .Value;

    [GeneratedRegex(@"^\$ witnessmark ([^\n]*)\n(.*)$", RegexOptions.Singleline)]
    private static partial Regex Example();
}
