using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>How far to turn both chain adjusters, and what the trials made so far teach.</summary>
internal static class ChainAdvice
{
    private const int FlatsPerTurn = 6;

    /// <summary>First step while nothing is known of this machine: enough to learn from, too little to pull a slack chain taut.</summary>
    private const double FirstStep = 0.5;

    private static readonly Unit Millimetre = UnitTable.Named("mm");

    public static Advice? Of(Situation situation)
    {
        if (situation.Current is not { Opinion.Value: not null })
            return null;
        if (situation.Figure is not { Kind: FigureKind.Range, Min: { } min, Max: { } max } figure)
            return Advise.Cannot($"The figure sheet has no range for the slack, so there is nothing to aim at.");
        var middle =
            situation.Point.Quantity<Length>("target")
            ?? ChainAdjustment.MiddleInTurns(new(figure.Unit.ToBase(min)), new(figure.Unit.ToBase(max)));
        var run = ChainRun.Of(situation, situation.Point);
        var aim = Aim(situation, run, middle);
        if (run.Trials.Count >= 2 && run.Uncertainty is { Millimetres: > 0 } u)
            return FromTrials(situation, run, aim, u, middle);
        if (!situation.IsOutside())
            return NutLearnt(situation, run, middle);
        return run.Law is { } law ? FromLaw(run, law, aim) : First(run.Trials[^1].Slack, aim);
    }

    /// <summary>The middle of the limit, or as much beside it as the nut is known to take when it is tightened.</summary>
    private static Length Aim(Situation situation, ChainRun run, Length middle) =>
        NutAdvice.Shift(situation, run, middle)?.SetTo ?? middle;

    private static Advice First(Length slack, Length aim)
    {
        var turns = slack > aim ? FirstStep : -FirstStep;
        return new(
            $"To bring it to {Numerals.With(aim.Millimetres, Millimetre, 1)}",
            $"Both adjusters {Numerals.Turns(turns)} {Way(turns)}, then read again",
            [
                $"The next reading shows how this machine answers; the tool then gives the exact remainder.",
                .. Handling(turns),
            ],
            true,
            null,
            null,
            [],
            new(turns, null, null, null),
            null
        );
    }

    private static Advice FromLaw(ChainRun run, TurnSlackLaw law, Length aim)
    {
        var slack = run.Trials[^1].Slack.Millimetres;
        var c = law.SquareMillimetresPerTurn;
        var turns = (slack * slack - aim.Millimetres * aim.Millimetres) / c;
        return new(
            $"To bring it to {Numerals.With(aim.Millimetres, Millimetre, 1)}",
            Headline(turns),
            [
                $"By the {Numerals.With(c, UnitTable.Named("mm²"), 0)} a turn learnt before the axle nut was tightened.",
                .. Handling(turns),
            ],
            true,
            aim.Millimetres,
            null,
            [
                $"n = (S² − St²)/c = ({Numerals.Plain(slack)}² − {Numerals.Plain(aim.Millimetres)}²)/{Numerals.Plain(c, 0)} = {Numerals.Plain(turns, 3)} turn",
            ],
            new(turns, null, null, null),
            null
        );
    }

    private static Advice? FromTrials(Situation situation, ChainRun run, Length aim, Length u, Length middle)
    {
        var answer = ChainAdjustment.From([.. run.Trials], aim, u, FlatsPerTurn);
        if (answer is { Refusal: { } refusal })
            return situation.IsOutside() ? Advise.Cannot(refusal.Because) : null;
        var r = answer.Certain;
        var outside = situation.IsOutside();
        var turns = r.Turns!.Value.Count;
        return new(
            outside ? (Sentence)$"To bring it to {Numerals.With(aim.Millimetres, Millimetre, 1)}" : null,
            outside
                ? Headline(turns)
                : (Sentence)
                    $"{Numerals.Turns(turns)} {Way(turns)} would bring it to {Numerals.With(aim.Millimetres, Millimetre, 1)}",
            [
                Learnt(r),
                MiddleNote(situation, aim, middle),
                Taut(r),
                .. NutAdvice.Notes(situation, run, middle),
                .. outside ? Handling(turns) : [],
            ],
            outside,
            r.Expected!.Value.Millimetres,
            r.ExpectedUncertainty!.Value.Millimetres,
            Working(run, r),
            outside ? new(turns, null, null, null) : null,
            null
        );
    }

