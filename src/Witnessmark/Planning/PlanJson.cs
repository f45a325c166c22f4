using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Witnessmark.Bench.Kit;
using Witnessmark.Bench.Planning;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Catalogue;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Planning;

/// <summary>A plan as JSON: <c>points</c>, <c>kit</c>, <c>order</c> as <c>bench-order</c> gives it, <c>totals</c>.</summary>
internal static class PlanJson
{
    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static string Of(PlanOnDisk plan, PlannedOrder order) =>
        new JsonObject
        {
            ["points"] = new JsonArray([.. plan.Lines.Select(Line)]),
            ["kit"] = new JsonArray([.. plan.Kit.Lines.Select(Item)]),
            ["order"] = Order(order.Plan),
            ["totals"] = Totals(plan, order),
        }.ToJsonString(Written);

    private static JsonObject Line(PlanLine line) =>
        new()
        {
            ["point"] = line.Point.Id,
            ["why"] = line.Why.ToString(),
            ["reach"] = Texts(line.Point.Reach),
            ["guards"] = line.Point.Safety ? "safety" : "use",
        };

    private static JsonObject Item(KitLine item) =>
        new()
        {
            ["item"] = item.Item.ToString(),
            ["quantity"] = item.Quantity.ToString(),
            ["for"] = Texts(item.For),
        };

    private static JsonObject Order(BenchPlan plan) =>
        new Gives()
            .With("makespan", plan.Makespan, "min")
            .With("handsOn", plan.HandsOn, "min")
            .With("schedule", new JsonArray([.. plan.Schedule.Select(Step)]))
            .With("proven", plan.Proven)
            .With("lowerBound", plan.LowerBound, "min")
            .Json;

    private static JsonNode Step(BenchStep step) =>
        new Gives().With("do", step.Do).With("start", step.Start, "min").With("end", step.End, "min").Json;

    private static JsonObject Totals(PlanOnDisk plan, PlannedOrder order) =>
        new Gives()
            .With("points", plan.Lines.Count)
            .With("open", plan.Open.Open.Count)
            .With("handsOn", order.Plan.HandsOn, "min")
            .With("makespan", order.Plan.Makespan, "min")
            .With("oneByOne", order.Saved is null ? null : (Duration?)order.OneByOne, "min")
            .With("saved", order.Saved, "min")
            .Json;

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(t => (JsonNode)t)]);
}
