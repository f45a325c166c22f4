using System.Text.Json.Nodes;
using Witnessmark.Handbook.Engine;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>valve-shims</c>.</summary>
internal static class ValveShimsContract
{
    private static readonly Input<string> Id = Take.Words("id", "name of the valve");
    private static readonly Input<Length> Shim = Thickness("shim", "measured thickness of the shim in it");
    private static readonly Input<Length> Clearance = Gap("clearance", "clearance measured, cold");
    private static readonly Input<Length> Min = Gap("min", "smallest permitted clearance");
    private static readonly Input<Length> Max = Gap("max", "largest permitted clearance");
    private static readonly Input<Length> Target = Gap("target", "clearance aimed at").OrNothing() with
    {
        Default = "middle of min and max",
    };
    private static readonly Input<Valve[]> Valves = Take.Objects(
        "valves",
        $"all valves of the engine, at most {ValveShims.MostValves}",
        [Id, Shim, Clearance, Min, Max, Target],
        ReadValve
    );
    private static readonly Input<Length[]> Stock = Take.List(
            Thickness("stock", $"measured thicknesses on the shelf, at most {ValveShims.MostInStock}"),
            0
        )
        .Or([], "nothing on the shelf");
    private static readonly Input<Length> From = Thickness("from", "thinnest");
    private static readonly Input<Length> To = Thickness("to", "thickest");
    private static readonly Input<Length> Step = Take.Bounded<Length>(
        "step",
        "what the next is thicker by",
        b => b >= 0.001 && b <= ValveShims.Longest.Millimetres,
        "0.001 mm or more"
    );
    private static readonly Input<ShimSeries> Buyable = Take.Object(
        "buyable",
        "the thicknesses that can be bought",
        [From, To, Step],
        ReadSeries
    );

    public static Calculation Calculation { get; } =
        new(
            "valve-shims",
            "Engine",
            "Which shim goes under which valve, buying as few as can be.",
            "clearance law common practice; optimum derived and checked (docs/handbook/valve-shims.md)",
            typeof(ValveShims),
            [Valves, Stock, Buyable],
            [
                new("bought", "count", "shims to buy, as few as can be"),
                new("squaredDeviation", "µm²", "sum of squared distances from the targets"),
                new("changed", "count", "valves not on their own shim"),
                new("plan", "list", "valve, shim (mm), from (own, removed, stock, buy), clearance (mm)"),
            ],
            Choose
        );

    private static Reply Choose(Given given)
    {
        var valves = given.Of(Valves);
        var stock = given.Of(Stock);
        if (valves.Length > ValveShims.MostValves)
            throw given.Wrong("valves", $"{valves.Length} valves", $"at most {ValveShims.MostValves}");
        if (stock.Length > ValveShims.MostInStock)
            throw given.Wrong("stock", $"{stock.Length} shims", $"at most {ValveShims.MostInStock}");
        for (var i = 1; i < valves.Length; i++)
            if (valves.Take(i).Any(v => v.Id == valves[i].Id))
                throw given.Wrong($"valves.{i}.id", $"\"{valves[i].Id}\" again", "each valve once");
        return Reply.To(
            ValveShims.For(valves, stock, given.Of(Buyable)),
            r =>
                new Gives()
                    .With("bought", r.Bought)
                    .With("squaredDeviation", r.SquaredDeviation, "µm²")
                    .With("changed", r.Changed)
                    .With("plan", new JsonArray([.. r.Plan.Select(Fit)]))
        );
    }

    private static JsonNode Fit(ShimFit fit) =>
        new Gives()
            .With("valve", fit.Valve)
            .With("shim", fit.Shim, "mm")
            .With("from", Word(fit.From))
            .With("clearance", fit.Clearance, "mm")
            .Json;

    private static string Word(ShimOrigin origin) =>
        origin switch
        {
            ShimOrigin.Own => "own",
            ShimOrigin.Removed => "removed",
            ShimOrigin.Stock => "stock",
            ShimOrigin.Buy => "buy",
            _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, null),
        };

    private static Valve ReadValve(Given g)
    {
        var valve = new Valve(g.Of(Id), g.Of(Shim), g.Of(Clearance), g.Of(Min), g.Of(Max), g.Maybe(Target));
        if (valve.Min > valve.Max)
            throw g.Wrong("min", "above max", "the ends in order");
        if (valve.Target is { } target && (target < valve.Min || target > valve.Max))
            throw g.Wrong("target", "outside min and max", "between them");
        return valve;
    }

    private static ShimSeries ReadSeries(Given g)
    {
        var series = new ShimSeries(g.Of(From), g.Of(To), g.Of(Step));
        return series.From <= series.To ? series : throw g.Wrong("from", "above to", "the ends in order");
    }

    private static Input<Length> Thickness(string name, string meaning) =>
        Take.Bounded<Length>(
            name,
            meaning,
            b => b >= 0.001 && b <= ValveShims.Longest.Millimetres,
            "0.001 mm to 100 mm"
        );

    private static Input<Length> Gap(string name, string meaning) =>
        Take.Bounded<Length>(name, meaning, b => b >= 0 && b <= ValveShims.Longest.Millimetres, "0 mm to 100 mm");
}
