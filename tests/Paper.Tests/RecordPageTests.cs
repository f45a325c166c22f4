using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Record;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>The record for the owner: one file that asks for nothing and runs nothing, and says what the sheet says.</summary>
public sealed partial class RecordPageTests
{
    [Fact]
    public void Every_point_stands_on_it_with_its_limit_and_what_it_was_left_at()
    {
        var page = Page(FullJob.Released);
        Assert.All(FullJob.Released.Points, p => Assert.Contains($">{HtmlText(p.Point.Title)}</p>", page));
        foreach (var point in FullJob.Released.Points.Where(p => p.IsMeasured() || p.IsTightened()))
        {
            Assert.Contains(HtmlText(PointWords.Limit(point)), page);
            Assert.Contains(HtmlText(PointWords.LeftAt(point)), page);
        }
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\" onerror=\"alert(1)")]
    [InlineData("'><img src=x>")]
    [InlineData("</style></title><svg onload=alert(1)>")]
    [InlineData("&lt;script&gt;")]
    public void Whatever_people_wrote_stays_text(string evil)
    {
        var page = Page(Written(evil));
        Assert.DoesNotMatch("<script|<img src=x|<svg onload", page);
        // outside of quotes nothing of it is left
        Assert.DoesNotMatch("<[a-z][^<>]*onerror=", Regex.Replace(page, "\"[^\"]*\"", ""));
        Assert.Contains(HtmlText(evil), page);
        Assert.Equal(Tags(Page(Written("plain"))), Tags(page));
    }

    [Fact]
    public void It_asks_nobody_for_anything_and_runs_nothing()
    {
        var page = Page(Photographed());
        Assert.DoesNotMatch("(?i)<(script|link|iframe|object|embed|form|a|base)[ >]", page);
        Assert.DoesNotMatch(@"(?i)\son[a-z]+=", page);
        Assert.DoesNotMatch("(?i)@import|url\\(", page);
        Assert.All(Source().Matches(page), s => Assert.StartsWith("data:image/jpeg;base64,", s.Groups[1].Value));
        // the name of SVG's namespace is an address that nobody opens
        Assert.DoesNotContain(
            "//",
            page.Replace("http://www.w3.org/2000/svg", "").Replace(Inside(page), "").Replace(RecordPage.Policy, "")
        );
    }

    // W3C Content Security Policy Level 3, 2.3.1: the hash of the style element's text
    [Fact]
    public void Its_policy_allows_its_own_style_and_nothing_else()
    {
        var page = Page(FullJob.Released);
        var css = Style().Match(page).Groups[1].Value;
        var hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(css)));
        Assert.Contains($"default-src 'none'; style-src 'sha256-{hash}'; img-src data:;", page);
        Assert.Contains(RecordPage.Policy, page);
    }

    [Fact]
    public void It_has_a_language_a_title_and_one_heading_of_the_first_kind()
    {
        var page = Page(FullJob.Released);
        Assert.StartsWith("<!doctype html>\n<html lang=\"en\">", page);
        Assert.Contains("<title>Fell 640, ready to ride</title>", page);
        Assert.Single(Regex.Matches(page, "<h1"));
        Assert.Contains("name=\"viewport\"", page);
        Assert.Contains("prefers-color-scheme: dark", page);
        Assert.Contains("@media print", page);
    }

    [Fact]
    public void Text_is_read_from_the_side_that_its_letters_ask_for()
    {
        var page = Page(Written("אופנוע של דנה"));
        Assert.Contains("dir=\"auto\">אופנוע של דנה", page);
        Assert.DoesNotMatch("<(p|h1|h2)[^>]*(?<!dir=\"auto\")>[^<]", page);
    }

    [Fact]
    public void A_photograph_is_inside_with_its_words_and_the_hash_of_the_stored_one()
    {
        var page = Page(Photographed());
        Assert.Contains(
            $"base64,{Convert.ToBase64String(TinyPicture.Plain)}\" width=\"16\" height=\"12\" alt=\"the bar\"",
            page
        );
        Assert.Contains(TinyPicture.Sha256, page);
        Assert.Contains("The picture is not at the shop.", Page(Photographed(), none: true));
    }

    [Fact]
    public void The_seal_stands_on_it_whole_and_the_key_that_signed()
    {
        var head = LogBookFile.Head(FullJob.Released, Bench640.Workbench);
        Assert.Contains($">{head}</p>", Page(FullJob.Released));
        var signed = RecordPage.Html(FullJob.Released, Bench640.Workbench, FullJob.Day, TestSeals.Harrow);
        Assert.Contains($"key {TestSeals.Harrow.Key.Id}", signed);
    }

    [Fact]
    public void A_held_job_says_so_first_and_names_nobody_as_releasing()
    {
        var page = Page(FullJob.Held);
        Assert.Contains("Fell 640, not released", page);
        Assert.Contains("Do not ride it", page);
        Assert.All(FullJob.Held.Holds, h => Assert.Contains(HtmlText(h.Words), page));
        Assert.DoesNotContain("Released by", page);
    }

    [Fact]
    public void Controls_that_a_page_cannot_hold_are_left_out() =>
        Assert.Contains(">a line  and more<", Page(Written("a line \u0000\u001b and more")));

    private static string Page(JobState state, bool none = false) =>
        RecordPage.Html(
            state,
            Bench640.Workbench,
            FullJob.Day,
            pictures: hash => !none && hash == TinyPicture.Sha256 ? TinyPicture.Plain : null
        );

    private static JobState Written(string text) =>
        Photographed(text) with
        {
            Arrival = Bench640.Arrival with { Machine = Machine with { Name = text }, Purpose = text },
            Release = FullJob.Signed(text),
            Notes = [new Note(Fact(Bench.Record.EntryKind.Note, new { text }), text)],
        };

    private static JobState Photographed(string shows = "the bar") =>
        FullJob.Released with
        {
            Photographs =
            [
                new Photograph(
                    Fact(Bench.Record.EntryKind.Photograph, new { shows }),
                    "",
                    null,
                    new(TinyPicture.Sha256, 16, 12, TinyPicture.Plain.Length),
                    shows
                ),
            ],
        };

    private static string HtmlText(string text) => System.Net.WebUtility.HtmlEncode(text);

    private static string Inside(string page) => Source().Match(page).Groups[1].Value;

    /// <summary>The elements in their order, without what stands in them.</summary>
    private static string Tags(string page) =>
        string.Concat(Regex.Matches(page, "</?[a-z0-9]+").Where(t => !t.Value.EndsWith("rect")).Select(t => t.Value));

    [GeneratedRegex("src=\"([^\"]*)\"")]
    private static partial Regex Source();

    [GeneratedRegex("<style>(.*?)</style>", RegexOptions.Singleline)]
    private static partial Regex Style();
}
