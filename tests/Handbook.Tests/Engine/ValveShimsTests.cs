using System.Text.Json;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Tests.Engine;

public class ValveShimsTests
{
    private static readonly ShimSeries Series = new(new(1.7), new(3.2), new(0.05));

    // Every valve on every shim that fits it, tried out
    [Fact]
    public void Small_plans_are_as_good_as_any_choice()
    {
        for (var seed = 500; seed < 700; seed++)
        {
            var engine = RandomEngines.Of(seed, 1 + seed % 4, seed / 4 % 4);
            var answer = ValveShims.For(engine.Valves, engine.Stock, engine.Buyable);
            var least = Enumerated(engine.Valves, engine.Stock, engine.Buyable);
            Assert.Equal(least, answer.Holds ? ShimsBySolver.Aims(answer.Certain) : null);
        }
    }

    [Fact]
    public void Every_clearance_lies_in_its_limit_and_no_shim_serves_twice()
    {
        for (var seed = 1000; seed < 1300; seed++)
        {
            var engine = RandomEngines.Of(seed, 1 + seed % 16, seed % 61);
            if (ValveShims.For(engine.Valves, engine.Stock, engine.Buyable) is not { Holds: true, Certain: var plan })
                continue;
            foreach (var (valve, fit) in engine.Valves.Zip(plan.Plan))
            {
                Assert.Equal(valve.Id, fit.Valve);
                Assert.InRange(fit.Clearance.Millimetres, valve.Min.Millimetres - 1e-9, valve.Max.Millimetres + 1e-9);
                var sum = valve.Shim + valve.Clearance;
                Assert.Equal(sum.Millimetres, (fit.Shim + fit.Clearance).Millimetres, 1e-9);
            }
            var there = engine.Valves.Select(v => v.Shim).Concat(engine.Stock).ToList();
            foreach (var fit in plan.Plan.Where(f => f.From != ShimOrigin.Buy))
                Assert.True(there.Remove(there.First(s => Math.Abs((s - fit.Shim).Millimetres) < 1e-9)));
        }
    }

    // Common practice, no source: a series in steps leaves at most half a step
    [Fact]
    public void A_bought_shim_lies_within_half_a_step_of_the_target()
    {
        for (var measured = 0; measured <= 90; measured++)
        {
            var valve = new Valve("I1", new(2.4), new(measured / 1000.0), new(0.1), new(0.15));
            var fit = Assert.Single(ValveShims.For([valve], [], Series).Certain.Plan);
            Assert.Equal(ShimOrigin.Buy, fit.From);
            Assert.InRange(fit.Clearance.Millimetres, 0.1 - 1e-9, 0.15 + 1e-9);
        }
    }

    // 1.7 mm + 30 · 0.05 mm is 3.2 mm but for rounding
    [Theory]
    [InlineData(1.7, 1.7)]
    [InlineData(3.2, 3.2)]
    [InlineData(3.25, null)]
    [InlineData(1.65, null)]
    public void The_ends_of_a_series_can_be_bought_and_nothing_beyond_them(double needed, double? bought)
    {
        var valve = new Valve("I1", new(needed - 0.1), new(0.225), new(0.12), new(0.13));
        Assert.Equal(bought, ValveShims.For([valve], [], Series).Value?.Plan.Single().Shim.Millimetres);
    }

    // Everything here is aimed at 0.125 mm, the middle; what is aimed at comes from the page: bought, then squares, then changed
    [Fact]
    public void A_shim_on_the_shelf_that_comes_nearer_is_taken_though_the_own_one_would_do()
    {
        var valve = new Valve("I1", new(2.4), new(0.11), new(0.1), new(0.15));
        var plan = ValveShims.For([valve], [new(2.385)], Series).Certain;
        Assert.Equal((0, 0, 1), ShimsBySolver.Aims(plan));
        Assert.Equal(ShimOrigin.Stock, plan.Plan.Single().From);
    }

    // One bought shim would let two others move on: three valves in the middle of their limits, not at the edge. Still it is bought.
    [Fact]
    public void Nothing_is_bought_for_the_sake_of_the_middle()
    {
        Valve[] valves =
        [
            new("I1", new(2.325), new(0.1), new(0.1), new(0.15)),
            new("I2", new(2.35), new(0.1), new(0.1), new(0.15)),
            new("I3", new(2.375), new(0.1), new(0.1), new(0.15)),
        ];
        Assert.Equal((0, 3 * 50 * 50, 0), ShimsBySolver.Aims(ValveShims.For(valves, [], Series).Certain));
    }

    // 2.3 mm can be bought and is right for I1; 2.325 mm would be right for I2. The shim on the shelf is nearly right for I1,
    // but then I2 would have to buy one that is 25 µm off.
    [Fact]
    public void How_near_a_bought_shim_comes_counts_as_much()
    {
        Valve[] valves =
        [
            new("I1", new(2.4), new(0.025), new(0.1), new(0.15)),
            new("I2", new(2.425), new(0.025), new(0.1), new(0.15)),
        ];
        var plan = ValveShims.For(valves, [new(2.305)], Series).Certain;
        Assert.Equal([ShimOrigin.Buy, ShimOrigin.Stock], plan.Plan.Select(f => f.From));
        Assert.Equal((1, 40 * 40, 2), ShimsBySolver.Aims(plan));
    }

    [Fact]
    public void Of_two_equally_near_the_thinner_is_bought()
    {
        var valve = new Valve("I1", new(2.4), new(0.05), new(0.1), new(0.15));
        var fit = Assert.Single(ValveShims.For([valve], [], Series).Certain.Plan);
        Assert.Equal((2.3, 0.15), (fit.Shim.Millimetres, fit.Clearance.Millimetres));
    }

