using System.Text.Json.Nodes;
using Witnessmark.Handbook.Electrics;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>charging-budget</c>.</summary>
internal static class ChargingBudgetContract
{
    private static readonly Input<Frequency> EngineSpeed = Take.Quantity<Frequency>("engineSpeed", "of the engine");
    private static readonly Input<Current> Amperes = Take.Quantity<Current>("current", "output there");
    private static readonly Input<OutputPoint[]> Output = Take.Objects(
        "output",
        "what the alternator gives, in any order; linear between",
        [EngineSpeed, Amperes],
        g => new OutputPoint(g.Of(EngineSpeed), g.Of(Amperes))
    );
    private static readonly Input<string> Name = Take.Words("name", "what draws it");
    private static readonly Input<Power> Watts = Take.Quantity<Power>("power", "while it is on");
    private static readonly Input<double> DutyCycle = Take.Number("dutyCycle", "share of the time it is on", 0, 1)
        .Or(1, "1");
    private static readonly Input<ElectricLoad[]> Loads = Take.Objects(
        "loads",
        "what is switched on",
        [Name, Watts, DutyCycle],
        g =>
        {
            _ = g.Of(Name); // read to be checked: the answer does not repeat it
            return new ElectricLoad(g.Of(Watts), g.Of(DutyCycle));
        }
    );
    private static readonly Input<Voltage> SystemVoltage = Take.Positive<Voltage>(
        "systemVoltage",
        "while charging, not the battery's name"
    );
    private static readonly Input<Frequency> IdleSpeed = Take.Quantity<Frequency>("idleSpeed", "within the output");

    public static Calculation Calculation { get; } =
        new(
            "charging-budget",
            "Electrics",
            "Whether the alternator carries what is switched on, at idle and from which engine speed on.",
            "arithmetic",
            typeof(ChargingBudget),
            [Output, Loads, SystemVoltage, IdleSpeed],
            [
                new("demand", "A", "of all loads together"),
                new("balanceAtIdle", "A", "output less demand; negative is drawn from the battery"),
                new("breakEvenSpeed", "1/min", "lowest that carries the demand; left out when no point does"),
                new("curve", "list", "each point of the output: engineSpeed, current, balance; linear between"),
            ],
            Weigh
        );

    private static Reply Weigh(Given given)
    {
        var output = given.Of(Output);
        if (output.DistinctBy(o => o.EngineSpeed).Count() < output.Length)
            throw given.Wrong(Output.Name, "two points at one engine speed", "each engine speed once");
        return Reply.To(
            ChargingBudget.Of(output, given.Of(Loads), given.Of(SystemVoltage), given.Of(IdleSpeed)),
            b =>
                new Gives()
                    .With("demand", b.Demand, "A")
                    .With("balanceAtIdle", b.AtIdle, "A")
                    .With("breakEvenSpeed", b.BreakEven, "1/min")
                    .With("curve", new JsonArray([.. b.Curve.Select(Point)]))
        );
    }

    private static JsonObject Point(BalancePoint point) =>
        new Gives()
            .With("engineSpeed", point.EngineSpeed, "1/min")
            .With("current", point.Current, "A")
            .With("balance", point.Balance, "A")
            .Json;
}
