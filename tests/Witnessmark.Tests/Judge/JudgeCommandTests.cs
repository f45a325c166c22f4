using System.Text.Json;
using UglyToad.PdfPig;
using Witnessmark.Tests.Calc;

namespace Witnessmark.Tests.Judge;

public class JudgeCommandTests
{
    // readings: common practice, no source; the law: own derivation, docs/handbook/chain-adjustment.md
    [Fact]
    public void The_demo_job_may_go_and_the_terminal_tells_its_story()
    {
        using var job = new JobOnPaper();
        var ended = job.Judged();
        Assert.Equal("", ended.Errors);
        Assert.Equal(0, ended.ExitCode);
        string[] told =
        [
            "Outside by 18 mm. 50 ± 1.2 mm; the maker allows 13 to 32 mm (handbook p. 87).",
            "One turn of both adjusters takes 1050 mm² of slack squared on this machine.",
            "0.19 turn back would bring it to 24.4 mm",
            "0.38 turn further from here would pull the chain taut.",
            "Left adjuster 0.13 turn tighter, right adjuster 0.6 turn back",
            "Unproven: three readings a side settle it",
            "x read again: Chain slack, lower run. Rear axle nut was tightened since: that moves it.",
            "a tight place is beginning",
            "Pour at most 3.15 L",
            "-> To bring it to 75 % between the marks: Add 0.28",
            "Released by Ines Tallow. The machine may go.",
        ];
        Assert.All(told, sentence => Assert.Contains(sentence, ended.Output));
    }

    [Fact]
    public void A_slack_left_outside_holds_the_machine()
    {
        using var job = new JobOnPaper(("read = [\"60 mm\", \"41 mm\"]", "read = [\"75 mm\", \"25 mm\"]"));
        var ended = job.Judged();
        Assert.Equal(4, ended.ExitCode);
        Assert.Contains("Before it can go (1):", ended.Output);
        Assert.Contains("Chain slack, lower run: outside by 18 mm", ended.Output);
        Assert.DoesNotContain("Released by", ended.Output);
    }

    [Fact]
    public void A_slack_not_read_again_after_the_nut_holds_the_machine()
    {
        using var job = new JobOnPaper(
            ("[[steps]]\npoint = \"chain-slack\"\nread = [\"60 mm\", \"41 mm\"]\nmark = true\n", "")
        );
        var ended = job.Judged();
        Assert.Equal(4, ended.ExitCode);
        Assert.Contains("Chain slack, lower run: read again. Rear axle nut was tightened since", ended.Output);
    }

    [Theory]
    [InlineData("\"75 mm\", \"25 mm\"", "\"75 mm\", \"apples\"", "it does not begin with a number")]
    [InlineData("\"75 mm\", \"25 mm\"", "\"75 mm\", \"25 kPa\"", "is in kPa, which cannot be read here")]
    [InlineData("\"4.20 mm\"", "\"42.0 mm\"", "42 mm makes no sense here. Did you mean 4.2 mm?")]
    [InlineData("point = \"rear-pads\"", "point = \"rear-pad\"", "right would be \"rear-pads\"")]
    [InlineData("machine = \"fell-640-0412\"", "machine = \"fell-640-0413\"", "there is no machine \"fell-640-0413\"")]
    [InlineData("purpose = \"handover\"", "purpose = \"hand-over\"", "right would be \"handover\"")]
    [InlineData("turned = \"2\"", "turned = \"two\"", "turns in quotes, tightening positive")]
    [InlineData("[job]", "[job", "TOML:")]
    [InlineData("shop = \"../shop.toml\"", "shop = \"../shed.toml\"", "there is no file \"../shed.toml\"")]
    public void A_mistake_is_named_with_its_line_and_nothing_is_judged(string old, string @new, string said)
    {
        using var job = new JobOnPaper((old, @new));
        var ended = job.Judged();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(said, ended.Errors);
        Assert.Contains($"412.toml:{job.LineOf(@new)}:", ended.Errors);
        Assert.Equal("", ended.Output);
        Assert.False(Directory.Exists(job.Out));
    }

