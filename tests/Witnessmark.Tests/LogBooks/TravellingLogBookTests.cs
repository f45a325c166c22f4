using System.Diagnostics;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Witnessmark.Tests.Calc;
using Witnessmark.Tests.Judge;
using Witnessmark.Tests.Serve;

namespace Witnessmark.Tests.LogBooks;

/// <summary>A machine comes from one invented workshop to another, and its log book with it.</summary>
public sealed class TravellingLogBookTests : IDisposable
{
    private readonly TempFolder there = new();
    private readonly TempFolder here = new();
    private readonly JobOnPaper job = new(("number = \"412\"", "number = \"88\""));

    [Fact]
    public void The_sheet_is_checked_against_the_keys_that_are_known()
    {
        var sheet = SignedSheet();
        var strange = Verify(sheet);
        Assert.Equal(3, strange.ExitCode);
        Assert.Contains("is not known here", strange.Output);
        Trust();
        var known = Verify(sheet, "--keys", Path.Combine(here.Path, "keys"));
        Assert.Equal((0, ""), (known.ExitCode, known.Errors));
        Assert.Matches("job 88, Harrow Lane Motorcycles: signed by quay", known.Output);
    }

    [Fact]
    public void A_digit_changed_in_the_visible_text_is_told()
    {
        var sheet = SignedSheet();
        var plain = Path.Combine(here.Path, "plain.pdf");
        using (var unpacked = Process.Start("qpdf", ["--qdf", "--object-streams=disable", sheet, plain]))
            unpacked.WaitForExit();
        var text = Encoding.Latin1.GetString(File.ReadAllBytes(plain));
        // Two glyphs of the first text on the page change places: the file stays a good PDF and says something else.
        var changed = new Regex("<([0-9a-f]{4})([0-9a-f]{4})([0-9a-f]*)> Tj").Replace(text, "<$2$1$3> Tj", 1);
        Assert.NotEqual(text, changed);
        File.WriteAllBytes(plain, Encoding.Latin1.GetBytes(changed));
        var found = Verify(plain);
        Assert.Equal(1, found.ExitCode);
        Assert.Contains("where its record says \"Fell 640, ready to ride\"", found.Output);
    }

    [Fact]
    public void A_code_of_another_paper_is_told()
    {
        var sheet = SignedSheet();
        using var other = new JobOnPaper(("number = \"412\"", "number = \"89\""));
        RealProgram.Run("", "judge", other.JobFile, "--out", other.Out, "--key", Key(there.Path));
        var code = VisitsOf(Path.Combine(other.Out, "log-book-89.json"))[0].GetProperty("signature").GetString()!;
        var found = Verify(sheet, "--code", code);
        Assert.Equal(1, found.ExitCode);
        Assert.Contains("another record", found.Output);
    }

    [Fact]
    public void A_changed_log_book_is_not_kept()
    {
        SignedSheet();
        var file = Path.Combine(job.Out, "log-book-88.json");
        File.WriteAllText(file, File.ReadAllText(file).Replace("\"60 mm\"", "\"61 mm\""));
        var refused = RealProgram.Run("", "log-book", "keep", file, "--data", here.Path);
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("was changed", refused.Output);
        Assert.Contains("Nothing was kept.", refused.Errors);
        Assert.False(Directory.Exists(Path.Combine(here.Path, "log-books")));
    }

    [Fact]
    public async Task The_next_workshop_goes_on_from_it_and_both_signatures_stay_checkable()
    {
        var sheet = SignedSheet();
        Trust();
        using var shop = RunningShop.Serve(here.Path);
        var kept = RealProgram.Run("", "log-book", "keep", sheet, "--data", here.Path);
        Assert.Equal((0, ""), (kept.ExitCode, kept.Errors));
        Assert.Contains("1 visit.", kept.Output);
        await PostTheDemoJob(shop);
        var pdf = Path.Combine(here.Path, "next.pdf");
        var stop = TestContext.Current.CancellationToken;
        var sheetNow = await shop.Client.GetByteArrayAsync("/api/jobs/412/handover.pdf?paper=letter", stop);
        await File.WriteAllBytesAsync(pdf, sheetNow, stop);
        var found = Verify(pdf, "--keys", Path.Combine(here.Path, "keys"));
        Assert.Equal((0, ""), (found.ExitCode, found.Errors));
        Assert.Matches("job 88.*signed by quay[^\n]*\n  job 412.*signed by this workshop", found.Output);
        Assert.Equal(3, Verify(pdf).ExitCode);
        var wrong = await shop.Client.GetAsync("/api/jobs/412/handover.pdf?paper=a5", stop);
        Assert.Equal(400, (int)wrong.StatusCode);
    }

    // RFC 6266: kept by its job's name, and shown by the browser all the same
    [Theory]
    [InlineData("412", "handover.pdf", "inline; filename=job-412-handover.pdf")]
    [InlineData("412", "log-book.json", "inline; filename=job-412-log-book.json")]
    [InlineData("4%2012%22%C3%A4", "record.html", null)]
    public async Task A_paper_is_named_by_its_job(string job, string paper, string? named)
    {
        using var shop = RunningShop.Serve(here.Path);
        await PostTheDemoJob(shop);
        using var answer = await shop.Client.GetAsync(
            $"/api/jobs/{job}/{paper}",
            TestContext.Current.CancellationToken
        );
        Assert.Equal(named is null ? 404 : 200, (int)answer.StatusCode);
        Assert.Equal(named, answer.Content.Headers.ContentDisposition?.ToString());
    }

    public void Dispose()
    {
        job.Dispose();
        here.Dispose();
        there.Dispose();
    }

    private string SignedSheet()
    {
        var judged = RealProgram.Run("", "judge", job.JobFile, "--out", job.Out, "--key", Key(there.Path));
        Assert.Equal("", judged.Errors);
        return Path.Combine(job.Out, "handover-88.pdf");
    }

    /// <summary>The private key of a workshop, made on first use.</summary>
    private static string Key(string data)
    {
        Assert.Equal(0, RealProgram.Run("", "key", "show", "--data", data).ExitCode);
        return Path.Combine(data, "keys", "shop.json");
    }

    private void Trust()
    {
        var published = Path.Combine(there.Path, "public.json");
        File.WriteAllText(published, RealProgram.Run("", "key", "show", "--data", there.Path).Output);
        var trusted = RealProgram.Run("", "key", "trust", published, "--as", "quay", "--data", here.Path);
        Assert.Equal((0, ""), (trusted.ExitCode, trusted.Errors));
    }

    private static RealProgram.Ended Verify(params string[] arguments) => RealProgram.Run("", ["verify", .. arguments]);

    internal static async Task PostTheDemoJob(RunningShop shop)
    {
        using var demo = new JobOnPaper();
        demo.Judged();
        var entries = VisitsOf(Path.Combine(demo.Out, "log-book-412.json"))[0].GetProperty("entries");
        foreach (var device in entries.EnumerateArray().GroupBy(e => e.GetProperty("device").GetString()))
        {
            var batch = new
            {
                protocol = 1,
                device = device.Key,
                epoch = 1,
                entries = device,
            };
            var reply = await shop.Client.PostAsync(
                "/api/entries",
                JsonContent.Create(batch),
                TestContext.Current.CancellationToken
            );
            Assert.True(
                reply.IsSuccessStatusCode,
                await reply.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)
            );
        }
    }

    private static JsonElement VisitsOf(string logBook)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(logBook));
        return document.RootElement.GetProperty("visits").Clone();
    }
}
