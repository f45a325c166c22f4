using System.Globalization;
using System.Xml.Linq;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Machines;
using Witnessmark.Bench.Visits;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Paper.Drawings;
using Witnessmark.Paper.Graphs;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

public sealed class GraphTests
{
    private static readonly WearFan Fan = new(
        8000,
        [new(3, 8000, 8000, 8400), new(2, 9500, 10_000, 11_000), new(1, 11_000, 12_000, 14_000)]
    );

    [Fact]
    public void A_graph_says_in_one_sentence_what_it_shows()
    {
        var svg = XDocument.Parse(WearGraph.Svg(History(new(1, null), (1000, 6), (8000, 3)), Foretold(Fan))!).Root!;
        Assert.Equal("img", svg.Attribute("role")!.Value);
        Assert.Equal(
            "Tread, 2 readings over distance, from 6 mm at 1000 km, to 3 mm at 8000 km, limit at least 1 mm. About 4000 km to the limit.",
            svg.Attribute("aria-label")!.Value
        );
    }

    [Fact]
    public void Readings_stand_where_their_distance_is_and_what_is_permitted_is_bright()
    {
        var drawing = WearGraph.Of(History(new(1, null), (1000, 6), (4500, 4.5), (8000, 3)), Foretold(null))!;
        var dots = drawing.Shapes.OfType<Disc>().ToArray();
        Assert.Equal((dots[0].X + dots[2].X) / 2, dots[1].X, 6); // half way between
        Assert.Equal((dots[0].Y + dots[2].Y) / 2, dots[1].Y, 6);
        Assert.True(dots[0].Y < dots[2].Y); // more is higher up
        var limit = drawing.Shapes.OfType<Line>().Single(l => l.Ink == Ink.Mark);
        Assert.Equal(limit.Y1, limit.Y2);
        Assert.True(limit.Y1 > dots[2].Y);
        var bright = drawing.Shapes.OfType<Box>().Single(b => b.Fill == Ink.Card);
        Assert.Equal(limit.Y1, bright.Y + bright.Height, 6);
    }

    [Fact]
    public void The_fan_opens_towards_the_limit_and_reaches_it()
    {
        var drawing = WearGraph.Of(History(new(1, null), (1000, 6), (8000, 3)), Foretold(Fan))!;
        var fan = drawing.Shapes.OfType<Patch>().Single();
        Assert.Equal(6, fan.Corners.Count);
        var limit = drawing.Shapes.OfType<Line>().Single(l => l.Ink == Ink.Mark).Y1;
        Assert.Equal([limit, limit], fan.Corners.Skip(2).Take(2).Select(c => c.Y));
        Assert.True(fan.Corners[3].X - fan.Corners[2].X > fan.Corners[5].X - fan.Corners[0].X);
        Assert.Contains(
            drawing.Shapes.OfType<Line>(),
            l => l is { Dashed: true, Ink: Ink.Full } && Math.Abs(l.Y2 - limit) < 1e-6
        );
    }

    [Fact]
    public void A_fan_that_reaches_too_far_is_cut_at_the_edge_and_the_readings_stay_apart()
    {
        var far = Fan with { Levels = [new(3, 8000, 8000, 20_000), new(1, 9000, 12_000, 900_000)] };
        var drawing = WearGraph.Of(History(new(1, null), (1000, 6), (8000, 3)), Foretold(far))!;
        Assert.All(drawing.Shapes.OfType<Patch>().Single().Corners, c => Assert.InRange(c.X, 0, drawing.Width));
        var dots = drawing.Shapes.OfType<Disc>().ToArray();
        Assert.True(dots[1].X - dots[0].X > 80);
    }

    [Fact]
    public void After_work_no_line_leads_on_and_before_an_odometer_that_went_back_nothing_is_drawn()
    {
        var history = History(new(1, null), (9000, 6), (500, 5), (1500, 4), (2500, 7));
        var readings = history.Readings.ToArray();
        readings[3] = readings[3] with { AfterWork = true };
        history = history with { Readings = readings };
        Assert.Equal(3, WearGraph.Drawable(history).Count);
        var drawing = WearGraph.Of(history, Foretold(null))!;
        Assert.Equal(3, drawing.Shapes.OfType<Disc>().Count());
        Assert.Single(
            drawing.Shapes.OfType<Line>(),
            l => l is { Ink: Ink.Soft, Width: 1 } && l.X1 != l.X2 && l.Y1 != l.Y2
        );
    }

    [Fact]
    public void Outside_is_red_and_unproven_is_hollow()
    {
        var history = History(new(1, null), (1000, 6), (2000, 0.5));
        var readings = history.Readings.ToArray();
        readings[0] = readings[0] with { Opinion = readings[0].Opinion with { Verdict = VerdictWord.Unproven } };
        readings[1] = readings[1] with { Opinion = readings[1].Opinion with { Verdict = VerdictWord.Outside } };
        var dots = WearGraph.Of(history with { Readings = readings }, Foretold(null))!.Shapes.OfType<Disc>().ToArray();
        Assert.Equal((Ink.Card, Ink.Unproven), (dots[0].Fill!.Value, dots[0].Edge!.Value));
        Assert.Equal(Ink.Outside, dots[1].Fill);
    }

