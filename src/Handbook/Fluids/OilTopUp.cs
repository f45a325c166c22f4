using MathNet.Numerics.Distributions;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Fluids;

/// <summary>How much oil to add after a reading, held back where the reading is too coarse to rule out overfilling.</summary>
/// <remarks>
/// <para><b>Formula.</b> V = min((f_t − f)·V_lh, V_max), never below zero. With g = 1 − f, r = s_V/V_lh, z = Φ⁻¹(1 − risk), q = 1 − z²r²:
/// V_max = V_lh·(g − z·√(s_f²·q + r²·g²))/q, zero when g ≤ z·s_f. Afterwards f + V/V_lh with deviation
/// √(s_f² + (V·s_V/V_lh²)²); overfill probability 1 − Φ((1 − f_after)/deviation).</para>
/// <para><b>Units.</b> f from 0 (low mark) to 1 (high mark), s_f in the same; volumes in L; every deviation is one standard deviation.</para>
/// <para><b>Source.</b> Own derivation: the largest V for which P(f + V/V_lh &gt; 1) is the risk, to first order in s_V. Checked by drawing
/// the true level and volume at random: at a risk of 0.01 the true one stays below 0.015 while s_V is at most 6 % of V_lh.</para>
/// <para><b>Valid when</b> the level was read after running and settling, upright, at the temperature that the mark is made for,
/// and the volume between the marks is known within 6 %; at 10 % the true risk is twice the one asked for.</para>
/// </remarks>
public static class OilTopUp
{
    /// <summary>The volume to add.</summary>
    /// <param name="level">What was read; below 0 and above 1 are levels too.</param>
    /// <param name="targetLevel">f_t, 0 to 1.</param>
    /// <param name="marks">The volume between the marks.</param>
    /// <param name="overfillRisk">Probability accepted, above 0, at most 0.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The risk is outside these bounds.</exception>
    public static TopUp Of(
        OilLevel level,
        double targetLevel,
        MarkVolume marks,
        double overfillRisk = OilFirstFill.UsualRisk
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(overfillRisk, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(overfillRisk, 0.5);
        var largest = LargestStep(level, marks.Relative, Normal.InvCDF(0, 1, 1 - overfillRisk));
        var step = Math.Max(0, Math.Min(targetLevel - level.Value, largest));
        var (spread, after) = (step * marks.Relative, level.Value + step);
        var deviation = Math.Sqrt(level.Deviation * level.Deviation + spread * spread);
        return new(step * marks.BetweenMarks, after, deviation, Overfill(after, deviation));
    }

    // The root of g − x = z·√(s² + r²x²), written without the division by q, which may be zero or negative.
    private static double LargestStep(OilLevel level, double r, double z)
    {
        var (room, guard) = (1 - level.Value, z * level.Deviation);
        if (room <= guard)
            return 0;
        var q = 1 - z * z * r * r;
        var root = Math.Sqrt(level.Deviation * level.Deviation * q + r * r * room * room);
        return (room * room - guard * guard) / (room + z * root);
    }

    private static double Overfill(double after, double deviation) =>
        deviation == 0 ? (after > 1 ? 1 : 0) : Normal.CDF(0, 1, (after - 1) / deviation);
}

/// <summary>A level on the stick or in the glass.</summary>
/// <param name="Value">0 at the low mark, 1 at the high mark.</param>
/// <param name="Deviation">One standard deviation of the reading, zero or more.</param>
public readonly record struct OilLevel(double Value, double Deviation);

/// <summary>The volume between the marks.</summary>
/// <param name="BetweenMarks">V_lh, more than zero.</param>
/// <param name="Deviation">One standard deviation, zero or more.</param>
public readonly record struct MarkVolume(Volume BetweenMarks, Volume Deviation)
{
    internal double Relative => Deviation / BetweenMarks;
}

/// <summary>What to add and what to expect.</summary>
/// <param name="Add">Volume to add.</param>
/// <param name="LevelAfter">Level to expect.</param>
/// <param name="LevelAfterDeviation">One standard deviation of it.</param>
/// <param name="OverfillProbability">That the level then stands above the high mark.</param>
public sealed record TopUp(Volume Add, double LevelAfter, double LevelAfterDeviation, double OverfillProbability);
