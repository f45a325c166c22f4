using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>The slack to set before the axle nut is tightened, so that it is right afterwards.</summary>
/// <remarks>
/// <para><b>Formula.</b> q = b² − a² of each pair (before, after) with variance v = 4σ²(b² + a²) + 4σ⁴ + s²; prior q ~ N(m₀, t₀²).
/// Posterior precision 1/t₀² + Σ1/v, mean q = (m₀/t₀² + Σq/v)/precision. Set S = √(S_t² + q); deviation of the slack
/// afterwards √(1/precision + s²)/(2·S_t).</para>
/// <para><b>Units.</b> Slack and σ in mm; q, m₀, t₀ and the job-to-job scatter s in mm². Every deviation is one standard deviation.</para>
/// <para><b>Source.</b> Own derivation: the nut moves the axle by the same distance each time, so it takes the same slack squared
/// (docs/handbook/chain-adjustment.md); normal prior and normal likelihood. Checked by a posterior on a grid.</para>
/// <para><b>Valid when</b> the axle was snugged the same way before every pair and the slack lies between 10 and 70 mm.
/// Always read again after tightening.</para>
/// </remarks>
public static class AxleNutShift
{
    /// <summary>Learns the shift from the pairs and gives the slack to set.</summary>
    /// <param name="pairs">Any number, also none: then the prior alone speaks.</param>
    /// <param name="target">S_t, slack wanted with the nut tight, more than zero.</param>
    /// <param name="prior">What is believed before the first pair.</param>
    /// <param name="jobScatter">s, how much q differs from job to job, zero or more.</param>
    /// <param name="readingUncertainty">σ, one standard deviation of a slack reading, zero or more but not zero together with s.</param>
    /// <returns>Refused as <c>outOfReach</c> when the nut loosens the chain by more than the whole target.</returns>
    /// <exception cref="ArgumentException">There are pairs, and neither scatter nor uncertainty.</exception>
    public static Answer<NutShift> From(
        ReadOnlySpan<NutPair> pairs,
        Length target,
        ShiftBelief prior,
        Area jobScatter,
        Length readingUncertainty
    )
    {
        if (pairs.Length > 0 && jobScatter.SquareMillimetres == 0 && readingUncertainty.Millimetres == 0)
            throw new ArgumentException("Pairs without any scatter cannot be weighed.", nameof(jobScatter));
        var learnt = Learn(pairs, prior, jobScatter.SquareMillimetres, readingUncertainty.Millimetres);
        var squared = target.Millimetres * target.Millimetres + learnt.Mean.SquareMillimetres;
        if (squared <= 0)
            return Answer<NutShift>.Refuse(
                "outOfReach",
                $"The nut loosens the chain by more than the whole target: no setting ends there. Check the pairs, or snug the axle first.",
                new(learnt.Mean, learnt.Deviation, null, null)
            );
        var spread = Math.Sqrt(Squared(learnt.Deviation.SquareMillimetres) + Squared(jobScatter.SquareMillimetres));
        return new NutShift(
            learnt.Mean,
            learnt.Deviation,
            new(Math.Sqrt(squared)),
            new(spread / (2 * target.Millimetres))
        );
    }

    private static ShiftBelief Learn(ReadOnlySpan<NutPair> pairs, ShiftBelief prior, double scatter, double sigma)
    {
        var precision = 1 / Squared(prior.Deviation.SquareMillimetres);
        var weighed = prior.Mean.SquareMillimetres * precision;
        foreach (var pair in pairs)
        {
            var (before, after) = (Squared(pair.Before.Millimetres), Squared(pair.After.Millimetres));
            var variance = 4 * sigma * sigma * (before + after) + 4 * Squared(sigma * sigma) + scatter * scatter;
            precision += 1 / variance;
            weighed += (before - after) / variance;
        }
        return new(new(weighed / precision), new(1 / Math.Sqrt(precision)));
    }

    private static double Squared(double value) => value * value;
}

/// <summary>The slack before and after the nut was tightened.</summary>
/// <param name="Before">With the axle snug, more than zero.</param>
/// <param name="After">With the nut tight, more than zero.</param>
public readonly record struct NutPair(Length Before, Length After);

/// <summary>What is believed of the shift q.</summary>
/// <param name="Mean">Of either sign: positive tightens the chain.</param>
/// <param name="Deviation">One standard deviation, more than zero.</param>
public readonly record struct ShiftBelief(Area Mean, Area Deviation);

/// <summary>What the nut does and what to set for it.</summary>
/// <param name="Shift">q, slack squared that the nut takes.</param>
/// <param name="ShiftDeviation">One standard deviation of it.</param>
/// <param name="SetTo">Slack to set with the axle snug; null when none ends at the target.</param>
/// <param name="FinalDeviation">One standard deviation of the slack with the nut tight; null beside a null setting.</param>
public sealed record NutShift(Area Shift, Area ShiftDeviation, Length? SetTo, Length? FinalDeviation);
