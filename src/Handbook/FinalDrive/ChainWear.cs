using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Elongation of a chain from a caliper over several links, under tension.</summary>
/// <remarks>
/// <para><b>Formula.</b> M = (outer + inner)/2, elongation = M/(n·p) − 1, u = u_cal/(√2·n·p): outside and inside of the same two
/// rollers, so that their diameter cancels. Replace when elongation − 2u ≥ limit, keep when elongation + 2u &lt; limit, else
/// measure again elsewhere.</para>
/// <para><b>Units.</b> Lengths in mm, elongation in %.</para>
/// <para><b>Source.</b> Own derivation; the mean of inside and outside is trade practice. Limit 2 %: common practice, no source;
/// published limits run from 1.5 % to 3 %, so the maker's figure comes first.</para>
/// <para><b>Valid when</b> the run is pulled tight; 20 links or more keep u near 0.01 %. Take the worst of three places.</para>
/// </remarks>
public static class ChainWear
{
    /// <summary>The limit when nobody says otherwise: common practice, no source.</summary>
    public static readonly Ratio UsualLimit = new(0.02);

    // ISO 606 roller chains: roller diameter over pitch lies from 0.52 (04C) to 0.67 (16B); wear and caliper jaws widen this.
    private const double ThinnestRoller = 0.4;
    private const double ThickestRoller = 0.8;

    // A new chain measures 0 to +0.15 % (ISO 606 length tolerance, from memory): none is this much shorter than its links say.
    private const double ShortestChain = -0.005;

    /// <summary>The elongation and what follows from it.</summary>
    /// <param name="outer">Outside over the two rollers, more than <paramref name="inner"/>.</param>
    /// <param name="inner">Inside between the same two rollers.</param>
    /// <param name="links">Pitches between the two rollers, 1 or more.</param>
    /// <param name="pitch">Nominal pitch.</param>
    /// <param name="caliperUncertainty">One standard deviation of a caliper reading, zero or more.</param>
    /// <param name="limit">Elongation at which the chain is replaced.</param>
    /// <returns>Refused as <c>notTheSameRollers</c> or <c>shorterThanNew</c>.</returns>
    public static Answer<Elongation> From(
        Length outer,
        Length inner,
        int links,
        Length pitch,
        Length caliperUncertainty,
        Ratio limit
    )
    {
        var nominal = pitch * links;
        var elongation = (outer + inner) / 2 / nominal - 1;
        var u = caliperUncertainty / nominal / Math.Sqrt(2);
        var measured = new Elongation(new(elongation), new(u), Verdict(elongation, u, limit.Value));
        if ((outer - inner) / 2 / pitch is < ThinnestRoller or > ThickestRoller)
            return Answer<Elongation>.Refuse(
                "notTheSameRollers",
                $"Half the difference of outer and inner must be the diameter of a roller, about 0.6 of the pitch, and is not: measure both over the same two rollers."
            );
        if (elongation + 2 * u < ShortestChain)
            return Answer<Elongation>.Refuse(
                "shorterThanNew",
                $"The chain measures shorter than a new one, which cannot be: count the links between the jaws again.",
                measured with
                {
                    Verdict = null,
                }
            );
        return measured;
    }

    private static WearVerdict Verdict(double elongation, double u, double limit) =>
        elongation - 2 * u >= limit ? WearVerdict.Replace
        : elongation + 2 * u < limit ? WearVerdict.Keep
        : WearVerdict.Again;
}

/// <summary>What to do with the chain.</summary>
public enum WearVerdict
{
    /// <summary>Well within the limit.</summary>
    Keep,

    /// <summary>Over the limit.</summary>
    Replace,

    /// <summary>The caliper cannot tell: measure elsewhere.</summary>
    Again,
}

/// <summary>Elongation of a chain.</summary>
/// <param name="Value">Beyond the nominal length.</param>
/// <param name="Uncertainty">One standard deviation.</param>
/// <param name="Verdict">What to do, or null.</param>
public sealed record Elongation(Ratio Value, Ratio Uncertainty, WearVerdict? Verdict);
