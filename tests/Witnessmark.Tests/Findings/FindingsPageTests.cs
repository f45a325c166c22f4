using System.Net;
using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.Findings;

/// <summary>docs/findings.md: its example as it stands there, on the terminal, on the estimate sheet and on the handover sheet.</summary>
public sealed class FindingsPageTests : IDisposable
{
    private static readonly string Page = File.ReadAllText(
        Path.Combine(AppContext.BaseDirectory, "Guides", "findings.md")
    );
    private readonly JobOnPaper job = new();

    // By hand: 64.90 + 2 · 1.15 + 0.25 · 18.50 = 4.625, a half upwards 4.63; 40 min at 78.00 an hour = 52.00; together 123.83;
    // 19 % of it 23.5277, 23.53; 147.36. Rules of rounding: EN 16931-1:2017 as the page cites it.
    [Fact]
    public void The_example_is_reckoned_to_the_cent()
    {
        Append(Example());
        var ended = RealProgram.Run("", "estimate", job.JobFile, "--out", job.Out);
        Assert.Equal((0, ""), (ended.ExitCode, ended.Errors));
        foreach (var amount in (string[])["64.90", "2.30", "4.63", "52.00", "23.53", "147.36"])
            Assert.Contains($"{amount}", ended.Output);
        var sheet = Text("estimate-412.pdf");
        Assert.Contains("147.36", sheet);
        Assert.Contains("Rearbrakehoseiscrackedatthebanjo", sheet);
        Assert.Contains("Leftforksealsweats", sheet);
    }

    [Fact]
    public void What_the_owner_declined_stands_on_the_handover_sheet_in_plain_words()
    {
        Append(Example());
        var ended = job.Judged();
        Assert.Equal("", ended.Errors);
        var sheet = Text("handover-412.pdf");
        Assert.Contains("Reartyrehasacutdowntothecords", sheet);
        Assert.Contains("NoraVance", sheet);
        Assert.Contains("injureorkill", sheet);
    }

    [Fact]
    public void A_declined_one_that_nobody_acknowledged_holds_the_machine()
    {
        Append(Example().Replace("acknowledged = true", "acknowledged = false"));
        Assert.Contains("Rear tyre has a cut down to the cords", job.Judged().Output);
    }

    [Fact]
    public void Without_findings_there_is_nothing_to_estimate()
    {
        var ended = RealProgram.Run("", "estimate", job.JobFile, "--out", job.Out);
        Assert.Equal(3, ended.ExitCode);
        Assert.Contains("has no findings", ended.Errors);
    }

    [Theory]
    [InlineData("urgency = \"before riding\"", "urgency = \"soon\"", "\"soon\"")]
    [InlineData("quantity = \"2\"", "quantity = \"-2\"", "\"-2\"")]
    [InlineData("price = \"64.90\"", "price = \"64.901\"", "64.901")]
    [InlineData("means = \"telephone\"", "means = \"pigeon\"", "\"pigeon\"")]
    [InlineData("point = \"brake-hoses\"", "point = \"brake-hozes\"", "brake-hozes")]
    [InlineData("by = \"Nora Vance\"\nmeans = \"telephone\"", "means = \"telephone\"", "by")]
    public void A_mistake_is_told(string old, string wrong, string told)
    {
        var example = Example();
        Assert.Contains(old, example);
        var at = example.IndexOf(old, StringComparison.Ordinal);
        Append(example[..at] + wrong + example[(at + old.Length)..]);
        var ended = job.Judged();
        Assert.Equal(2, ended.ExitCode);
        Assert.Contains(told, ended.Errors);
    }

    [Fact]
    public async Task The_server_gives_the_sheet_and_says_what_it_has_not()
    {
        var cancel = TestContext.Current.CancellationToken;
        using var folder = new TempFolder();
        using var shop = RunningShop.Serve(folder.Path);
        using var sheet = await shop.Client.GetAsync("/api/jobs/412/estimate.pdf?paper=letter", cancel);
        Assert.Equal("application/pdf", sheet.Content.Headers.ContentType!.MediaType);
        using var pdf = PdfDocument.Open(await sheet.Content.ReadAsByteArrayAsync(cancel));
        Assert.Equal(612, pdf.GetPage(1).Width, 0.5);
        using var nobody = await shop.Client.GetAsync("/api/jobs/999/estimate.pdf", cancel);
        Assert.Equal(HttpStatusCode.NotFound, nobody.StatusCode);
        using var paper = await shop.Client.GetAsync("/api/jobs/412/estimate.pdf?paper=A5", cancel);
        Assert.Equal(HttpStatusCode.BadRequest, paper.StatusCode);
    }

    public void Dispose() => job.Dispose();

    private static string Example() =>
        Regex
            .Match(Page, "```toml findings\n(.*?)```", RegexOptions.Singleline)
            .Groups[1]
            .Value.Replace("photographs = [\"hose.jpg\"]", "");

    private void Append(string text) => File.AppendAllText(job.JobFile, "\n" + text);

    private string Text(string sheet)
    {
        using var pdf = PdfDocument.Open(Path.Combine(job.Out, sheet));
        return Regex.Replace(string.Concat(pdf.GetPages().Select(p => p.Text)), @"\s", "");
    }
}
