using Witnessmark.Handbook.Numerics;
using Witnessmark.Handbook.Quantities;
using Witnessmark.Handbook.ReferenceData;

namespace Witnessmark.Handbook.Electrics;

/// <summary>How far a 12 V lead battery is charged, from its voltage at rest.</summary>
/// <remarks>
/// <para><b>Formula.</b> Charge from the table, linear between its rows; the lowest row holds below it and the highest above. Low and high:
/// the same at voltage ∓ meter error. Good when low ≥ 75 %, recharge when high &lt; 75 %, else unproven.</para>
/// <para><b>Units.</b> V at the posts; charge in per cent. The meter error is the largest one, not a standard deviation.</para>
/// <para><b>Source.</b> US Army TM 5-3805-262-20, p. 5-142: 11.7 V or less 0 %, 12.0 V 25 %, 12.2 V 50 %, 12.4 V 75 %, 12.6 V or more 100 %; at
/// least 12.4 V (75 %) is probably in order. The table of Battery Council International (second-hand copy) reads up to
/// 16 points of per cent lower; its charge comes out beside it and judges nothing.</para>
/// <para><b>Valid when</b> a wet 12 V lead battery was loaded for 15 s (lights on, engine off) and left for 3 min or more, nothing drawing, near 25 °C.
/// Not for lithium, gel or 6 V batteries; the voltage tells the charge, not the capacity.</para>
/// </remarks>
public static class BatteryState
{
    /// <summary>Where the charge is from.</summary>
    public const string Source = "US Army TM 5-3805-262-20, p. 5-142";

    /// <summary>Where the other charge is from.</summary>
    public const string OtherSource = "Battery Council International, second-hand copy";

    private const double LeastRest = 180; // s, US Army TM 5-3805-262-20, p. 5-142: wait 3 minutes
    private const double GoodFrom = 75; // per cent, the same page: 12.4 V probably in order
    private const double Rounding = 1e-9; // 3 min in another unit, a limit met to the last digit

    private static readonly PiecewiseLinear Table = Rows("battery-open-circuit-voltage.csv");
    private static readonly PiecewiseLinear OtherTable = Rows("battery-open-circuit-voltage-bci.csv");

    /// <summary>The charge with what the meter leaves open.</summary>
    /// <param name="voltage">At rest, zero or more.</param>
    /// <param name="restedFor">Since the load was taken off.</param>
    /// <param name="meterError">Largest error of the meter, zero or more.</param>
    /// <returns>Refused as <c>notRested</c> before 3 min.</returns>
    public static Answer<BatteryCharge> From(Voltage voltage, Duration restedFor, Voltage meterError)
    {
        if (restedFor.Seconds < LeastRest * (1 - Rounding))
            return Answer<BatteryCharge>.Refuse(
                "notRested",
                $"Too soon: the voltage has not settled. Load the battery for 15 s (lights on, engine off), then leave it for 3 min with nothing drawing, and read."
            );
        var low = In(Table, voltage - meterError);
        var high = In(Table, voltage + meterError);
        return new BatteryCharge(In(Table, voltage), low, high, Judge(low, high), In(OtherTable, voltage));
    }

    private static BatteryCall Judge(Ratio low, Ratio high) =>
        Enough(low) ? BatteryCall.Good
        : Enough(high) ? BatteryCall.Unproven
        : BatteryCall.Recharge;

    private static bool Enough(Ratio charge) => charge.Value * 100 >= GoodFrom - Rounding;

    // "11.7 or less" and "12.6 or more": the end rows of the table hold beyond it
    private static Ratio In(PiecewiseLinear table, Voltage voltage) =>
        new(table.At(Math.Clamp(voltage.Volts, table.First.X, table.Last.X))!.Value / 100);

    private static PiecewiseLinear Rows(string name) =>
        new(PublishedTable.Read(name).Rows.Select(r => (r.Number("voltage"), r.Number("charge"))).Order());
}

/// <summary>What to do with a battery.</summary>
public enum BatteryCall
{
    /// <summary>Charged enough, whatever the meter's error.</summary>
    Good,

    /// <summary>Not charged enough, whatever the meter's error.</summary>
    Recharge,

    /// <summary>The meter cannot tell.</summary>
    Unproven,
}

/// <summary>How far a battery is charged.</summary>
/// <param name="Charge">By the table followed.</param>
/// <param name="Low">If the meter reads too high by its error.</param>
/// <param name="High">If the meter reads too low by its error.</param>
/// <param name="Call">What to do.</param>
/// <param name="Other">Charge by the other table.</param>
public sealed record BatteryCharge(Ratio Charge, Ratio Low, Ratio High, BatteryCall Call, Ratio Other);
