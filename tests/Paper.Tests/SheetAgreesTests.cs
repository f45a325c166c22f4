using System.Text;
using System.Text.Json;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UglyToad.PdfPig;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Paper.Handover;
using Witnessmark.Paper.LogBook;
using Witnessmark.Paper.Pdf;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

/// <summary>Random jobs on paper: what the log book inside says of each point stands in the visible text as well, value by value.</summary>
public sealed class SheetAgreesTests
{
    private static readonly ReadingKind[] Kinds =
    [
        ReadingKind.Value,
        ReadingKind.Places,
        ReadingKind.Level,
        ReadingKind.Sides,
        ReadingKind.Tighten,
        ReadingKind.Seen,
        ReadingKind.Done,
    ];

    [Property(MaxTest = 60)]
    public Property Paper_and_log_book_say_the_same_of_every_point() =>
        Prop.ForAll(
            Jobs().ToArbitrary(),
            state =>
            {
                var pdf = HandoverSheet.Pdf(state, Bench640.Workbench, FullJob.Day, PaperSize.A4, TestSeals.Harrow);
                using var document = PdfDocument.Open(pdf);
                Assert.True(document.Advanced.TryGetEmbeddedFiles(out var files));
                var logBook = Encoding.UTF8.GetString(Assert.Single(files).Memory.Span);
                Assert.Equal(LogBookWord.Intact, LogBookFile.Verify(logBook, TestSeals.Both).Word);
                var letters = document.GetPages().SelectMany(p => p.Letters).Select(l => l.Value);
                var seen = Bare(string.Concat(letters));
                Assert.Null(PaperLines.Difference(PaperLines.In(logBook)!, seen));
                foreach (var point in Points(logBook))
                foreach (var said in Said(point))
                    Assert.Contains(Bare(said), seen);
            }
        );

    /// <summary>What the log book says of a point and a sheet has to say too.</summary>
    private static IEnumerable<string> Said(JsonElement point)
    {
        foreach (var name in (string[])["title", "leftAt", "leftBecause"])
            if (point.TryGetProperty(name, out var value))
                yield return value.GetString()!;
        foreach (var list in (string[])["corrections", "notes"])
        foreach (var text in point.GetProperty(list).EnumerateArray())
            yield return text.GetString()!;
    }

    private static JsonElement[] Points(string logBook) =>
        [.. JsonDocument.Parse(logBook).RootElement.GetProperty("visits")[0].GetProperty("points").EnumerateArray()];

    private static Gen<JobState> Jobs() =>
        from count in Gen.Choose(0, 8)
        from points in State().ListOf(count)
        from released in Gen.Elements(true, false)
        select Numbered(points, released);

    private static JobState Numbered(IEnumerable<PointState> points, bool released)
    {
        var job = FullJob.Of(
            [
                .. points.Select(
                    (p, i) => p with { Point = p.Point with { Id = $"p{i}", Title = $"Point {i}: {p.Point.Title}" } }
                ),
            ],
            []
        );
        return released ? job with { Release = FullJob.Signed("Ines Marlow") } : job;
    }

    private static Gen<PointState> State() =>
        from kind in Gen.Elements(Kinds)
        from title in Text()
        from note in Text()
        from stripe in Gen.Elements(Stripe.Marked, Stripe.Outside, Stripe.Unread, Stripe.Left, Stripe.MarkedClose)
        from found in Gen.Choose(0, 9999)
        from now in Gen.Choose(0, 9999)
        select Of(kind, title, note, stripe, found / 100.0, now / 100.0);

    /// <summary>Words that the sheet's font has; what it lacks is tested beside.</summary>
    private static Gen<string> Text() =>
        Gen.Elements('a', 'b', 'É', 'ß', '½', ' ', '(', ')', '\\', '<', '&', '1', '.', ',')
            .ArrayOf()
            .Select(letters => $"x{new string(letters)}");

    private static PointState Of(ReadingKind kind, string title, string note, Stripe stripe, double found, double now)
    {
        var measured = kind is ReadingKind.Value or ReadingKind.Places or ReadingKind.Level or ReadingKind.Sides;
        var figure = measured ? Figure(13, 32) : null;
        var point = Point("p", title, kind);
        ReadingTaken[] readings =
            stripe is Stripe.Unread ? []
            : measured ? [Reading(found, 1.2, figure), Reading(now, 1.2, figure, VerdictWord.Inside, Rule)]
            : kind is ReadingKind.Tighten ? [Reading(now, null, null, VerdictWord.Inside, Wrench)]
            : [Told(note)];
        return Bench640.State(point, figure, stripe, readings) with
        {
            Corrections =
            [
                new CorrectionMade(Fact("correction", new { point = "p" }), null, null, null, Sentence.Of(note)),
            ],
            Notes = [new Note(Fact("note", new { text = note }), note)],
            Left = stripe is Stripe.Left ? (Fact("left", new { point = "p" }), note) : null,
        };
    }

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
