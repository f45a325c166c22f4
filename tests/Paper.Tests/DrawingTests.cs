using System.Globalization;
using System.Xml.Linq;
using FsCheck.Xunit;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Paper.Drawings;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

public sealed class DrawingTests
{
    public static TheoryData<Stripe, bool> Stripes =>
        [.. Enum.GetValues<Stripe>().SelectMany(s => new[] { (s, false), (s, true) })];

    [Theory]
    [MemberData(nameof(Stripes))]
    public void A_stripe_is_a_labelled_picture_of_14_by_22(Stripe stripe, bool current)
    {
        var svg = XDocument.Parse(StripeDrawing.Svg(stripe, current)).Root!;
        Assert.Equal("0 0 14 22", svg.Attribute("viewBox")!.Value);
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Contains(Spoken.Of(stripe), svg.Attribute("aria-label")!.Value);
    }

    [Fact]
    public void No_two_states_look_the_same_without_colour()
    {
        // The shapes with every ink made one.
        var shapes = Enum.GetValues<Stripe>().Select(s => Colourless(StripeDrawing.Svg(s))).ToList();
        Assert.Equal(shapes.Count, shapes.Distinct().Count());
    }

    [Fact]
    public void The_label_is_the_whole_sentence()
    {
        var figure = Figure(13, 32);
        var view = RuleView.Of(
            State(Point("s", "Chain slack"), figure, Stripe.Outside, Reading(50, 1.2, figure, VerdictWord.Outside))
        )!;
        Assert.Equal("Chain slack 50 ± 1.2 mm, limit 13 to 32 mm, outside", view.Label);
    }

    [Fact]
    public void A_reading_that_later_work_overtook_is_no_needle()
    {
        var figure = Figure(13, 32);
        var view = RuleView.Of(State(Point("s", "Slack"), figure, Stripe.Again, Reading(25, 1.2, figure)))!;
        Assert.Null(view.Now);
        Assert.Equal([25], view.Earlier);
        Assert.StartsWith("Slack to be read again", view.Label);
    }

    [Fact]
    public void Things_that_are_only_seen_have_no_rule() =>
        Assert.Null(RuleView.Of(State(Point("s", "Leaks", ReadingKind.Seen), null, Stripe.Unread)));

    /// <summary>Any limit and readings, tenths from −3276.8 to 3276.7: limit, needles and all numbers stay inside the surface.</summary>
    [Property(MaxTest = 500)]
    public void Everything_on_a_rule_is_within_its_surface(short a, short b, short[] tenths, byte kind, bool screen)
    {
        double? min = kind % 3 == 1 ? null : Math.Min(a, b) / 10.0;
        double? max = kind % 3 == 2 ? null : Math.Max(a, b) / 10.0;
        var figure = Figure(min, max);
        var readings = tenths.Select(t => Reading(t / 10.0, kind / 20.0, figure, (VerdictWord)(kind % 5))).ToArray();
        var state = State(Point("p", "A <point> & \"more\""), figure, Stripe.Inside, readings) with
        {
            Advice = Expecting(a / 7.0, 1.5),
        };
        var view = RuleView.Of(state)!;
        var size = screen ? RuleSize.Screen : RuleSize.Row;
        var drawing = RuleDrawing.Of(view, size);
        XDocument.Parse(SvgPen.Draw(drawing));
        Assert.All(drawing.Shapes, s => AssertWithin(s, drawing));
        Assert.All(view.Numbers, n => Assert.InRange(RuleScale.For(view, size.Width).At(n), -1e-6, size.Width + 1e-6));
        AssertApart(drawing);
    }

