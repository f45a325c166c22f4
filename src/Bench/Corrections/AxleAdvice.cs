using Witnessmark.Bench.Book;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Corrections;

/// <summary>Which side of the axle to move, and by how much, while the slack stays or comes to its target.</summary>
internal static class AxleAdvice
{
    private static readonly Unit Millimetre = UnitTable.Named("mm");

    public static Advice? Of(Situation situation)
    {
        if (situation.Current?.Opinion.Verdict == VerdictWord.Unproven)
            return new(
                null,
                $"Read each side three times",
                [
                    $"Put the calliper on afresh each time, left and right in turn: the scatter then tells what it can do.",
                ],
                true,
                null,
                null,
                [],
                null,
                null
            );
        return situation.IsOutside() ? Turns(situation) : null;
    }

    private static Advice Turns(Situation situation)
    {
        if (
            situation.Geometry<Length>("adjuster-distance") is not { } apart
            || situation.Geometry<Length>("chain-plane-offset") is not { } offset
            || situation.Geometry<Length>("thread-pitch") is not { Millimetres: > 0 } pitch
            || !situation.Sheet.Facts.TryGetValue("axle-reading-grows-rearward", out var grows)
        )
            return Advise.Cannot(
                $"The figure sheet lacks the adjusters' geometry (distance, chain plane, thread, which way the reading grows)."
            );
        if (SlackPoint(situation) is not { } slackPoint || LastSlack(situation, slackPoint) is not { } slack)
            return Advise.Cannot($"Read the chain slack first: moving one side moves the chain too.");
        if (Law(situation, slackPoint, pitch) is not { } law)
            return Advise.Cannot(
                $"How the chain answers is unknown: adjust the slack once, or put sprockets and centre distance into the figure sheet."
            );
        var current = situation.Current!;
        var sides = Sides.Read(current.Raw, current.Places, out _)!;
        var axle = new AxleReadings(Mean(sides.Left), Mean(sides.Right), grows == "true", apart, offset);
        var reach = new SkewReach(
            situation.Geometry<Length>("centre-distance"),
            situation.Geometry<Length>("tyre-diameter"),
            situation.Geometry<Length>("wheelbase")
        );
        return Said(AxleAlignment.Of(axle, new(slack, slack, law), pitch, reach), slack, law, offset / apart, pitch);
    }

    private static Advice Said(AxlePosition at, Length slack, AxleSlackLaw law, double lean, Length pitch)
    {
        var (left, right) = (at.TurnsLeft.Count, at.TurnsRight.Count);
        return new(
            $"To bring both sides level while the slack stays at {Numerals.With(slack.Millimetres, Millimetre, 1)}",
            $"Left adjuster {Side(left)}, right adjuster {Side(right)}, then read both again",
            [
                Further(at.Difference.Millimetres > 0, Numerals.With(Math.Abs(at.Difference.Millimetres), Millimetre)),
                .. at.LateralAtSprocket is { } lateral
                    ?
                    [
                        $"At the front sprocket the chain line is {Numerals.With(Math.Abs(lateral.Millimetres), Millimetre, 1)} off.",
                    ]
                    : Array.Empty<Sentence>(),
                $"Push the wheel forward against the adjusters and finish each move in the tightening direction.",
            ],
            true,
            0,
            null,
            [
                $"wL = ½ + {Numerals.Plain(lean, 3)}, wR = ½ − {Numerals.Plain(lean, 3)}, thread {Numerals.Plain(pitch.Millimetres)} mm a turn",
                $"turns left = wish/P − wR·δ/P = {Numerals.Plain(left, 3)}; turns right = wish/P + wL·δ/P = {Numerals.Plain(right, 3)}",
                $"δ = {Numerals.Plain(at.Difference.Millimetres, 3)} mm, skew {Numerals.Plain(at.Skew.Radians * 180 / Math.PI, 3)}°, slack law {Numerals.Plain(law.SquareMillimetresPerMillimetre, 0)} mm² per mm of axle",
                $"handbook, axle-alignment",
            ],
            new(left, right, null, null),
            null
        );
    }

    private static Sentence Further(bool left, Sentence far) =>
        left
            ? (Sentence)$"The left side stands {far} further back."
            : (Sentence)$"The right side stands {far} further back.";

    private static Sentence Side(double turns) => $"{Numerals.Turns(turns)} {Way(turns)}";

    private static Sentence Way(double turns) => turns < 0 ? (Sentence)$"back" : (Sentence)$"tighter";

    private static Length Mean(Length[] side) => new(side.Average(l => l.Millimetres));

    private static Point? SlackPoint(Situation situation) =>
        situation
            .Point.AgainAfter.Select(id => situation.Book.Points.GetValueOrDefault(id))
            .FirstOrDefault(p => p?.CorrectedBy == "chain-adjustment");

    private static Length? LastSlack(Situation situation, Point slackPoint) =>
        situation.Readings(slackPoint.Id).LastOrDefault()?.Opinion is { Value: { } value, Unit: { } unit }
            ? new Length(unit.ToBase(value))
            : null;

    /// <summary>Learnt on this machine in this job, else from its geometry: k = 4·L·cos β.</summary>
    private static AxleSlackLaw? Law(Situation situation, Point slackPoint, Length pitch)
    {
        if (ChainRun.Of(situation, slackPoint).Law is { SquareMillimetresPerTurn: > 0 } learnt)
            return new AxleSlackLaw(learnt.SquareMillimetresPerTurn / pitch.Millimetres);
        if (
            situation.Geometry<Length>("centre-distance") is not { Millimetres: > 0 } centres
            || situation.Geometry<Length>("chain-pitch") is not { } chain
            || situation.Count("front-teeth") is not { } front
            || situation.Count("rear-teeth") is not { } rear
        )
            return null;
        // radii of the link arcs z·p/2π; β is the angle of the tangent runs (handbook, chain-slack)
        var sine = (rear - front) * chain.Millimetres / (2 * Math.PI) / centres.Millimetres;
        return Math.Abs(sine) >= 1 ? null : new AxleSlackLaw(4 * centres.Millimetres * (1 - sine * sine));
    }
}
