using System.Text;
using UglyToad.PdfPig;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Findings;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>What stands on the paper, read back out of the PDF and compared with the state of the job.</summary>
public sealed class HandoverSheetTests
{
    [Fact]
    public void Every_safety_point_stands_on_it_with_its_limit_and_what_it_was_left_at()
    {
        var text = Text(Print(FullJob.Released));
        foreach (var point in FullJob.Released.Points.Where(p => p.Point.Safety && (p.IsMeasured() || p.IsTightened())))
        {
            Assert.Contains(Bare(point.Point.Title), text);
            Assert.Contains(Bare(PointWords.Limit(point)), text);
            Assert.Contains(Bare(point.Current!.Opinion.Shown), text);
        }
    }

    [Fact]
    public void A_negative_reading_has_one_minus_sign_on_the_paper_and_a_hyphen_in_the_record()
    {
        var reading = Reading(-0.91, 0.27, Figure(-1, 1));
        var shown = Numerals.WithUncertainty(-0.91, 0.27, Millimetre);
        var state = State(
            Point("axle", "Rear axle", ReadingKind.Sides),
            Figure(-1, 1),
            Stripe.Marked,
            reading with
            {
                Opinion = reading.Opinion with { Shown = shown },
            }
        );
        var job = FullJob.Of([state], []);
        var text = Text(Print(job));
        Assert.Contains("−0.91±0.27mm", text);
        Assert.DoesNotContain("-0.91", text);
        var log = LogBookFile.Write(job, Bench640.Workbench);
        Assert.Contains("\"leftAt\":\"-0.91 ± 0.27 mm\"", log);
    }

    [Fact]
    public void A_released_job_says_ready_and_who_released_it()
    {
        var text = Text(Print(FullJob.Released));
        Assert.Contains("Fell640,readytoride", text);
        Assert.Contains("InesMarlow", text);
        Assert.DoesNotContain("notreleased", text);
    }

    [Fact]
    public void A_held_job_says_not_released_and_prints_every_hold()
    {
        var text = Text(Print(FullJob.Held));
        Assert.Contains("Fell640,notreleased", text);
        Assert.Contains("Donotrideit", text);
        Assert.DoesNotContain("readytoride", text);
        Assert.All(FullJob.Held.Holds, hold => Assert.Contains(Bare(hold.Words), text));
    }

    [Fact]
    public void A_signature_does_not_count_while_something_holds_the_machine()
    {
        var text = Text(Print(FullJob.Held with { Release = FullJob.Signed("Ines Marlow") }));
        Assert.Contains("notreleased", text);
    }

    [Fact]
    public void A_safety_point_that_was_dropped_stands_on_it_with_reason_and_lead_and_a_caution()
    {
        var pads = FullJob.Released.Points.First(p => p.Point.Safety).Point;
        var keys = FullJob.Released.Points.First(p => !p.Point.Safety).Point;
        var entry = FullJob.Chain()[0];
        var text = Text(
            Print(
                FullJob.Released with
                {
                    Dropped =
                    [
                        new(pads, entry, "new last week", "Ines Tallow"),
                        new(keys, entry, "only one exists", null),
                    ],
                }
            )
        );
        Assert.Contains(Bare($"{pads.Title}: new last week ({entry.By}; Ines Tallow stands for it)"), text);
        Assert.Contains(Bare($"{pads.Title} was not looked at in this visit, by decision of Ines Tallow"), text);
        Assert.DoesNotContain(Bare("only one exists"), text);
    }

    [Fact]
    public void A_figure_that_is_not_the_makers_says_so()
    {
        var text = Text(Print(FullJob.Released));
        Assert.Contains("commonpractice,notthemaker'sfigure", text);
        Assert.Contains("theworkshop'sfigure,notthemaker's", text);
    }

    [Fact]
    public void Cautions_follow_the_work_that_was_done()
    {
        var worked = Text(Print(FullJob.Released));
        var idle = Text(Print(FullJob.Of([State(Point("x", "Mirror"), Figure(1, 2), Stripe.Unread)], [])));
        Assert.Contains("Thechainwasadjusted", worked);
        Assert.Contains("Engineoilwasputin", worked);
        Assert.DoesNotContain("Thechainwasadjusted", idle);
        Assert.DoesNotContain("Engineoilwasputin", idle);
        Assert.Contains("Themaker'smanualandlocallawcomebeforeanythingprintedhere.", idle);
    }

    [Fact]
    public void The_same_job_and_day_give_the_same_bytes()
    {
        Assert.Equal(Print(FullJob.Released), Print(FullJob.Released));
        Assert.NotEqual(
            Print(FullJob.Released),
            HandoverSheet.Pdf(FullJob.Released, Bench640.Workbench, FullJob.Day.AddDays(1))
        );
    }

    [Fact]
    public void The_log_book_is_inside_and_its_seal_is_on_the_paper()
    {
        var pdf = Print(FullJob.Released);
        using var document = PdfDocument.Open(pdf);
        Assert.True(document.Advanced.TryGetEmbeddedFiles(out var files));
        var file = Assert.Single(files);
        var finding = LogBookFile.Verify(Encoding.UTF8.GetString(file.Memory.Span));
        Assert.Equal(LogBookWord.Intact, finding.Word);
        Assert.Contains(finding.Head![..8], Text(pdf));
    }