    /// <summary>As .NET itself formats the rounded number, and never a negative nothing.</summary>
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.001, "0")]
    [InlineData(0.005, "0")] // midpoints to even, IEEE 754 4.3.1, as Math.Round does
    [InlineData(0.015, "0.02")]
    [InlineData(-3.5, "-3.5")]
    [InlineData(-0.25, "-0.25")]
    [InlineData(12.04, "12.04")]
    [InlineData(99.995, "100")]
    [InlineData(2_500_000.126, "2500000.13")]
    public void Numbers_have_two_decimals_at_most(double x, string written)
    {
        var drawing = new Drawing(100, 20, $"A line.", [new Line(x, 1, 2, 3, Ink.Full, 1)]);
        Assert.Equal(
            $"M{written} 1L2 3",
            XDocument.Parse(SvgPen.Draw(drawing)).Root!.Elements().Single().Attribute("d")!.Value
        );
    }

    [Property(MaxTest = 500)]
    public void Any_number_is_written_as_it_is_rounded(int thousandths)
    {
        var x = thousandths / 1000.0;
        var drawing = new Drawing(100, 20, $"A line.", [new Line(x, 1, 2, 3, Ink.Full, 1)]);
        Assert.Contains(
            $"M{(Math.Round(x, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture)} 1L",
            SvgPen.Draw(drawing)
        );
    }

    [Fact]
    public void Lines_of_one_pen_that_follow_each_other_are_one_path_and_keep_their_place_among_the_rest()
    {
        Line At(double x, Ink ink, bool dashed = false) => new(x, 0, x, 9, ink, 1, dashed);
        var drawing = new Drawing(
            100,
            20,
            $"Lines.",
            [
                At(1, Ink.Soft),
                At(2, Ink.Soft),
                At(3, Ink.Full),
                new Disc(5, 5, 2, Ink.Card),
                At(4, Ink.Full),
                At(5, Ink.Full, dashed: true),
            ]
        );
        var drawn = XDocument.Parse(SvgPen.Draw(drawing)).Root!.Elements().ToList();
        Assert.Equal(
            ["M1 0L1 9M2 0L2 9", "M3 0L3 9", null, "M4 0L4 9", "M5 0L5 9"],
            drawn.Select(e => e.Attribute("d")?.Value)
        );
        Assert.Equal(
            [4],
            drawn.Index().Where(e => e.Item.Attribute("stroke-dasharray") is not null).Select(e => e.Index)
        );
    }

    [Fact]
    public void Long_numbers_at_the_ends_are_pushed_inwards()
    {
        var view = RuleView.Of(State(Point("p", "P"), Figure(-32767.125, 32767.125), Stripe.Unread))!;
        var drawing = RuleDrawing.Of(view, RuleSize.Row);
        Assert.Contains(drawing.Shapes.OfType<Words>(), w => w.Text.In(Tongue.English) == "−32767.125");
        Assert.All(drawing.Shapes, s => AssertWithin(s, drawing));
    }

    [Property(MaxTest = 200)]
    public void Everything_on_a_round_rule_is_within_its_surface(short[] tenths, byte spread)
    {
        var series = tenths.Select(t => t / 10.0).ToArray();
        var figure = Figure(null, spread / 10.0);
        var point = Point("r", "Round", ReadingKind.Round);
        var view = RoundView.Of(State(point, figure, Stripe.Inside, Reading(1, 0.5, figure, series: series)));
        if (series.Length < 3)
        {
            Assert.Null(view);
            return;
        }
        var drawing = RoundRuleDrawing.Of(view!);
        XDocument.Parse(SvgPen.Draw(drawing));
        Assert.All(drawing.Shapes, s => AssertWithin(s, drawing));
        Assert.Contains(Spoken.Of(series.Max()), view!.Most);
        Assert.Contains(Spoken.Of(series.Min()), view.Least);
    }

    [Fact]
    public void A_wave_once_round_is_drawn_through_its_readings()
    {
        var series = Enumerable.Range(0, 16).Select(i => 28 + 5 * Math.Cos(2 * Math.PI * i / 16 - 1)).ToArray();
        var figure = Figure(null, 6);
        var drawing = RoundRuleDrawing.Of(
            RoundView.Of(
                State(
                    Point("r", "R", ReadingKind.Round),
                    figure,
                    Stripe.Outside,
                    Reading(10, 1, figure, series: series)
                )
            )!
        );
        var wave = drawing.Shapes.OfType<Loop>().Single().Corners;
        var dots = drawing.Shapes.OfType<Disc>().Where(d => d.Radius is >= 4 and <= 6 && d.Y < 250).ToList();
        Assert.Equal(16, dots.Count);
        Assert.All(dots, d => Assert.True(wave.Min(c => double.Hypot(c.X - d.X, c.Y - d.Y)) < 4));
    }

    [Fact]
    public void The_strip_counts_its_states() =>
        Assert.Equal(
            "3 points: 1 not read, 2 marked",
            StripDrawing.Of([Stripe.Marked, Stripe.Unread, Stripe.Marked]).Label
        );

    private static string Colourless(string svg) =>
        System.Text.RegularExpressions.Regex.Replace(svg[svg.IndexOf('>')..], "var\\([^)]*\\)", "ink");

    // Capitals and digits of the font are 0.668 em high.
    private static void AssertWithin(Shape shape, Drawing drawing)
    {
        var (left, right, top, bottom) = shape switch
        {
            Line l => (Math.Min(l.X1, l.X2), Math.Max(l.X1, l.X2), Math.Min(l.Y1, l.Y2), Math.Max(l.Y1, l.Y2)),
            Box b => (b.X, b.X + b.Width, b.Y, b.Y + b.Height),
            Disc d => (d.X - d.Radius, d.X + d.Radius, d.Y - d.Radius, d.Y + d.Radius),
            Words w => (w.Left, w.Right, w.Y - 0.7 * w.Size, w.Y),
            Loop l => (
                l.Corners.Min(c => c.X),
                l.Corners.Max(c => c.X),
                l.Corners.Min(c => c.Y),
                l.Corners.Max(c => c.Y)
            ),
            _ => throw new ArgumentException($"{shape} is on no rule."),
        };
        Assert.InRange(left, -1e-6, right);
        Assert.InRange(right, left, drawing.Width + 1e-6);
        Assert.InRange(top, -1e-6, bottom);
        Assert.InRange(bottom, top, drawing.Height + 1e-6);
    }

    private static void AssertApart(Drawing drawing)
    {
        var words = drawing.Shapes.OfType<Words>().ToList();
        Assert.All(
            words.SelectMany((w, i) => words.Skip(i + 1).Where(o => o.Y == w.Y).Select(o => (w, o))),
            p => Assert.True(p.w.Right <= p.o.Left || p.o.Right <= p.w.Left, $"{p.w.Text} touches {p.o.Text}")
        );
    }
}
