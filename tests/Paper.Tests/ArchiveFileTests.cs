using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using FsCheck.Xunit;
using UglyToad.PdfPig;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>
/// The sheet as a file for the archive: ISO 19005-3 (PDF/A-3), level A, by its structure, and by two independent programs, qpdf and
/// poppler. No validator of the standard can be installed from the registries that the tests may use.
/// </summary>
public sealed class ArchiveFileTests
{
    public static TheoryData<string> Papers => ["A4", "Letter"];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Qpdf_finds_nothing_wrong(string paper)
    {
        var said = Run("qpdf", "--check", Print(FullJob.Released, paper));
        Assert.Contains("No syntax or stream encoding errors found", said);
        Assert.DoesNotContain("WARNING", said);
        Assert.DoesNotContain("WARNING", Run("qpdf", "--qdf --object-streams=disable", Print(FullJob.Released, paper)));
    }

    [Fact]
    public void It_says_what_it_is_and_binds_the_log_book_as_its_source()
    {
        var text = Encoding.Latin1.GetString(Print(FullJob.Released));
        // ISO 19005-3, 6.6.4 and annex E; 6.2.3 the output intent
        Assert.Contains("<pdfaid:part>3</pdfaid:part>", text);
        Assert.Contains("<pdfaid:conformance>A</pdfaid:conformance>", text);
        Assert.Matches(@"/AF\[\d+ 0 R\]", text);
        Assert.Contains("/AFRelationship/Source", text);
        Assert.Contains("/Subtype/application#2Fjson", text);
        Assert.Contains("/S/GTS_PDFA1", text);
        Assert.Contains("/MarkInfo", text);
        Assert.DoesNotContain("/Encrypt", text);
        Assert.DoesNotContain("/JavaScript", text);
    }

    [Fact]
    public void Dates_in_the_metadata_and_in_the_head_are_the_sheets_day()
    {
        var text = Encoding.Latin1.GetString(Print(FullJob.Released));
        Assert.Contains("<xmp:CreateDate>2026-11-27T00:00:00+00:00</xmp:CreateDate>", text);
        Assert.Contains("/CreationDate(D:20261127000000+00'00')", text);
    }

    [Fact]
    public void Every_font_is_embedded_and_knows_its_letters()
    {
        var fonts = Run("pdffonts", "", Print(FullJob.Released)).Split('\n')[2..].Where(l => l.Length > 0).ToList();
        Assert.Equal(2, fonts.Count);
        Assert.All(fonts, f => Assert.Matches(@"CID TrueType\s+Identity-H\s+yes yes yes", f));
    }

    [Fact]
    public void It_is_tagged_with_one_title_headings_tables_and_pictures_in_words()
    {
        var tags = Run("pdfinfo", "-struct-text", Print(FullJob.Released));
        Assert.Equal(1, Count(tags, @"^\s*H1 "));
        Assert.True(Count(tags, @"^\s*H2 ") >= 4);
        Assert.Equal(
            4,
            Count(
                tags[tags.IndexOf("Table", StringComparison.Ordinal)..tags.IndexOf("TD", StringComparison.Ordinal)],
                @"^\s*TH\b"
            )
        );
        var raw = Encoding.Latin1.GetString(Print(FullJob.Released));
        Assert.Equal(Count(raw, "/S/Figure"), Count(raw, @"/S/Figure/K[^>]*?/Alt\([^)]"));
    }

    /// <summary>ISO 14289-1, 7.1: each mark is in the tree or declared an artifact.</summary>
    [Fact]
    public void Every_letter_stands_within_a_tag_or_an_artifact()
    {
        using var document = PdfDocument.Open(Print(FullJob.Released));
        foreach (var page in document.GetPages())
            Assert.Equal(page.Letters.Count, page.GetMarkedContents().Sum(Letters));
    }

    [Property(MaxTest = 40)]
    public void Sheet_and_log_book_agree_whatever_the_job_holds(string name, string note, byte points, decimal found)
    {
        var figure = Figure(13, 32);
        var state = FullJob.Of(
            [
                .. Enumerable
                    .Range(0, points % 7)
                    .Select(i =>
                        State(
                            Point($"p{i}", $"{name} {i}"),
                            figure,
                            Stripe.Outside,
                            Reading((double)(found % 1000), 1.2, figure, VerdictWord.Outside)
                        )
                    ),
            ],
            [new Hold(null, Stripe.Unread, Sentence.Of(note))]
        );
        AgreesWithItself(HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day, PaperSize.Letter, TestSeals.Harrow));
    }

    [Fact]
    public void A_sheet_that_says_something_else_than_its_record_is_told_by_the_line()
    {
        var lines = PaperLines.In(Inside(Print(FullJob.Released)))!;
        var seen = Visible(Print(FullJob.Released));
        Assert.Null(PaperLines.Difference(lines, seen));
        var at = seen.IndexOf("25±1.2", StringComparison.Ordinal);
        Assert.Contains("24±1.2", PaperLines.Difference(lines, $"{seen[..at]}24{seen[(at + 2)..]}"));
        Assert.Contains("its record says nothing", PaperLines.Difference(lines, seen + "one more"));
        Assert.NotNull(PaperLines.Difference(lines, seen[..^3]));
    }

    [Fact]
    public void Letters_that_the_font_lacks_stand_as_question_marks_and_stay_in_the_log_book()
    {
        var state = FullJob.Released with { Release = FullJob.Signed("אנה Ω-Śliwa 李") };
        var pdf = Print(state);
        AgreesWithItself(pdf);
        Assert.Contains("???", Visible(pdf));
        Assert.Contains("Śliwa", Visible(pdf));
        Assert.Contains("\"released\":\"אנה Ω-Śliwa 李\"", Inside(pdf));
    }

    private static void AgreesWithItself(byte[] pdf)
    {
        var logBook = Inside(pdf);
        Assert.True(LogBookFile.Verify(logBook, TestSeals.Both).Word is LogBookWord.Intact);
        Assert.Null(PaperLines.Difference(PaperLines.In(logBook)!, Visible(pdf)));
    }

    private static byte[] Print(JobState state, string paper = "A4") =>
        HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day, PaperSize.Named(paper), TestSeals.Harrow);

    private static string Inside(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        Assert.True(document.Advanced.TryGetEmbeddedFiles(out var files));
        return Encoding.UTF8.GetString(Assert.Single(files).Memory.Span);
    }

    private static string Visible(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Concat(document.GetPages().SelectMany(p => p.Letters).Select(l => l.Value.Trim()));
    }

    private static int Letters(UglyToad.PdfPig.Content.MarkedContentElement element) =>
        element.Letters.Count + element.Children.Sum(Letters);

    private static int Count(string text, string pattern) => Regex.Count(text, pattern, RegexOptions.Multiline);

    /// <summary>What a program says about a file.</summary>
    internal static string Run(string program, string option, byte[] pdf)
    {
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, pdf);
            var start = new ProcessStartInfo(program) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in option.Split(' ', StringSplitOptions.RemoveEmptyEntries).Append(path))
                start.ArgumentList.Add(argument);
            using var run = Process.Start(start)!;
            var errors = run.StandardError.ReadToEndAsync();
            var said = run.StandardOutput.ReadToEnd() + errors.Result;
            run.WaitForExit();
            return said;
        }
        finally
        {
            File.Delete(path);
        }
    }
}
