using Witnessmark.Handbook.Electrics;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>battery-state</c>.</summary>
internal static class BatteryStateContract
{
    private static readonly Input<Voltage> Volts = Take.Quantity<Voltage>("voltage", "at the posts, nothing drawing");
    private static readonly Input<Duration> RestedFor = Take.Quantity<Duration>(
        "restedFor",
        "since a load of 15 s was taken off"
    );
    private static readonly Input<Voltage> MeterError = Take.Quantity<Voltage>(
            "meterError",
            "largest error of the meter"
        )
        .Or(default, "0 V");

    public static Calculation Calculation { get; } =
        new(
            "battery-state",
            "Electrics",
            "How far a 12 V lead battery is charged, from its voltage at rest.",
            BatteryState.Source,
            typeof(BatteryState),
            [Volts, RestedFor, MeterError],
            [
                new("charge", "%", "by the table followed"),
                new("chargeLow", "%", "if the meter reads too high by its error"),
                new("chargeHigh", "%", "if the meter reads too low by its error"),
                new("verdict", "good, recharge or unproven", "whether 75 % are there, whatever the meter's error"),
                new("source", "text", "the table followed"),
                new("otherCharge", "%", "by another table; judges nothing"),
                new("otherSource", "text", "the other table"),
            ],
            given =>
                Reply.To(
                    BatteryState.From(given.Of(Volts), given.Of(RestedFor), given.Of(MeterError)),
                    b =>
                        new Gives()
                            .With("charge", b.Charge, "%")
                            .With("chargeLow", b.Low, "%")
                            .With("chargeHigh", b.High, "%")
                            .With("verdict", Word(b.Call))
                            .With("source", BatteryState.Source)
                            .With("otherCharge", b.Other, "%")
                            .With("otherSource", BatteryState.OtherSource)
                )
        );

    private static string Word(BatteryCall call) =>
        call switch
        {
            BatteryCall.Good => "good",
            BatteryCall.Recharge => "recharge",
            BatteryCall.Unproven => "unproven",
            _ => throw new ArgumentOutOfRangeException(nameof(call), call, null),
        };
}