    [Fact]
    public void The_middle_of_an_odd_limit_lies_on_half_a_micrometre()
    {
        var valve = new Valve("I1", new(2.4), new(0.127), new(0.1), new(0.155));
        Assert.Equal(0.25e-6, ValveShims.For([valve], [], Series).Certain.SquaredDeviation.SquareMillimetres, 1e-15);
    }

    [Fact]
    public void Inches_never_round_a_clearance_out_of_its_limit()
    {
        // 0.004 in = 101.6 µm: 101 µm would be too tight
        var valve = new Valve("I1", new(2.4), new(0.101), new(0.1016), new(0.1524));
        Assert.NotEqual(ShimOrigin.Own, Assert.Single(ValveShims.For([valve], [], Series).Certain.Plan).From);
    }

    [Fact]
    public void A_valve_that_no_shim_fits_is_named()
    {
        Valve[] valves = [new("I1", new(2.4), new(0.12), new(0.1), new(0.15)), Tight("E2")];
        var refusal = ValveShims.For(valves, [], new(new(2.9), new(3.2), new(0.05))).Refusal!;
        Assert.Equal("noShimFits", refusal.Key);
        Assert.Contains("E2", refusal.Because);
        Assert.Contains("2.300 to 2.350 mm", refusal.Because);
    }

    [Fact]
    public void Two_valves_with_one_shim_between_them_are_refused()
    {
        var refusal = ValveShims
            .For([Tight("E1"), Tight("E2")], [new(2.325)], new(new(2.9), new(3.2), new(0.05)))
            .Refusal!;
        Assert.Equal("noShimFits", refusal.Key);
        Assert.Contains("E2", refusal.Because);
        Assert.Contains("another valve", refusal.Because);
    }

    [Theory]
    [InlineData("\"min\":\"0.2 mm\"", "valves.0.min")]
    [InlineData("\"min\":\"0.1 mm\",\"target\":\"0.16 mm\"", "valves.0.target")]
    [InlineData("\"min\":\"-0.1 mm\"", "valves.0.min")]
    public void Limits_out_of_order_are_malformed(string min, string key) =>
        Assert.StartsWith(key + ":", Malformed(min, "\"0.05 mm\""));

    [Fact]
    public void A_step_of_nothing_is_malformed() =>
        Assert.StartsWith("buyable.step:", Malformed("\"min\":\"0.1 mm\"", "\"0 mm\""));

    [Fact]
    public void The_same_valve_twice_is_malformed()
    {
        var valve = """{"id":"I1","shim":"2.4 mm","clearance":"0.1 mm","min":"0.1 mm","max":"0.15 mm"}""";
        var buyable = """{"from":"1.7 mm","to":"3 mm","step":"0.05 mm"}""";
        var given = $$"""{"valves":[{{valve}},{{valve}}],"buyable":{{buyable}} }""";
        Assert.StartsWith("valves.1.id:", Ask(given));
    }

    private static Valve Tight(string id) => new(id, new(2.4), new(0.05), new(0.1), new(0.15));

    private static string Malformed(string min, string step) =>
        Ask(
            $$"""
            {"valves":[{"id":"I1","shim":"2.4 mm","clearance":"0.1 mm",{{min}},"max":"0.15 mm"}],
             "buyable":{"from":"1.7 mm","to":"3 mm","step":{{step}} } }
            """
        );

    private static string Ask(string given) =>
        Calculations.Named("valve-shims")!.Ask(JsonDocument.Parse(given).RootElement).Malformed!;

    private static (long, long, long)? Enumerated(Valve[] valves, Length[] stock, ShimSeries buyable)
    {
        var shims = valves.Select(v => v.Shim).Concat(stock).Select(s => Math.Round(s.Millimetres * 1000)).ToArray();
        (long, long, long)? least = null;
        Choose(0, 0, (0, 0, 0));
        return least;

        void Choose(int v, int taken, (long Bought, long Squares, long Changed) sofar)
        {
            if (v == valves.Length)
            {
                least = least is { } known && known.CompareTo(sofar) <= 0 ? least : sofar;
                return;
            }
            for (var s = 0; s < shims.Length; s++)
                if ((taken >> s & 1) == 0 && Square(valves[v], shims[s]) is { } square)
                    Choose(
                        v + 1,
                        taken | 1 << s,
                        (sofar.Bought, sofar.Squares + square, sofar.Changed + (s == v ? 0 : 1))
                    );
            for (var k = 0; k * buyable.Step.Millimetres <= (buyable.To - buyable.From).Millimetres + 1e-9; k++)
                if (Square(valves[v], Math.Round((buyable.From + k * buyable.Step).Millimetres * 1000)) is { } square)
                    Choose(v + 1, taken, (sofar.Bought + 1, sofar.Squares + square, sofar.Changed + 1));
        }
    }

    private static long? Square(Valve valve, double shim)
    {
        var clearance = Math.Round((valve.Shim + valve.Clearance).Millimetres * 1000 - shim);
        var (min, max) = (valve.Min.Millimetres * 1000, valve.Max.Millimetres * 1000);
        if (clearance < min - 1e-6 || clearance > max + 1e-6)
            return null;
        var twice = 2 * clearance - 2 * (valve.Target?.Millimetres * 1000 ?? (min + max) / 2);
        return (long)Math.Round(twice * twice);
    }
}
