using System.Xml.Linq;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Paper.Drawings;
using static Witnessmark.Paper.Tests.Bench640;

namespace Witnessmark.Paper.Tests;

public sealed class BandDrawingTests
{
    private static readonly ReachState Stand = new("stand", "", Minutes(2), Minutes(1), TimeSpan.Zero, []);
    private static readonly ReachState Warm = new("warm", "", Minutes(5), TimeSpan.Zero, Minutes(30), ["cold"]);
    private static readonly ReachState Cold = new("cold", "", TimeSpan.Zero, TimeSpan.Zero, TimeSpan.Zero, []);

    private static readonly PlannedOrder Order = Of(
        At("drain", 6, 10, "warm") with
        {
            After = ["slack"],
        },
        At("slack", 4, 0, "stand"),
        At("fill", 3, 0) with
        {
            After = ["drain"],
        },
        At("valves", 20, 0, "cold") with
        {
            After = ["fill"],
        }
    );

    [Theory]
    [InlineData(320)]
    [InlineData(640)]
    public void Everything_on_a_band_is_within_its_surface(double width)
    {
        var band = BandDrawing.Of(Order, width);
        Assert.Equal(width, band.Width);
        Assert.All(
            band.Shapes,
            shape =>
            {
                var (left, right, bottom) = shape switch
                {
                    Box b => (b.X, b.X + b.Width, b.Y + b.Height),
                    Line l => (Math.Min(l.X1, l.X2), Math.Max(l.X1, l.X2), Math.Max(l.Y1, l.Y2)),
                    Words w => (w.Left, w.Right, w.Y),
                    _ => throw new ArgumentOutOfRangeException(nameof(shape)),
                };
                Assert.InRange(left, 0, width);
                Assert.InRange(right, 0, width);
                Assert.InRange(bottom, 0, band.Height);
            }
        );
    }

    // points above in dark boxes as long as their hands; the stand and the warming lighter; the drip and the cooling below
    [Fact]
    public void Hands_changes_and_waits_are_told_apart_and_as_long_as_they_take()
    {
        var band = BandDrawing.Of(Order);
        var scale = (band.Width - 2) / Order.Plan.Makespan.Seconds;
        var boxes = band.Shapes.OfType<Box>().ToList();
        var points = boxes.Where(b => b.Fill == Ink.Soft).ToList();
        Assert.Equal([4, 6, 3, 20], points.Select(b => Math.Round((b.Width + 1.5) / scale / 60)).ToArray());
        Assert.Equal(3, boxes.Count(b => b.Fill == Ink.Steel)); // stand up, stand down, warm
        var waits = boxes.Where(b => b.Fill is null).ToList();
        Assert.Equal(2, waits.Count);
        Assert.Equal(10, (waits.Min(b => b.Width) + 1) / scale / 60, 0.1);
        Assert.Equal(30, (waits.Max(b => b.Width) + 1) / scale / 60, 0.1);
        Assert.NotEqual(waits[0].Y, waits[1].Y); // they overlap
    }

    [Fact]
    public void What_is_in_hand_is_darkest()
    {
        var order = PlannedOrder.Of(Order.Asked with { InHand = "slack" }).Certain;
        Assert.Single(BandDrawing.Of(order).Shapes.OfType<Box>(), b => b.Fill == Ink.Full);
        Assert.DoesNotContain(BandDrawing.Of(Order).Shapes.OfType<Box>(), b => b.Fill == Ink.Full);
    }

    [Fact]
    public void Its_label_says_how_long_what_is_saved_and_what_runs()
    {
        var label = XDocument.Parse(BandDrawing.Svg(Order)).Root!.Attribute("aria-label")!.Value;
        Assert.StartsWith("33 min of work at the points, ", label);
        Assert.Contains("Meanwhile runs: drain until ", label);
        Assert.Contains("warm until ", label);
    }

    private static PlannedOrder Of(params Point[] points) =>
        PlannedOrder
            .Of(
                new(
                    new(
                        points.ToDictionary(p => p.Id),
                        new Dictionary<string, IReadOnlyList<PlannedPoint>>(),
                        new[] { Stand, Warm, Cold }.ToDictionary(s => s.Name),
                        new Dictionary<string, FigureKey>()
                    ),
                    points
                )
            )
            .Certain;

    private static Point At(string id, int hands, int waits, params string[] reach) =>
        Point(id, id) with
        {
            Hands = Minutes(hands),
            Waits = Minutes(waits),
            Reach = reach,
            After = [],
            AgainAfter = [],
        };

    private static TimeSpan Minutes(int minutes) => TimeSpan.FromMinutes(minutes);
}