    [Fact]
    public void Title_and_language_are_in_the_metadata()
    {
        var pdf = Print(FullJob.Released);
        using var document = PdfDocument.Open(pdf);
        Assert.Equal("Fell 640, ready to ride", document.Information.Title);
        Assert.Contains("/Lang(en)", Encoding.Latin1.GetString(pdf));
    }

    [Fact]
    public void An_ordinary_job_takes_at_most_two_pages()
    {
        using var document = PdfDocument.Open(Print(FullJob.Released));
        Assert.InRange(document.NumberOfPages, 1, 2);
    }

    [Theory]
    [InlineData(ReadingKind.Value, 0, 20)]
    [InlineData(ReadingKind.Value, 1, 20)]
    [InlineData(ReadingKind.Value, 40, 20)]
    [InlineData(ReadingKind.Value, 40, 400)]
    [InlineData(ReadingKind.Value, 3, 6000)]
    [InlineData(ReadingKind.Seen, 1, 20)]
    [InlineData(ReadingKind.Seen, 40, 20)]
    [InlineData(ReadingKind.Seen, 40, 400)]
    [InlineData(ReadingKind.Seen, 3, 6000)]
    public void Nothing_leaves_the_page_and_no_text_is_lost(ReadingKind kind, int points, int nameLength)
    {
        var figure = Figure(13, 32);
        var state = FullJob.Of(
            [
                .. Enumerable
                    .Range(0, points)
                    .Select(i =>
                        State(
                            Point($"p{i}", Name(i, nameLength), kind),
                            figure,
                            Stripe.Outside,
                            Reading(50, 1.2, figure, VerdictWord.Outside)
                        )
                    ),
            ],
            [new Hold(null, Stripe.Unread, Sentence.Of(Name(99, nameLength)))]
        );
        var pdf = Print(state);
        using var document = PdfDocument.Open(pdf);
        StaysOnThePage(document);
        var letters = document.GetPages().Sum(p => p.Letters.Count(l => l.Value == "§"));
        Assert.Equal(
            Enumerable.Range(0, points).Append(99).Sum(i => Name(i, nameLength).Count(c => c == '§')),
            letters
        );
        foreach (var number in Enumerable.Range(1, document.NumberOfPages))
            Assert.Contains($"page{number}of{document.NumberOfPages}", Bare(document.GetPage(number).Text));
    }

    [Theory]
    [InlineData(Urgency.BeforeRiding, false, "released, not safe to ride")]
    [InlineData(Urgency.BeforeRiding, true, "ready to ride")]
    [InlineData(Urgency.ByNextService, false, "ready to ride")]
    public void What_the_owner_declined_is_not_called_ready(Urgency urgency, bool putRight, string says)
    {
        var entry = FullJob.Chain()[0];
        Told told = new("Brake hose is cracked", urgency, null);
        Decision no = new(entry, told, false, "Nora Vance", Means.InPerson, true, null);
        var finding = new Finding("hose", entry, entry, "", "Brake hose is cracked", urgency, [], null, no) with
        {
            PutRight = putRight ? (entry, "changed") : null,
        };
        using var document = PdfDocument.Open(Print(FullJob.Released with { Findings = [finding] }));
        Assert.Equal($"Fell 640, {says}", document.Information.Title);
    }

    [Fact]
    public void Forty_findings_stand_on_it_and_again_before_the_signatures()
    {
        var entry = FullJob.Chain()[0];
        var state = FullJob.Held with
        {
            Findings =
            [
                .. Enumerable
                    .Range(0, 40)
                    .Select(i => new Finding(
                        $"f{i}",
                        entry,
                        entry,
                        "",
                        Name(i, 90),
                        Urgency.BeforeRiding,
                        [],
                        null,
                        null
                    )),
            ],
        };
        var pdf = Print(state);
        using var document = PdfDocument.Open(pdf);
        StaysOnThePage(document);
        var text = Text(pdf);
        foreach (var finding in state.Findings)
            Assert.Equal(2, text.Split(Bare(finding.What)).Length - 1);
        Assert.Contains("receivedby", text);
    }

    private static void StaysOnThePage(PdfDocument document)
    {
        foreach (var page in document.GetPages())
            Assert.All(
                page.Letters,
                l =>
                    Assert.True(
                        l.BoundingBox.Left >= 34
                            && l.BoundingBox.Right <= 595 - 34
                            && l.BoundingBox.Bottom >= 20
                            && l.BoundingBox.Top <= 842 - 20,
                        $"{l.Value} at {l.BoundingBox}"
                    )
            );
    }

    [Fact]
    public void A_table_that_goes_on_repeats_its_heading()
    {
        var figure = Figure(13, 32);
        var state = FullJob.Of(
            [.. Enumerable.Range(0, 40).Select(i => State(Point($"p{i}", $"Point {i}"), figure, Stripe.Unread))],
            []
        );
        using var document = PdfDocument.Open(Print(state));
        Assert.Contains("leftitat,continued", Bare(document.GetPage(2).Text));
        Assert.Contains("Leftat", Bare(document.GetPage(2).Text));
    }

    /// <summary>Long words and short ones, each with a character that stands nowhere else on the sheet.</summary>
    private static string Name(int number, int length)
    {
        var name = new StringBuilder($"Point {number}");
        while (name.Length < length)
            name.Append(name.Length % 70 < 12 ? " §" : "Wm§");
        return name.ToString();
    }

    private static byte[] Print(JobState state) => HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day);

    private static string Text(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return Bare(string.Concat(document.GetPages().Select(p => p.Text)));
    }

    /// <summary>Without spaces: where lines are broken is the layout's affair.</summary>
    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
