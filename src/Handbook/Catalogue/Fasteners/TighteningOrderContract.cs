using System.Text.Json.Nodes;
using Witnessmark.Handbook.Fasteners;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>tightening-order</c>.</summary>
internal static class TighteningOrderContract
{
    private static readonly Input<int> Fasteners = Take.Count("fasteners", "fasteners on a circle", 1, 500).OrNothing();
    private static readonly Input<int> Rows = Take.Count("rows", "rows of a plate", 1, 50).OrNothing();
    private static readonly Input<int> Columns = Take.Count("columns", "columns of a plate", 1, 50).OrNothing();
    private static readonly Input<Torque> FullTorque = Take.Bounded<Torque>(
            "torque",
            "full torque",
            nm => nm is > 0 and <= 100_000,
            "more than zero, at most 100000 N·m"
        )
        .OrNothing();
    private static readonly Input<Ratio[]> Stages = Take.List(
            Take.Bounded<Ratio>(
                "stages",
                "parts of the torque, rising",
                part => part is > 0 and <= 1,
                "more than 0 %, at most 100 %"
            )
        )
        .Or([new Ratio(1)], "[\"100 %\"], used only with torque");

    public static Calculation Calculation { get; } =
        new(
            "tightening-order",
            "Fasteners",
            "Order and stages for the fasteners of a circle or a plate.",
            "common practice (crosswise, from the inside out), no source",
            typeof(TighteningOrder),
            [Fasteners, Rows, Columns, FullTorque, Stages],
            [
                new("order", "list of counts", "fasteners, numbered from 1"),
                new("steps", "list of {fastener, torque in N·m}", "every stage in this order; only with torque"),
            ],
            Order
        );

    private static Reply Order(Given given)
    {
        if (given.Has(Stages) && !given.Has(FullTorque))
            throw given.Wrong("torque", "missing beside stages", FullTorque.Kind);
        var stages = given.Of(Stages);
        if (stages.Length > 10 || stages.Zip(stages.Skip(1)).Any(pair => pair.First >= pair.Second))
            throw given.Wrong("stages", "not rising, or more than ten", "at most ten, each above the one before");
        var order = Arranged(given);
        return new Gives()
            .With("order", new JsonArray([.. order.Select(n => (JsonNode)n)]))
            .With("steps", given.Maybe(FullTorque) is { } torque ? Written(order, torque, stages) : null);
    }

    private static int[] Arranged(Given given) =>
        (given.Maybe(Fasteners), given.Maybe(Rows), given.Maybe(Columns)) switch
        {
            ({ } fasteners, null, null) => TighteningOrder.Circle(fasteners),
            (null, { } rows, { } columns) => TighteningOrder.Plate(rows, columns),
            (null, null, null) => throw given.Wrong("fasteners", "missing", "fasteners, or rows and columns"),
            (null, null, _) => throw given.Wrong("rows", "missing", Rows.Kind),
            (null, _, null) => throw given.Wrong("columns", "missing", Columns.Kind),
            _ => throw given.Wrong("fasteners", "given beside rows or columns", "fasteners, or rows and columns"),
        };

    private static JsonArray Written(int[] order, Torque torque, Ratio[] stages) =>
        new([
            .. TighteningOrder
                .Steps(order, torque, stages)
                .Select(s => new Gives().With("fastener", s.Fastener).With("torque", s.Torque, "N·m").Json),
        ]);
}
