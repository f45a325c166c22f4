using Witnessmark.Handbook.Numerics;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Electrics;

/// <summary>Whether the alternator carries what is switched on, at idle and from which engine speed on.</summary>
/// <remarks>
/// <para><b>Formula.</b> demand = Σ power·duty cycle / system voltage; balance = output − demand. Output is linear between the points given. Break-even
/// is the lowest engine speed between them with output ≥ demand.</para>
/// <para><b>Units.</b> Current in A at the system voltage, power in W, engine speed in 1/min; a negative balance is drawn from the battery.</para>
/// <para><b>Source.</b> Arithmetic: power = voltage × current.</para>
/// <para><b>Valid when</b> the output is what the regulator can pass on, warm, at the engine speed (not the alternator's); the charging
/// current that an empty battery takes is a load too.</para>
/// </remarks>
public static class ChargingBudget
{
    /// <summary>Demand, balances and break-even.</summary>
    /// <param name="output">One point or more, no two at one engine speed, in any order.</param>
    /// <param name="loads">What is switched on.</param>
    /// <param name="systemVoltage">More than zero.</param>
    /// <param name="idleSpeed">Where the balance at idle is asked for.</param>
    /// <returns>Refused as <c>outsideTable</c> when the idle speed lies outside the points; all else still holds.</returns>
    /// <exception cref="ArgumentException">There is no point, or two are at one engine speed.</exception>
    public static Answer<Budget> Of(
        IReadOnlyCollection<OutputPoint> output,
        IReadOnlyCollection<ElectricLoad> loads,
        Voltage systemVoltage,
        Frequency idleSpeed
    )
    {
        var curve = new PiecewiseLinear(output.Select(o => (o.EngineSpeed.Hertz, o.Current.Amperes)).Order());
        var demand = loads.Sum(l => l.Power.Watts * l.DutyCycle) / systemVoltage.Volts;
        var budget = new Budget(
            new(demand),
            curve.At(idleSpeed.Hertz) is { } atIdle ? new Current(atIdle - demand) : null,
            curve.FirstReaching(demand) is { } speed ? new Frequency(speed) : null,
            [.. curve.Points.Select(p => new BalancePoint(new(p.X), new(p.Y), new(p.Y - demand)))]
        );
        return budget.AtIdle is null
            ? Answer<Budget>.Refuse(
                "outsideTable",
                $"The idle speed lies outside the points of the output: measure the output at idle too, or give the idle speed between them.",
                budget
            )
            : budget;
    }
}

/// <summary>What the alternator gives at an engine speed.</summary>
/// <param name="EngineSpeed">Zero or more.</param>
/// <param name="Current">Zero or more, at the system voltage.</param>
public readonly record struct OutputPoint(Frequency EngineSpeed, Current Current);

/// <summary>Something that draws current.</summary>
/// <param name="Power">Zero or more, while on.</param>
/// <param name="DutyCycle">Share of the time that it is on, 0 to 1.</param>
public readonly record struct ElectricLoad(Power Power, double DutyCycle);

/// <summary>What is left at an engine speed.</summary>
/// <param name="EngineSpeed">A point of the output.</param>
/// <param name="Current">Output there.</param>
/// <param name="Balance">Output less demand.</param>
public readonly record struct BalancePoint(Frequency EngineSpeed, Current Current, Current Balance);

/// <summary>Whether the alternator carries the loads.</summary>
/// <param name="Demand">Of all loads together.</param>
/// <param name="AtIdle">Output less demand at idle; null when refused.</param>
/// <param name="BreakEven">Lowest engine speed that carries the demand; null when none of the points does.</param>
/// <param name="Curve">The balance at each point of the output, in rising order; linear between.</param>
public sealed record Budget(Current Demand, Current? AtIdle, Frequency? BreakEven, IReadOnlyList<BalancePoint> Curve);
