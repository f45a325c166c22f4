using Witnessmark.Bench.Book;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Bench.Tests.Book;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>Bench orders against an oracle that knows only the book's words, and against all permutations.</summary>
public class PlannedOrderTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void An_order_keeps_every_rule_and_lasts_as_long_as_it_says(int part)
    {
        for (var seed = part * 50; seed < part * 50 + 50; seed++)
            OrderOracle.Check(PlannedOrder.Of(RandomBooks.Of(seed, 2 + seed % 7)).Certain);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Begun_jobs_keep_what_is_in_hand_first_and_wait_for_what_runs(int part)
    {
        for (var seed = part * 50; seed < part * 50 + 50; seed++)
        {
            var asked = RandomBooks.Begun(seed, 3 + seed % 6);
            OrderOracle.Check(PlannedOrder.Of(asked).Certain);
        }
    }

    [Fact]
    public void No_permutation_of_the_points_is_shorter()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var asked = RandomBooks.Of(1000 + seed, 5);
            var order = PlannedOrder.Of(asked).Certain;
            Assert.True(order.Plan.Proven);
            var best = Permutations([.. asked.Open]).Min(p => OrderOracle.Lazily(asked, p));
            Assert.True(order.Plan.Makespan.Seconds / 60 <= best + 1e-6, $"{seed}: {best} min is shorter");
        }
    }

    // by hand: drain warm (5 + 6), valves need it cold 60 min later, filling waits 10 min; pads, nut and the rest fill the cooling
    [Fact]
    public void A_restoration_drains_warm_and_reads_the_valves_cold()
    {
        var bench = SmallShop.Bench();
        var open = bench.Book.Purposes["restoration"].Select(p => bench.Book.Points[p.Point]).ToList();
        var order = PlannedOrder.Of(new OrderQuestion(bench.Book, open)).Certain;
        OrderOracle.Check(order);
        var steps = order.Plan.Schedule.Select(s => s.Do).ToList();
        Assert.True(steps.IndexOf("set:engine warm") < steps.IndexOf("drain"));
        // cold from the start, the valves are read before it is ever warm: nothing is waited for
        Assert.True(steps.IndexOf("valves") < steps.IndexOf("set:engine warm"));
        Assert.True(steps.IndexOf("clear:rear stand") < steps.IndexOf("road-test"));
        Assert.True(steps.IndexOf("drain") < steps.IndexOf("fill"));
        // 2 + 4 + 4 + 5 + 3 + 40 + 6 + 4 + 15 + 3 = 86 of hands, stand 2 + 1, warming 5: 94, and the drip is filled with work
        Assert.Equal(94, order.Plan.Makespan.Seconds / 60, 1e-6);
        Assert.True(order.Plan.Proven);
        // one after the other the 10 min of dripping are sat out
        Assert.Equal(10, order.Saved!.Value.Seconds / 60, 1e-6);
    }

    [Fact]
    public void Where_it_costs_no_time_the_order_is_the_books()
    {
        var bench = SmallShop.Bench();
        string[] chain = ["identity", "slack", "alignment", "nut", "road-test", "leaks"];
        var order = PlannedOrder
            .Of(new OrderQuestion(bench.Book, [.. chain.Select(p => bench.Book.Points[p])]))
            .Certain;
        Assert.Equal(chain, order.Points);
    }

    // points that break each other's marks keep the book's order among themselves even where another would be as short
    [Fact]
    public void The_nut_comes_after_the_slack_that_it_breaks()
    {
        var bench = SmallShop.Bench();
        var order = PlannedOrder
            .Of(new OrderQuestion(bench.Book, [bench.Book.Points["slack"], bench.Book.Points["nut"]]) { InHand = null })
            .Certain;
        Assert.Equal(["slack", "nut"], order.Points);
    }

    [Fact]
    public void Large_orders_keep_every_rule_and_say_that_they_are_only_the_best_found()
    {
        var bench = DemoFiles.Bench;
        var machine = bench.Workshop.Machines["fell-640-0412"];
        var sheet = bench.Newest(machine.Sheet)!;
        foreach (var purpose in (string[])["handover", "service", "restoration"])
        {
            var open = bench.Plan(purpose, sheet, machine).Select(p => bench.Book.Points[p.Point]).ToList();
            var order = PlannedOrder.Of(new OrderQuestion(bench.Book, open)).Certain;
            OrderOracle.Check(order);
            Assert.True(open.Count > 25);
            Assert.False(order.Plan.Proven);
            Assert.True(order.Plan.LowerBound!.Value.Seconds <= order.Plan.Makespan.Seconds + 1e-6);
            Assert.True(order.Saved!.Value.Seconds > 0);
        }
    }

    [Fact]
    public void A_ring_that_no_file_check_has_seen_is_refused_with_its_points()
    {
        var bench = SmallShop.Bench();
        var (a, b) = (bench.Book.Points["pads"], bench.Book.Points["nut"]);
        var answer = PlannedOrder.Of(
            new OrderQuestion(bench.Book, [a with { After = ["nut"] }, b with { After = ["pads"] }])
        );
        Assert.Equal("cycle", answer.Refusal!.Key);
        Assert.Contains("pads", answer.Refusal.Because);
    }

    [Fact]
    public void States_that_cannot_be_together_are_refused()
    {
        var bench = SmallShop.Bench();
        var both = bench.Book.Points["pads"] with { Reach = ["rear stand", "road ready"] };
        Assert.Equal("unreachable", PlannedOrder.Of(new OrderQuestion(bench.Book, [both])).Refusal!.Key);
    }

    [Fact]
    public void Nothing_left_takes_no_time()
    {
        var order = PlannedOrder.Of(new OrderQuestion(SmallShop.Bench().Book, [])).Certain;
        Assert.Equal(0, order.Plan.Makespan.Seconds);
        Assert.Equal(["Nothing is left to do."], OrderWords.Totals(order).Select(s => s.ToString()));
    }

    private static IEnumerable<Point[]> Permutations(Point[] points)
    {
        if (points.Length <= 1)
            return [points];
        return points.SelectMany(
            (first, i) => Permutations([.. points[..i], .. points[(i + 1)..]]).Select(rest => (Point[])[first, .. rest])
        );
    }
}
