using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>Oil used per 1000 km from two level readings and what was added between, and whether the readings prove that any was used.</summary>
/// <remarks>
/// <para><b>Formula.</b> c = [Σ added + (f₀ − f₁)·V_lh]/d·1000 km; deviation √(2·(V_lh·s_f)² + n·s_a²)/d·1000 km. Real when
/// c &gt; 1.645 deviations: one-sided 95 %, Φ⁻¹(0.95).</para>
/// <para><b>Units.</b> f from 0 (low mark) to 1 (high mark), s_f in the same; volumes in L; d in km; deviations are one standard deviation.</para>
/// <para><b>Source.</b> Own derivation: oil balance and linear propagation (JCGM 100:2008, 5.1.2), the decision by JCGM 106:2012, 8.3. Checked
/// by drawing readings at random.</para>
/// <para><b>Valid when</b> both levels were read the same way (upright, same temperature, same waiting time), their errors are
/// independent, and every addition is in the list. The volume between the marks is taken as exact.</para>
/// </remarks>
public static class OilConsumption
{
    /// <summary>Standard deviations that a figure must exceed to be real: Φ⁻¹(0.95).</summary>
    private const double OneSided95 = 1.6448536269514722;

    private const double KilometresOfTheFigure = 1000;

    /// <summary>The figure of one stretch.</summary>
    /// <param name="added">What was poured in, each portion zero or more; empty when nothing was.</param>
    /// <param name="start">Level at the beginning; both levels have its deviation.</param>
    /// <param name="levelEnd">Level at the end.</param>
    /// <param name="betweenMarks">V_lh, more than zero.</param>
    /// <param name="distance">d, more than zero.</param>
    /// <param name="addedDeviation">s_a of one portion, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance or the volume between the marks is not above zero.</exception>
    public static OilUse Of(
        ReadOnlySpan<Volume> added,
        OilLevel start,
        double levelEnd,
        Volume betweenMarks,
        Length distance,
        Volume addedDeviation
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(betweenMarks.Litres, 0, nameof(betweenMarks));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(distance.Millimetres, 0, nameof(distance));
        var stretches = distance.Millimetres / 1e6 / KilometresOfTheFigure;
        var used = (start.Value - levelEnd) * betweenMarks;
        foreach (var portion in added)
            used += portion;
        var reading = start.Deviation * betweenMarks.Litres;
        var pouring = addedDeviation.Litres;
        var deviation = Math.Sqrt(2 * reading * reading + added.Length * pouring * pouring);
        return new(used / stretches, new(deviation / stretches), Proof(used.Litres, OneSided95 * deviation));
    }

    private static OilBalance Proof(double used, double bound)
    {
        if (used > bound)
            return OilBalance.Used;
        return used < -bound ? OilBalance.Gained : OilBalance.Unproven;
    }
}

/// <summary>What the readings prove.</summary>
public enum OilBalance
{
    /// <summary>Oil was used.</summary>
    Used,

    /// <summary>The readings are too coarse for so little.</summary>
    Unproven,

    /// <summary>There is more in the engine than before: fuel, water, an addition that nobody noted, or unlike readings.</summary>
    Gained,
}

/// <summary>Oil use of one stretch.</summary>
/// <param name="PerThousandKilometres">c; negative when the level rose by more than was added.</param>
/// <param name="Deviation">One standard deviation of it.</param>
/// <param name="Balance">What the readings prove.</param>
public sealed record OilUse(Volume PerThousandKilometres, Volume Deviation, OilBalance Balance);
