using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>chain-adjustment</c>.</summary>
internal static class ChainAdjustmentContract
{
    private static readonly Input<double> TurnsMade = Take.Number("turns", "turns made so far on both adjusters");
    private static readonly Input<Length> Slack = Take.Positive<Length>("slack", "slack read there");
    private static readonly Input<Trial[]> Trials = Take.Objects(
        "trials",
        "readings at known turns, in order",
        [TurnsMade, Slack],
        g => new Trial(new Turns(g.Of(TurnsMade)), g.Of(Slack)),
        2
    );
    private static readonly Input<Length> Target = Take.Positive<Length>("target", "slack wanted").OrNothing();
    private static readonly Input<Length> Min = Take.Quantity<Length>("min", "smallest permitted slack");
    private static readonly Input<Length> Max = Take.Positive<Length>("max", "largest permitted slack");
    private static readonly Input<(Length Min, Length Max)> LimitGiven = Take.Object(
            "limit",
            "taken for the target when none is given: √((min²+max²)/2)",
            [Min, Max],
            g => (g.Of(Min), g.Of(Max))
        )
        .OrNothing();
    private static readonly Input<Length> SlackUncertainty = Take.Positive<Length>(
        "slackUncertainty",
        "one standard deviation of a slack reading"
    );
    private static readonly Input<int> FlatsPerTurn = Take.Count("flatsPerTurn", "flats of the adjuster's head", 1, 12)
        .Or(6, "6");

    public static Calculation Calculation { get; } =
        new(
            "chain-adjustment",
            "FinalDrive",
            "Turns that remain on both chain adjusters, learnt from the trials made.",
            "own derivation, checked by brute force (docs/handbook/chain-adjustment.md)",
            typeof(ChainAdjustment),
            [Trials, Target, LimitGiven, SlackUncertainty, FlatsPerTurn],
            [
                new("law", "mm²/turn", "slack squared that a turn takes"),
                new("turns", "turn", "from the last trial; negative loosens"),
                new("flats", "flat", "the same in flats"),
                new("expected", "mm", "slack after these turns"),
                new("turnsUncertainty", "turn", "one standard deviation"),
                new("expectedUncertainty", "mm", "one standard deviation"),
                new("tautAfter", "turn", "from the last trial"),
                new("target", "mm", "slack aimed at"),
                new("chiSquare", "1", "of three trials or more"),
                new("turnsLow", "turn", "fewest turns to the target, 95 %; the step to make first"),
                new("turnsHigh", "turn", "most turns to the target, 95 %"),
                new("consistent", "true or false", "three trials or more: whether they lie on one line, at 1 %"),
                new("suspect", "count", "position from 0 of the one trial off the line of the others"),
            ],
            Adjust
        );

    private static Reply Adjust(Given given)
    {
        var answer = ChainAdjustment.From(
            given.Of(Trials),
            Aim(given),
            given.Of(SlackUncertainty),
            given.Of(FlatsPerTurn)
        );
        return Reply.To(answer, Written);
    }

    private static Gives Written(Remaining r)
    {
        var gives = new Gives()
            .With("law", r.Law, "mm²/turn")
            .With("turns", r.Turns, "turn")
            .With("flats", r.Flats, "flat")
            .With("expected", r.Expected, "mm")
            .With("turnsUncertainty", r.TurnsUncertainty, "turn")
            .With("expectedUncertainty", r.ExpectedUncertainty, "mm")
            .With("tautAfter", r.TautAfter, "turn")
            .With("target", r.Target, "mm")
            .With("chiSquare", r.ChiSquare, "1")
            .With("turnsLow", r.TurnsLow, "turn")
            .With("turnsHigh", r.TurnsHigh, "turn");
        if (r.Consistent is { } consistent)
            gives.With("consistent", consistent);
        return r.Suspect is { } suspect ? gives.With("suspect", suspect) : gives;
    }

    private static Length Aim(Given given)
    {
        if (given.Maybe(Target) is { } target)
            return target;
        if (!given.Has(LimitGiven))
            throw given.Wrong("target", "missing, and no limit either", "a target, or a limit to take the middle of");
        var (min, max) = given.Of(LimitGiven);
        return min < max
            ? ChainAdjustment.MiddleInTurns(min, max)
            : throw given.Wrong("limit", "min not below max", "the ends in order");
    }
}
