using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Controls;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>How far to turn a cable's adjuster.</summary>
internal static class CableAdvice
{
    private const double FirstStep = 0.5;
    private static readonly Unit Millimetre = UnitTable.Named("mm");

    public static Advice? Of(Situation situation)
    {
        if (!situation.IsOutside() || situation.Current?.Opinion is not { Value: { } play, StandardUncertainty: { } u })
            return null;
        if (situation.Figure is not { Min: { } min, Max: { } max } figure)
            return Advise.Cannot($"The figure sheet has no range for this play, so there is nothing to aim at.");
        var target = situation.Point.Quantity<Length>("target") ?? new Length(figure.Unit.ToBase((min + max) / 2));
        var trials = Trials(situation, figure.Unit);
        if (trials.Count < 2)
            return First(figure.Unit.ToBase(play) > target.Millimetres, target);
        var answer = CableFreePlay.From([.. trials], target, new(u * figure.Unit.Factor));
        return answer is { Refusal: { } refusal } ? Advise.Cannot(refusal.Because) : Said(answer.Certain, target);
    }

    private static IReadOnlyList<PlayTrial> Trials(Situation situation, Unit unit)
    {
        List<PlayTrial> trials = [];
        var turns = 0.0;
        foreach (var deed in situation.Deeds.Where(d => d.Point.Id == situation.Point.Id))
        {
            if (deed is WasCorrected { Correction.Left: { } turned })
                turns += turned;
            if (deed is WasRead { Reading.Opinion.Value: { } play })
                trials.Add(new(new Turns(turns), new Length(unit.ToBase(play))));
        }
        return trials;
    }

    private static Advice First(bool tooMuch, Length target) =>
        new(
            Aim(target),
            $"Adjuster ½ turn {Way(tooMuch ? 1 : -1)}, then read again",
            [$"The next reading shows how this cable answers; the tool then gives the exact remainder."],
            true,
            null,
            null,
            [],
            new(tooMuch ? FirstStep : -FirstStep, null, null, null),
            null
        );

    private static Advice Said(RemainingPlay r, Length target)
    {
        var turns = r.Turns!.Value.Count;
        return new(
            Aim(target),
            $"Adjuster {Numerals.Turns(turns)} {Way(turns)}, then read again",
            [
                $"One turn takes {Numerals.With(r.PerTurn.MillimetresPerTurn, Millimetre)} of play.",
                $"{Numerals.Turns(r.TautAfter.Count)} further from here would leave no play: the throttle must always close by itself, lock to lock.",
            ],
            true,
            r.Expected!.Value.Millimetres,
            null,
            [$"turns = (play − target)/per turn = {Numerals.Plain(turns, 3)}", $"handbook, cable-free-play"],
            new(turns, null, null, null),
            null
        );
    }

    private static Sentence Aim(Length target) => $"To bring it to {Numerals.With(target.Millimetres, Millimetre, 1)}";

    private static Sentence Way(double turns) =>
        turns < 0 ? (Sentence)$"back (more play)" : (Sentence)$"out (less play)";
}
