using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Turns that remain on both chain adjusters, learnt from the trials already made on this machine.</summary>
/// <remarks>
/// <para><b>Formula.</b> S² = S₀² − c·n: the slack squared falls in a straight line with the turns, whatever the thread and the
/// geometry. Two trials give c = (S₀² − S₁²)/n in closed form; three and more a least-squares line through S² − σ² with
/// weights 1/(4S²σ² + 2σ⁴). Default target √((min² + max²)/2), the middle of the limit in turns.</para>
/// <para><b>Units.</b> Slack is the total movement of the middle of the lower run, in mm; turns are cumulative and count
/// tightening positive; c in mm² per turn.</para>
/// <para><b>Source.</b> Derived in docs/handbook/chain-adjustment.md from two tangent runs of a closed loop; checked by an
/// independent brute-force computation of the loop.</para>
/// <para><b>Valid when</b> every trial was read the same way (same place on the chain, same hand force), in the tightening
/// direction, 10 to 70 mm. The uncertainties are linear propagation: right within 5 % between the trials, too small far beyond them.
/// The bounds turnsLow and turnsHigh (95 %, Fieller's method for a ratio of normal variables) hold there too. With three trials and
/// more chi-square tells whether they lie on one line; from four on it can tell which one does not.</para>
/// </remarks>
public static class ChainAdjustment
{
    /// <summary>A trial must move S² by this many of its standard deviations before it teaches anything.</summary>
    private const double LeastMove = 2;

    /// <summary>Standard deviations to either side that leave out 5 % in all: Φ⁻¹(0.975).</summary>
    private const double TwoSided95 = 1.959963984540054;

    /// <summary>The turns that remain from the last trial to the target.</summary>
    /// <param name="trials">Two or more, in the order they were made.</param>
    /// <param name="target">Slack wanted, more than zero.</param>
    /// <param name="slackUncertainty">One standard deviation of a slack reading, more than zero.</param>
    /// <param name="flatsPerTurn">Flats of the adjuster's head, usually 6.</param>
    /// <returns>Refused as <c>trialTooSmall</c>, <c>notTightening</c> or <c>wouldGoTaut</c>.</returns>
    /// <exception cref="ArgumentException">Fewer than two trials.</exception>
    public static Answer<Remaining> From(
        ReadOnlySpan<Trial> trials,
        Length target,
        Length slackUncertainty,
        int flatsPerTurn = 6
    )
    {
        if (trials.Length < 2)
            throw new ArgumentException("Two trials or more are needed.", nameof(trials));
        var line =
            trials.Length == 2
                ? SlackLine.Through(trials[0], trials[1], slackUncertainty)
                : SlackLine.Fitted(trials, slackUncertainty);
        if (line is not { } known || known.MoveInDeviations < LeastMove)
            return Answer<Remaining>.Refuse(
                "trialTooSmall",
                $"The trial moved the slack too little to learn from: make a larger step on both adjusters and read again."
            );
        if (known.Law.SquareMillimetresPerTurn < 0)
            return Answer<Remaining>.Refuse(
                "notTightening",
                $"The slack grew while the adjusters were tightened: check the direction, the place on the chain and the readings."
            );
        return Guarded(known, target, flatsPerTurn);
    }

    /// <summary>The middle of a limit in turns: equal adjuster error either way breaks it.</summary>
    public static Length MiddleInTurns(Length min, Length max) =>
        new(Math.Sqrt((min.Millimetres * min.Millimetres + max.Millimetres * max.Millimetres) / 2));

    private static Answer<Remaining> Guarded(SlackLine line, Length target, int flatsPerTurn)
    {
        var turns = line.TurnsTo(target);
        var uncertainty = line.TurnsUncertainty(target);
        var tautAfter = line.TurnsTo(new Length(0));
        var bounds = line.Bounds(target, TwoSided95);
        TrialCheck? check = line is { ChiSquare: { } chiSquare, ChiSquareWithout: { } without }
            ? TrialCheck.Of(chiSquare, without)
            : null;
        var remaining = new Remaining(
            line.Law,
            turns,
            turns.Count * flatsPerTurn,
            target,
            uncertainty,
            new Length(uncertainty.Count * line.Law.SquareMillimetresPerTurn / (2 * target.Millimetres)),
            tautAfter,
            target,
            line.ChiSquare
        )
        {
            TurnsLow = bounds?.Low,
            TurnsHigh = bounds?.High,
            Consistent = check?.Consistent,
            Suspect = check?.Suspect,
        };
        if (turns.Count + 2 * uncertainty.Count < tautAfter.Count)
            return remaining;
        return Answer<Remaining>.Refuse(
            "wouldGoTaut",
            $"So far from the trials the answer is too uncertain: it could pull the chain taut. Make a smaller step, read, and ask again.",
            remaining with
            {
                Turns = null,
                Flats = null,
                Expected = null,
                ExpectedUncertainty = null,
                // The least step is what to make instead; the most would be past taut.
                TurnsHigh = null,
            }
        );
    }
}

/// <summary>One reading of the slack at a known place of the adjusters.</summary>
/// <param name="Turns">Turns made so far on both adjusters, tightening positive.</param>
/// <param name="Slack">Slack read there, more than zero.</param>
public readonly record struct Trial(Turns Turns, Length Slack);

/// <summary>What remains to be done on both adjusters.</summary>
/// <param name="Law">c, how much slack squared a turn takes.</param>
/// <param name="Turns">From the last trial; negative loosens.</param>
/// <param name="Flats">The same in flats of the head.</param>
/// <param name="Expected">Slack after these turns by the law.</param>
/// <param name="TurnsUncertainty">One standard deviation.</param>
/// <param name="ExpectedUncertainty">One standard deviation of the slack after these turns.</param>
/// <param name="TautAfter">Turns from the last trial that would pull the chain taut.</param>
/// <param name="Target">The slack aimed at.</param>
/// <param name="ChiSquare">Of three trials or more; its mean is the number of trials less two.</param>
public sealed record Remaining(
    TurnSlackLaw Law,
    Turns? Turns,
    double? Flats,
    Length? Expected,
    Turns TurnsUncertainty,
    Length? ExpectedUncertainty,
    Turns TautAfter,
    Length Target,
    double? ChiSquare
)
{
    /// <summary>Fewest turns to the target, 95 % with <see cref="TurnsHigh"/>: the step that is safe to make first.</summary>
    public Turns? TurnsLow { get; init; }

    /// <summary>Most turns to the target, 95 % with <see cref="TurnsLow"/>.</summary>
    public Turns? TurnsHigh { get; init; }

    /// <summary>Whether three trials or more lie on one line, at 1 %.</summary>
    public bool? Consistent { get; init; }

    /// <summary>Position from 0 of the one trial that does not lie on the line of the others, or null.</summary>
    public int? Suspect { get; init; }
}
