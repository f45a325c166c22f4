using UglyToad.PdfPig;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.Due;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Paper.Labels;
using Witnessmark.Paper.LogBook;

namespace Witnessmark.Paper.Tests;

/// <summary>Stickers and key tags, read back out of the PDF.</summary>
public sealed class LabelTests
{
    public static TheoryData<string, LabelKind> All =>
        [.. LabelSize.All.SelectMany(s => Enum.GetValues<LabelKind>().Select(k => (s.Name, k)))];

    // ISO 216: A8 is 52 mm × 74 mm; an inch is 25.4 mm and 72 points
    [Theory]
    [InlineData("A8", 74, 52)]
    [InlineData("62x29", 62, 29)]
    [InlineData("4x2in", 101.6, 50.8)]
    [InlineData("70x36", 210, 297)] // the sheet of A4 that they come on, by its size of ISO 216
    public void The_page_is_the_label_or_the_sheet_that_it_comes_on(string size, double width, double height)
    {
        using var document = PdfDocument.Open(Print(LabelKind.Key, size));
        var page = document.GetPage(1);
        Assert.Equal(1, document.NumberOfPages);
        Assert.Equal(width / 25.4 * 72, page.Width, 0.5);
        Assert.Equal(height / 25.4 * 72, page.Height, 0.5);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void All_of_the_text_stands_on_the_label_beside_the_code(string size, LabelKind kind)
    {
        using var document = PdfDocument.Open(Print(kind, size));
        var page = document.GetPage(1);
        var text = Bare(page.Text);
        string[] said =
            kind is LabelKind.Service
                ?
                [
                    "Nextservice",
                    "at9812km",
                    "Frontpads,thinnest",
                    "orby27November2027",
                    "HarrowLaneMotorcycles,job412",
                ]
                : ["Fell640", "VINends0412", "Job412,handover", "HarrowLaneMotorcycles"];
        Assert.All(said, s => Assert.Contains(s, text));
        var label = LabelSize.Named(size)!;
        var top = label.Sheet is null ? page.Height : page.Height - (297 - 8 * 36) / 2.0 / 25.4 * 72;
        var (right, bottom) = (label.Width / 25.4 * 72, top - label.Height / 25.4 * 72);
        var letters = page.Letters.Where(l => l.Value != " ").ToList();
        Assert.All(letters, l => Assert.InRange(l.BoundingBox.Left, 6, right));
        Assert.All(letters, l => Assert.InRange(l.BoundingBox.Right, 6, right * 0.55));
        Assert.All(letters, l => Assert.InRange(l.BoundingBox.Bottom, bottom, top));
        Assert.All(letters, l => Assert.InRange(l.BoundingBox.Top, bottom, top));
        Assert.All(letters, l => Assert.True(l.PointSize >= 6 - 1e-6, $"{l.Value}: {l.PointSize} pt"));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Its_code_is_scanned_and_belongs_to_the_log_book(string size, LabelKind kind)
    {
        foreach (var seal in (ShopSeal?[])[null, TestSeals.Harrow])
        {
            var text = PaperCodeScanTests.Scanned(Print(kind, size, seal), 300, 400);
            Assert.NotNull(text);
            Assert.Null(PaperCode.Fault(text, LogBookFile.Write(Scheduled(), Bench640.Workbench, seal)));
        }
    }

    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(3, 2, 0)]
    [InlineData(4, 0, 1)]
    [InlineData(24, 2, 7)]
    public void It_stands_at_its_place_on_the_sheet(int place, int column, int row)
    {
        var pdf = Made(LabelKind.Key, "70x36", Scheduled(), null, place).Certain;
        using var document = PdfDocument.Open(pdf);
        var page = document.GetPage(1);
        var left = column * 70 / 25.4 * 72;
        var top = page.Height - (4.5 + row * 36) / 25.4 * 72;
        Assert.All(page.Letters, l => Assert.InRange(l.BoundingBox.Left, left, left + 70 / 25.4 * 72));
        Assert.All(page.Letters, l => Assert.InRange(l.BoundingBox.Top, top - 36 / 25.4 * 72, top + 1));
    }

    [Theory]
    [InlineData("70x36", 0)]
    [InlineData("70x36", 25)]
    [InlineData("A8", 2)]
    public void A_place_that_is_not_there_is_refused(string size, int place) =>
        Assert.Equal("no-such-place", Made(LabelKind.Key, size, Scheduled(), null, place).Refusal!.Key);

    [Fact]
    public void A_sheet_without_schedule_has_no_sticker_and_still_a_key_tag()
    {
        var refused = Made(LabelKind.Service, "A8", FullJob.Released);
        Assert.Equal("no-schedule", refused.Refusal!.Key);
        Assert.Contains("Fell 640", refused.Refusal.Because);
        Assert.True(Made(LabelKind.Key, "A8", FullJob.Released).Holds);
    }

    [Theory]
    [InlineData(20)]
    [InlineData(90)]
    public void Longer_text_is_set_smaller_and_nothing_of_it_is_lost(int letters)
    {
        using var document = PdfDocument.Open(Made(LabelKind.Key, "A8", Named(letters)).Certain);
        Assert.Equal(letters, document.GetPage(1).Letters.Count(l => l.Value is "§"));
    }

    [Fact]
    public void Text_that_has_no_room_at_the_least_size_is_refused_by_the_labels_name()
    {
        var refused = Made(LabelKind.Key, "62x29", Named(900)).Refusal!;
        Assert.Equal("no-room", refused.Key);
        Assert.Contains("62x29 (62 mm × 29 mm)", refused.Because);
        Assert.Contains("at 6 pt", refused.Because);
    }

    [Fact]
    public void What_is_overdue_or_unknown_stands_first()
    {
        var state = Scheduled();
        state = state with { Points = [.. state.Points.Select(p => p with { Marked = null })] };
        using var document = PdfDocument.Open(Made(LabelKind.Service, "A8", state).Certain);
        Assert.Contains("Now:Frontpads,thinnest", Bare(document.GetPage(1).Text));
    }

    [Fact]
    public void A_job_that_was_not_opened_is_refused() =>
        Assert.Equal("not-opened", Made(LabelKind.Key, "A8", FullJob.Released with { Arrival = null }).Refusal!.Key);

    [Fact]
    public void The_same_job_and_day_give_the_same_bytes() =>
        Assert.Equal(Print(LabelKind.Key, "A8"), Print(LabelKind.Key, "A8"));

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_a_good_file_for_the_archive(string size, LabelKind kind) =>
        Assert.DoesNotContain("Error", ArchiveFileTests.Run("qpdf", "--check", Print(kind, size)));

    private static byte[] Print(LabelKind kind, string size, ShopSeal? seal = null) =>
        Made(kind, size, Scheduled(), seal).Certain;

    private static Handbook.Answer<byte[]> Made(
        LabelKind kind,
        string size,
        JobState state,
        ShopSeal? seal = null,
        int place = 1
    ) => LabelSheet.Pdf(kind, LabelSize.Named(size)!, state, Workbench(state), FullJob.Day, seal, null, place);

    /// <summary>The book knows the point of the schedule by its title.</summary>
    private static Workbench Workbench(JobState state) =>
        Bench640.Workbench with
        {
            Book = Bench640.Workbench.Book with { Points = state.Points.ToDictionary(p => p.Point.Id, p => p.Point) },
        };

    private static JobState Named(int letters) =>
        Scheduled() is var state
            ? state with
            {
                Arrival = state.Arrival! with
                {
                    Machine = Bench640.Machine with { Name = string.Concat(Enumerable.Repeat("§", letters)) },
                },
            }
            : state;

    internal static JobState Scheduled()
    {
        var work = new ScheduledWork(
            "front-pads",
            "5000 km or 12 months",
            new Origin(OriginKind.Maker, "handbook p. 13"),
            new ServiceRule("front-pads", new Length(5e9), 12, null)
        );
        return FullJob.Released with
        {
            Arrival = Bench640.Arrival with { Sheet = Bench640.Sheet with { Schedule = [work] }, Promised = null },
        };
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
