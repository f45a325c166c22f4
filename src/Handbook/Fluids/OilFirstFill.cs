using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>How much oil to pour first after a change, so that the engine is not overfilled before it has run.</summary>
/// <remarks>
/// <para><b>Formula.</b> V_high = capacity − retained − (filter volume, when the old filter stays). Dose for the target level f_t:
/// V_high − (1 − f_t)·V_lh. First dose = the smaller of that and V_high − z·√(s_ret² + s_cap²), z = Φ⁻¹(1 − risk); never below zero.</para>
/// <para><b>Units.</b> Volumes and their standard deviations in L; f from 0 (low mark) to 1 (high mark), V_lh between the marks.</para>
/// <para><b>Source.</b> Own derivation: volume balance and a one-sided guard band, JCGM 106:2012, 8.3.2. Checked by drawing the
/// unknown volumes at random.</para>
/// <para><b>Valid when</b> capacity is meant with a new filter and up to the high mark, and the errors of capacity and of the oil left
/// inside are independent and normal. Then run, let settle, read, and top up by <c>oil-top-up</c>.</para>
/// </remarks>
public static class OilFirstFill
{
    /// <summary>The overfill risk taken when nobody says otherwise.</summary>
    public const double UsualRisk = 0.01;

    /// <summary>The first dose.</summary>
    /// <param name="sump">What goes in and what stayed in; room for oil must be left.</param>
    /// <param name="betweenMarks">V_lh, more than zero.</param>
    /// <param name="targetLevel">f_t, 0 to 1.</param>
    /// <param name="overfillRisk">Probability accepted, above 0, at most 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The risk or the room is outside these bounds.</exception>
    public static FirstFill Of(
        DrainedSump sump,
        Volume betweenMarks,
        double targetLevel,
        double overfillRisk = UsualRisk
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(overfillRisk, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(overfillRisk, 0.5);
        var toHigh = sump.VolumeToHigh;
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(toHigh.Litres, 0, nameof(sump));
        var forTarget = toHigh - (1 - targetLevel) * betweenMarks;
        var safe = toHigh.Litres - Normal.InvCDF(0, 1, 1 - overfillRisk) * sump.Deviation;
        return new(toHigh, forTarget, new(Math.Max(0, Math.Min(forTarget.Litres, safe))));
    }
}

/// <summary>An engine after draining.</summary>
/// <param name="Capacity">To the high mark, dry and with a new filter, more than zero.</param>
/// <param name="CapacityDeviation">One standard deviation of it.</param>
/// <param name="FilterVolume">What the filter holds.</param>
/// <param name="FilterReplaced">Whether a new, empty one is fitted.</param>
/// <param name="Retained">What does not drain.</param>
/// <param name="RetainedDeviation">One standard deviation of it.</param>
public readonly record struct DrainedSump(
    Volume Capacity,
    Volume CapacityDeviation,
    Volume FilterVolume,
    bool FilterReplaced,
    Volume Retained,
    Volume RetainedDeviation
)
{
    /// <summary>What fits up to the high mark; zero or less means that the numbers contradict each other.</summary>
    public Volume VolumeToHigh => Capacity - Retained - (FilterReplaced ? default : FilterVolume);

    internal double Deviation =>
        Math.Sqrt(
            CapacityDeviation.Litres * CapacityDeviation.Litres + RetainedDeviation.Litres * RetainedDeviation.Litres
        );
}

/// <summary>How much to pour.</summary>
/// <param name="VolumeToHigh">Up to the high mark.</param>
/// <param name="DoseForTarget">Up to the target; below zero when the retained oil already stands above it.</param>
/// <param name="FirstDose">What is safe to pour before the first reading.</param>
public sealed record FirstFill(Volume VolumeToHigh, Volume DoseForTarget, Volume FirstDose);