    private static Advice? NutLearnt(Situation situation, ChainRun run, Length middle) =>
        NutAdvice.Notes(situation, run, middle) is { Count: > 0 } notes
            ? new(
                null,
                $"Inside after the nut",
                notes,
                false,
                null,
                null,
                NutAdvice.Working(situation, run, middle),
                null,
                null
            )
            : null;

    private static Sentence Headline(double turns) =>
        $"Both adjusters {Numerals.Turns(turns)} {Way(turns)} ({Flats(turns)}), then read again";

    private static Sentence Way(double turns) => turns < 0 ? (Sentence)$"back" : (Sentence)$"tighter";

    private static Sentence Flats(double turns)
    {
        var flats = Math.Abs(turns) * FlatsPerTurn;
        return flats > 1.05
            ? (Sentence)$"{Numerals.Plain(flats, 1)} flats"
            : (Sentence)$"{Numerals.Plain(flats, 1)} flat";
    }

    private static Sentence Learnt(Remaining r) =>
        $"One turn of both adjusters takes {Numerals.With(r.Law.SquareMillimetresPerTurn, UnitTable.Named("mm²"), 0)} of slack squared on this machine.";

    private static Sentence MiddleNote(Situation situation, Length aim, Length middle) =>
        aim == middle
            ? Whence(situation, Numerals.With(middle.Millimetres, Millimetre, 1))
            : (Sentence)
                $"Aimed beside the middle of {Numerals.With(middle.Millimetres, Millimetre, 1)} by what the axle nut will move.";

    private static Sentence Whence(Situation situation, Sentence middle) =>
        situation.Point.Quantity<Length>("target") is null
            ? (Sentence)$"{middle} is the middle of the limit in turns: an adjuster's error either way does equal harm."
            : (Sentence)$"{middle} is the target that the workshop sets in its bench book.";

    private static Sentence Taut(Remaining r) =>
        $"{Numerals.Turns(r.TautAfter.Count)} further from here would pull the chain taut.";

    private static IEnumerable<Sentence> Handling(double turns) =>
        turns < 0
            ?
            [
                $"Loosen a little more, push the wheel forward against the adjusters, and finish in the tightening direction.",
            ]
            : [$"Turn both sides alike and read at the tightest place of the chain."];

    private static IReadOnlyList<Sentence> Working(ChainRun run, Remaining r)
    {
        var first = run.Trials[0];
        var last = run.Trials[^1];
        var c = Numerals.Plain(r.Law.SquareMillimetresPerTurn, 1);
        return
        [
            run.Trials.Count == 2
                ? (Sentence)
                    $"c = (S₀² − S₁²)/n = ({Numerals.Plain(first.Slack.Millimetres)}² − {Numerals.Plain(last.Slack.Millimetres)}²)/{Numerals.Plain(last.Turns.Count - first.Turns.Count)} = {c} mm² per turn"
                : (Sentence)
                    $"c = {c} mm² per turn, least squares through {run.Trials.Count} trials (χ² = {Numerals.Plain(r.ChiSquare ?? 0, 1)})",
            $"target St = {Numerals.With(r.Target.Millimetres, Millimetre, 2)}",
            $"n = (S₁² − St²)/c = {Numerals.Plain(r.Turns!.Value.Count, 3)} ± {Numerals.Plain(2 * r.TurnsUncertainty.Count, 3)} turn",
            $"expected {Numerals.WithUncertainty(r.Expected!.Value.Millimetres, 2 * r.ExpectedUncertainty!.Value.Millimetres, Millimetre)}; taut after {Numerals.Plain(r.TautAfter.Count, 3)} turn",
            $"S² = S₀² − c·n: handbook, chain-adjustment",
        ];
    }
}