    [Fact]
    public void Without_a_distance_there_is_no_graph()
    {
        var history = History(new(1, null), (1000, 6));
        Assert.Null(
            WearGraph.Of(history with { Readings = [history.Readings[0] with { Kilometres = null }] }, Foretold(null))
        );
        Assert.NotNull(WearGraph.Svg(history, Foretold(null)));
    }

    [Fact]
    public void Distances_show_gaps_dashed_and_falls_broken()
    {
        var distances = DistanceHistory.Of([
            new(new(2023, 1, 1), 1000),
            new(new(2023, 6, 1), 3000),
            new(new(2025, 1, 1), 8000),
            new(new(2025, 3, 1), 500),
            new(new(2025, 9, 1), 2500),
        ]);
        var drawing = DistanceGraph.Of(distances)!;
        Assert.Equal(
            "5 odometer readings, from 1000 km on 2023-01-01 to 2500 km on 2025-09-01, went back to 500 km on 2025-03-01, nothing for 580 days before 2025-01-01",
            drawing.Label
        );
        var lines = drawing.Shapes.OfType<Line>().ToArray();
        Assert.Single(lines, l => l is { Dashed: true, Ink: Ink.Outside } && l.X1 == l.X2);
        Assert.Single(lines, l => l is { Dashed: true, Ink: Ink.Full });
        Assert.Equal(2, lines.Count(l => l is { Dashed: false, Ink: Ink.Full }));
        Assert.Single(drawing.Shapes.OfType<Disc>(), d => d.Fill == Ink.Outside);
        Assert.Equal(
            ["2023", "2024", "2025"],
            drawing
                .Shapes.OfType<Words>()
                .Select(w => w.Text.ToString())
                .Where(t =>
                    t.StartsWith("20", StringComparison.Ordinal)
                    && t.Length == 4
                    && int.Parse(t, CultureInfo.InvariantCulture) is > 2020 and < 2030
                )
        );
    }

    [Fact]
    public void Within_one_year_the_first_and_the_last_day_stand_under_the_graph()
    {
        var drawing = DistanceGraph.Of(DistanceHistory.Of([new(new(2026, 1, 12), 1000), new(new(2026, 4, 22), 3000)]))!;
        var days = drawing
            .Shapes.OfType<Words>()
            .Where(w => w.Text.ToString().StartsWith("2026-", StringComparison.Ordinal))
            .ToArray();
        Assert.Equal(["2026-01-12", "2026-04-22"], days.Select(w => w.Text.ToString()));
        Assert.True(days[0].Right < days[1].Left && days[1].Right <= drawing.Width);
    }

    [Fact]
    public void To_a_reading_from_which_it_counts_anew_no_line_leads()
    {
        var history = History(new(1, null), (1000, 3), (2000, 7), (3000, 6));
        PointForecast since = Foretold(null) with { Run = [.. history.Readings.Skip(1)] };
        Assert.Single(
            WearGraph.Of(history, since)!.Shapes.OfType<Line>(),
            l => l is { Ink: Ink.Soft, Width: 1 } && l.X1 != l.X2 && l.Y1 != l.Y2
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void One_distance_is_a_number_and_no_graph(int count) =>
        Assert.Null(
            DistanceGraph.Svg([
                .. DistanceHistory.Of([.. Enumerable.Repeat(new DistanceOnDay(new(2025, 1, 1), 100), count)]),
            ])
        );

    [Fact]
    public void Of_very_many_distances_only_the_odd_ones_have_dots()
    {
        var distances = DistanceHistory.Of([
            .. Enumerable
                .Range(0, 500)
                .Select(i => new DistanceOnDay(new DateOnly(2016, 1, 1).AddDays(7 * i), i == 400 ? 10 : 50 * i)),
        ]);
        var drawing = DistanceGraph.Of(distances)!;
        Assert.Single(drawing.Shapes.OfType<Disc>());
        Assert.All(drawing.Shapes.OfType<Line>(), l => Assert.InRange(l.X1, 0, drawing.Width));
    }

    [Fact]
    public void A_day_on_which_everything_is_the_same_is_still_a_picture()
    {
        var svg = WearGraph.Svg(History(new(1, 1), (1000, 1), (1000, 1)), Foretold(null))!;
        Assert.DoesNotContain("NaN", svg);
        Assert.DoesNotContain("∞", svg);
    }

    private static PointForecast Foretold(WearFan? fan) => new([], $"About 4000 km to the limit.", [], fan);

    private static PointHistory History(Limit limit, params (double Km, double Value)[] read) =>
        new(
            Point("tread", "Tread"),
            null,
            Millimetre,
            limit,
            [
                .. read.Select(r => new PointReading(
                    FullJob.Chain()[0],
                    "1",
                    new(2025, 1, 1),
                    r.Km,
                    r.Value,
                    Judge
                        .Reading(
                            new(
                                Point("tread", "Tread"),
                                null,
                                Bench640.Machine,
                                [string.Create(CultureInfo.InvariantCulture, $"{r.Value} mm")],
                                [],
                                null,
                                null
                            )
                        )
                        .Opinion! with
                    {
                        Verdict = VerdictWord.Inside,
                    },
                    false
                )
                {
                    Deviation = 0.1,
                }),
            ]
        );
}
