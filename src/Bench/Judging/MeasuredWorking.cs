using Witnessmark.Bench.Book;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Measuring;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Judging;

/// <summary>The working of a measured verdict: the formula with this reading's numbers in it.</summary>
internal static class MeasuredWorking
{
    public static IReadOnlyList<Sentence> Of(
        ReadingToJudge judged,
        Unit unit,
        Limit limit,
        Measured measured,
        Judged found,
        double[] values
    )
    {
        var tool = InstrumentIn.Unit(judged.Instrument!, unit);
        return
        [
            Value(judged.Point.Reading, measured, unit, values),
            Uncertainty(judged.Point.Reading, tool, measured, unit, values.Length),
            $"p = {Probability(limit, measured)} = {found.Conformance:0.000}",
            $"inside from p ≥ 0.95, outside up to p ≤ 0.05, between them the instrument cannot tell",
            $"JCGM 100 (GUM) 4.3.7 and F.2.2.1; JCGM 106:2012, 7.2 to 7.4",
        ];
    }

    private static Sentence Value(ReadingForm form, Measured measured, Unit unit, double[] values) =>
        form.Kind switch
        {
            ReadingKind.Marks =>
                $"{N(Math.Max(values[0], values[1]))} − {N(Math.Min(values[0], values[1]))} = {Numerals.With(measured.Value, unit, 4)}",
            ReadingKind.Round =>
                $"largest − smallest = {N(values.Max())} − {N(values.Min())} = {Numerals.With(measured.Value, unit, 4)}",
            ReadingKind.Places =>
                $"worst of {Sentence.List(values.Select(N))}: {Numerals.With(measured.Value, unit, 4)}",
            _ when values.Length > 1 =>
                $"mean of {Sentence.List(values.Select(N))} = {Numerals.With(measured.Value, unit, 4)}",
            _ => $"read: {Numerals.With(measured.Value, unit, 4)}",
        };

    private static Sentence Uncertainty(ReadingForm form, Instrument tool, Measured measured, Unit unit, int count)
    {
        Sentence terms = $"{N(tool.Resolution)}²/12 + {N(tool.PermissibleError)}²/3";
        Sentence both = form.Kind is ReadingKind.Marks or ReadingKind.Round ? (Sentence)$"2·({terms})" : terms;
        Sentence scatter =
            form.Kind is ReadingKind.Value && count >= Reading.RepeatsThatTell
                ? (Sentence)$"{N(measured.Repeatability ?? 0)}²/{count} + "
                : Sentence.Empty;
        return $"u = √({scatter}{both}) = {Numerals.With(measured.StandardUncertainty, unit, 3)}, U = 2u = {Numerals.With(measured.ExpandedUncertainty, unit, 3)}";
    }

    private static Sentence Probability(Limit limit, Measured measured)
    {
        Sentence Phi(double end) =>
            $"Φ(({N(end)} − {N(measured.Value)})/{Numerals.Plain(measured.StandardUncertainty, 3)})";
        return (limit.Min, limit.Max) switch
        {
            ({ } min, { } max) => $"{Phi(max)} − {Phi(min)}",
            ({ } min, _) => $"1 − {Phi(min)}",
            (_, { } max) => Phi(max),
            _ => $"1",
        };
    }

    private static Sentence N(double value) => Numerals.Plain(value, 4);
}
