using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Controls;

/// <summary>Turns that remain on a cable adjuster, learnt from the trials already made.</summary>
/// <remarks>
/// <para><b>Formula.</b> play = A − c·n: a least-squares line, every trial with the same weight. n = (play on the line at the last trial −
/// target)/c; taut after (play on the line at the last trial)/c. Deviation of c: u/√S_xx; of n: (u/c)·√(1/m + (n_total − x̄)²/S_xx).
/// Default target: the middle of the limit. The bounds are the roots of (play on the line − target)² = z²·variance of the line there,
/// z = 1.96.</para>
/// <para><b>Units.</b> Play in mm at the place where it is specified; turns are cumulative and count tightening positive; c in mm per turn.</para>
/// <para><b>Source.</b> Ordinary least squares (JCGM 100:2008, H.3); that a screw takes the same length of cable at every turn and the
/// lever passes it on in a fixed ratio is geometry. Bounds: E. C. Fieller, Journal of the Royal Statistical Society B 16 (1954) 175
/// (from memory). Checked by drawing readings at random.</para>
/// <para><b>Valid when</b> the cable has play at every trial, the handlebar and the lever stand alike. The guard against a taut cable
/// takes the deviation by linear propagation, right near the trials; the bounds turnsLow and turnsHigh (95 %) hold far from them too.</para>
/// </remarks>
public static class CableFreePlay
{
    /// <summary>The trials must move the play by this many deviations of the line before they teach anything.</summary>
    private const double LeastMove = 2;

    /// <summary>Standard deviations within which 95 % of a normal distribution lie (JCGM 100:2008, table G.1: 1.960).</summary>
    private const double Coverage = 1.959_964;

    /// <summary>The turns that remain from the last trial to the target.</summary>
    /// <param name="trials">Two or more, in the order they were made.</param>
    /// <param name="target">Play wanted, more than zero.</param>
    /// <param name="playUncertainty">u, one standard deviation of a reading, more than zero.</param>
    /// <returns>Refused as <c>trialTooSmall</c>, <c>notTightening</c> or <c>wouldGoTaut</c>.</returns>
    /// <exception cref="ArgumentException">Fewer than two trials.</exception>
    public static Answer<RemainingPlay> From(ReadOnlySpan<PlayTrial> trials, Length target, Length playUncertainty)
    {
        if (trials.Length < 2)
            throw new ArgumentException("Two trials or more are needed.", nameof(trials));
        var u = playUncertainty.Millimetres;
        var line = PlayLine.Through(trials);
        if (line is not { } l || Math.Abs(l.PerTurn) < LeastMove * u / Math.Sqrt(l.Sxx))
            return Answer<RemainingPlay>.Refuse(
                "trialTooSmall",
                $"The trial moved the play too little to learn from: turn the adjuster further and read again."
            );
        if (l.PerTurn < 0)
            return Answer<RemainingPlay>.Refuse(
                "notTightening",
                $"The play grew while the adjuster was tightened: check the direction and the readings."
            );
        return Guarded(l, target, u);
    }

    private static Answer<RemainingPlay> Guarded(PlayLine line, Length target, double u)
    {
        var turns = line.TurnsTo(target.Millimetres);
        var tautAfter = line.TurnsTo(0);
        // a line that the trials prove at two deviations has bounds at 1.96
        var (low, high) = line.Bounds(target.Millimetres, u, Coverage)!.Value;
        var remaining = new RemainingPlay(new(line.PerTurn), new(turns), new(low), new(high), target, new(tautAfter));
        if (turns + 2 * line.TurnsDeviation(target.Millimetres, u) < tautAfter)
            return remaining;
        return Answer<RemainingPlay>.Refuse(
            "wouldGoTaut",
            $"The target lies so near to a taut cable that these readings cannot rule it out: read more exactly, or make a smaller step.",
            remaining with
            {
                Turns = null,
                Expected = null,
            }
        );
    }
}

/// <summary>One reading of the play at a known place of the adjuster.</summary>
/// <param name="Turns">Turns made so far, tightening positive.</param>
/// <param name="Play">Play read there, more than zero.</param>
public readonly record struct PlayTrial(Turns Turns, Length Play);

/// <summary>What remains to be done on the adjuster.</summary>
/// <param name="PerTurn">c, play that a turn takes.</param>
/// <param name="Turns">From the last trial; negative loosens; null when refused.</param>
/// <param name="Low">Fewest turns to the target, 95 %; the step to make first.</param>
/// <param name="High">Most turns to the target, 95 %.</param>
/// <param name="Expected">Play after these turns; null when refused.</param>
/// <param name="TautAfter">Turns from the last trial that would leave no play.</param>
public sealed record RemainingPlay(
    TurnTravel PerTurn,
    Turns? Turns,
    Turns Low,
    Turns High,
    Length? Expected,
    Turns TautAfter
);
