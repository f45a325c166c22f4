using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.FinalDrive;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>Left against right.</summary>
internal static class SidesJudge
{
    public static (Opinion?, Sentence?) Of(ReadingToJudge judged)
    {
        if (Sides.Read(judged.Raw, judged.Places, out var why) is not { } sides)
            return (null, why);
        if (judged.Figure is not { Max: { } most } figure)
            return (
                Judge.Plain(
                    VerdictWord.Unproven,
                    Sentence.Empty,
                    $"No figure to judge by",
                    $"The figure sheet has no limit for this difference."
                ),
                null
            );
        var tolerance = new Length(figure.Unit.ToBase(most));
        if (judged.Instrument is not { } instrument)
            return (
                Judge.Plain(
                    VerdictWord.Unproven,
                    Sentence.Empty,
                    $"Unproven: read with what?",
                    $"Without its instrument a difference proves nothing: choose it."
                ),
                null
            );
        var u = sides.Uncertainty(instrument);
        var compared = AxleDifference.Of(sides.Left, sides.Right, u, tolerance);
        return (Said(judged, sides, compared, u, tolerance), null);
    }

    private static Opinion Said(ReadingToJudge judged, Sides sides, SideComparison compared, Length u, Length tolerance)
    {
        var unit = UnitTable.Named("mm");
        var difference = compared.Difference.Millimetres;
        var shown = Numerals.WithUncertainty(difference, compared.Uncertainty.Millimetres, unit);
        var verdict = compared.Call switch
        {
            Call.Inside => VerdictWord.Inside,
            Call.Outside => VerdictWord.Outside,
            _ => VerdictWord.Unproven,
        };
        return new(
            verdict,
            difference,
            compared.Uncertainty.Millimetres,
            compared.Uncertainty.Millimetres / 2,
            unit,
            new Limit(-tolerance.Millimetres, tolerance.Millimetres),
            shown,
            compared.Call switch
            {
                Call.Inside => $"Inside",
                Call.Outside => $"Outside by {Numerals.With(Math.Abs(difference) - tolerance.Millimetres, unit)}",
                _ when sides.Least < Reading.RepeatsThatTell => $"Unproven: three readings a side settle it",
                _ => $"Unproven: the readings scatter too much",
            },
            difference > 0
                ? (Sentence)$"{shown}, the left side reads more; {Allowed.By(judged.Figure!)}."
                : (Sentence)$"{shown}, the right side reads more; {Allowed.By(judged.Figure!)}.",
            [
                $"difference = mean left − mean right = {Numerals.Plain(difference, 3)} mm, u = {Numerals.Plain(u.Millimetres, 3)} mm a reading",
                sides.Left.Length + sides.Right.Length == 2
                    ? (Sentence)
                        $"U = 1.96·√2·u = {Numerals.Plain(compared.Uncertainty.Millimetres, 3)} mm (one reading a side)"
                    : (Sentence)
                        $"U = t·√(s²(1/{sides.Left.Length} + 1/{sides.Right.Length}) + 2u²) = {Numerals.Plain(compared.Uncertainty.Millimetres, 3)} mm (95 %)",
                $"outside when |difference| − U > {Numerals.Plain(tolerance.Millimetres)} mm, inside when |difference| + U ≤ {Numerals.Plain(tolerance.Millimetres)} mm",
            ],
            []
        );
    }
}

/// <summary>The readings of both sides.</summary>
internal sealed record Sides(Length[] Left, Length[] Right)
{
    /// <summary>Readings on the side that has fewer.</summary>
    public int Least => Math.Min(Left.Length, Right.Length);

    public static Sides? Read(IReadOnlyList<string> raw, IReadOnlyList<string> places, out Sentence? why)
    {
        List<Length> left = [],
            right = [];
        for (var i = 0; i < raw.Count; i++)
        {
            if (RawValue.In(raw[i], UnitTable.Named("mm"), out why) is not { } value)
                return null;
            var side = i < places.Count ? places[i] : "";
            if (side is not ("left" or "right"))
            {
                why = $"\"{side}\" is no side. Allowed: \"left\" or \"right\" for each reading.";
                return null;
            }
            (side == "left" ? left : right).Add(new Length(value));
        }
        why =
            left.Count == 0 || right.Count == 0
                ? (Sentence)$"Both sides are needed: at least one reading left and one right."
                : null;
        return why is null ? new([.. left], [.. right]) : null;
    }

    /// <summary>One standard deviation of a reading. Repeats show the scatter of putting the instrument on; a single reading has to allow for it.</summary>
    public Length Uncertainty(Machines.ShopInstrument instrument)
    {
        var tool = InstrumentIn.Unit(instrument, UnitTable.Named("mm"));
        var again = Left.Length + Right.Length > 2 ? 0 : instrument.Replacing * instrument.Unit.Factor;
        return new(Math.Sqrt(tool.Variance + again * again));
    }
}
