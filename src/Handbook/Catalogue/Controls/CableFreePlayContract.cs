using Witnessmark.Handbook.Controls;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Catalogue;

/// <summary>The contract of <c>cable-free-play</c>.</summary>
internal static class CableFreePlayContract
{
    private static readonly Input<double> TurnsMade = Take.Number("turns", "turns made so far, tightening positive");
    private static readonly Input<Length> Play = Take.Positive<Length>("play", "play read there");
    private static readonly Input<PlayTrial[]> Trials = Take.Objects(
        "trials",
        "readings at known turns, in order",
        [TurnsMade, Play],
        g => new PlayTrial(new Turns(g.Of(TurnsMade)), g.Of(Play)),
        2
    );
    private static readonly Input<Length> Target = Take.Positive<Length>("target", "play wanted").OrNothing();
    private static readonly Input<Length> Min = Take.Quantity<Length>("min", "smallest permitted play");
    private static readonly Input<Length> Max = Take.Positive<Length>("max", "largest permitted play");
    private static readonly Input<(Length Min, Length Max)> LimitGiven = Take.Object(
            "limit",
            "its middle is the target when none is given",
            [Min, Max],
            g => (g.Of(Min), g.Of(Max))
        )
        .OrNothing();
    private static readonly Input<Length> PlayUncertainty = Take.Positive<Length>(
        "playUncertainty",
        "one standard deviation of a reading"
    );

    public static Calculation Calculation { get; } =
        new(
            "cable-free-play",
            "Controls",
            "Turns that remain on a cable adjuster, learnt from the trials made.",
            "ordinary least squares, JCGM 100:2008 (GUM) H.3",
            typeof(CableFreePlay),
            [Trials, Target, LimitGiven, PlayUncertainty],
            [
                new("perTurn", "mm/turn", "play that a turn takes"),
                new("turns", "turn", "from the last trial; negative loosens"),
                new("turnsLow", "turn", "fewest turns to the target, 95 %; the step to make first"),
                new("turnsHigh", "turn", "most turns to the target, 95 %"),
                new("expected", "mm", "play after these turns"),
                new("tautAfter", "turn", "from the last trial"),
            ],
            Adjust
        );

    private static Reply Adjust(Given given) =>
        Reply.To(
            CableFreePlay.From(given.Of(Trials), Aim(given), given.Of(PlayUncertainty)),
            r =>
                new Gives()
                    .With("perTurn", r.PerTurn, "mm/turn")
                    .With("turns", r.Turns, "turn")
                    .With("turnsLow", r.Low, "turn")
                    .With("turnsHigh", r.High, "turn")
                    .With("expected", r.Expected, "mm")
                    .With("tautAfter", r.TautAfter, "turn")
        );

    private static Length Aim(Given given)
    {
        if (given.Maybe(Target) is { } target)
            return target;
        if (!given.Has(LimitGiven))
            throw given.Wrong("target", "missing, and no limit either", "a target, or a limit to take the middle of");
        var (min, max) = given.Of(LimitGiven);
        return min < max ? (min + max) / 2 : throw given.Wrong("limit", "min not below max", "the ends in order");
    }
}