    [Fact]
    public void All_mistakes_come_at_once()
    {
        using var job = new JobOnPaper(
            ("\"75 mm\", \"25 mm\"", "\"75 mm\", \"apples\""),
            ("point = \"rear-pads\"", "point = \"rear-pad\""),
            ("added = \"0.28 L\"", "added = \"0.28 mm\"")
        );
        Assert.Contains("3 mistakes; nothing was judged.", job.Judged().Errors);
    }

    [Fact]
    public void A_value_that_looks_ten_times_off_is_taken_when_somebody_is_sure()
    {
        using var job = new JobOnPaper(("read = \"238 kPa\"", "read = \"23.8 kPa\"\nsure = true"));
        Assert.Equal(4, job.Judged().ExitCode);
    }

    [Fact]
    public void A_sheet_without_a_needed_figure_is_named()
    {
        using var job = new JobOnPaper();
        var sheet = Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "sheets", "fell-640.toml");
        File.WriteAllText(
            sheet,
            File.ReadAllText(sheet).Replace("[figures.\"chain.slack\"]", "[figures.\"chain.slick\"]")
        );
        var ended = job.Judged();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("chain.slack", ended.Errors);
        Assert.Contains("fell-640.toml", ended.Errors);
    }

    [Fact]
    public void A_shops_own_book_is_judged_by()
    {
        using var job = new JobOnPaper(("book = \"../../book\"", "book = \"../../book\"\nown-book = \"../ours\""));
        var missing = job.Judged();
        Assert.Equal(2, missing.ExitCode);
        Assert.Contains("there is no folder \"../ours\"", missing.Errors);
        var ours = Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "ours")).FullName;
        File.WriteAllText(
            Path.Combine(ours, "leaks.toml"),
            "[points.leaks]\ntitle = \"Leaks, our way\"\nguards = \"use\"\nhands = \"1 min\"\nreading = { kind = \"seen\", see = [\"dry\"], words = \"Look.\" }\n"
        );
        Assert.Contains("Leaks, our way", job.Judged().Output);
    }

    // the demo machine is cooled by liquid; told otherwise, it has no such point
    [Fact]
    public void A_point_that_the_machine_does_not_have_is_no_point_of_its_job()
    {
        using var job = new JobOnPaper();
        var sheet = Path.Combine(Path.GetDirectoryName(job.JobFile)!, "..", "sheets", "fell-640.toml");
        File.WriteAllText(sheet, File.ReadAllText(sheet).Replace("cooled = \"liquid\"", "cooled = \"air\""));
        var ended = job.Judged();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains("\"coolant-level\" is no point of this job", ended.Errors);
    }

    [Fact]
    public void The_text_of_the_handover_sheet_agrees_with_the_log_book()
    {
        using var job = new JobOnPaper();
        job.Judged();
        var log = JsonDocument.Parse(File.ReadAllText(Path.Combine(job.Out, "log-book-412.json"))).RootElement;
        using var pdf = PdfDocument.Open(Path.Combine(job.Out, "handover-412.pdf"));
        var text = Words(string.Join(" ", pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text)));
        Assert.Contains("InesTallow", text);
        foreach (var point in log.GetProperty("visits")[0].GetProperty("points").EnumerateArray())
            Assert.Contains(Words(point.GetProperty("title").GetString()!), text);
    }

    [Fact]
    public void A_log_book_with_one_digit_changed_is_told_apart()
    {
        using var job = new JobOnPaper();
        job.Judged();
        var book = Path.Combine(job.Out, "log-book-412.json");
        Assert.Equal(0, RealProgram.Run("", "verify", book).ExitCode);
        File.WriteAllText(book, File.ReadAllText(book).Replace("12380 km", "12381 km"));
        var changed = RealProgram.Run("", "verify", book);
        Assert.Equal(1, changed.ExitCode);
        Assert.Contains("412-5", changed.Output);
        File.WriteAllText(book, File.ReadAllText(book)[..200]);
        Assert.NotEqual(0, RealProgram.Run("", "verify", book).ExitCode);
    }

    // lines break in the PDF where they fit; only the letters are compared
    private static string Words(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
