using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Judging;
using Witnessmark.Bench.Wording;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.SecondChecks;

/// <summary>Whether two people read the same.</summary>
/// <remarks>
/// <para><b>Formula.</b> Eₙ = |x₁ − x₂| / √(U₁² + U₂²); they agree when Eₙ ≤ 1 at every place, and the second reading is neither outside nor
/// unproven. Of a torque U = 2·(setting · permissible share)/√3. What is seen, a code or a number on a frame agrees when it is the same.</para>
/// <para><b>Units.</b> Both readings and their expanded uncertainties (k = 2) in the unit of the verdict.</para>
/// <para><b>Source.</b> Eₙ: ISO/IEC 17043:2010, B.3.1.3, and ISO 13528:2015, 9.7 (clauses from memory). Uncertainty of a difference: JCGM 100:2008
/// (GUM), 5.1.2; half-width over √3: 4.3.7.</para>
/// <para><b>Valid when</b> the two readings are independent. Taken with one and the same instrument they share its error, and agree more easily
/// than they should: what both would read wrongly no second reading finds.</para>
/// </remarks>
/// <param name="Agrees">Whether they agree.</param>
/// <param name="Words">In a sentence, without names and values.</param>
/// <param name="Working">The formula with the numbers put in; empty where nothing is reckoned.</param>
public sealed record Agreement(bool Agrees, Sentence Words, IReadOnlyList<Sentence> Working)
{
    /// <summary>Compares two readings of a point.</summary>
    public static Agreement Of(Point point, ReadingTaken first, ReadingTaken second)
    {
        if (Lacking(second) is { } lacking)
            return new(false, lacking, []);
        return point.Reading.Kind switch
        {
            ReadingKind.Done => new(true, $"both did it", []),
            ReadingKind.Seen => Seen(point, first, second),
            ReadingKind.Vin or ReadingKind.TyreDate => Same(first, second),
            ReadingKind.Amount => Amount(first, second),
            _ => Measured(point, first, second),
        };
    }

    private static Sentence? Lacking(ReadingTaken second) =>
        second.Opinion.Verdict switch
        {
            VerdictWord.Outside => $"the second reading is outside",
            VerdictWord.Unproven => $"the second reading proves nothing",
            _ => null,
        };

    private static Agreement Seen(Point point, ReadingTaken first, ReadingTaken second)
    {
        var other = point.Reading.Places.Where((_, i) => At(first, i) != At(second, i)).ToList();
        return other.Count == 0
            ? new(true, $"both saw the same", [])
            : new(false, $"they saw differently: {Sentence.List(other)}", []);
    }

    private static string? At(ReadingTaken reading, int place) => reading.Raw.ElementAtOrDefault(place);

    private static Agreement Same(ReadingTaken first, ReadingTaken second) =>
        first.Raw.SequenceEqual(second.Raw, StringComparer.OrdinalIgnoreCase)
            ? new(true, $"both read the same", [])
            : new(false, $"they read differently", []);

    private static Agreement Amount(ReadingTaken first, ReadingTaken second) =>
        Math.Abs(first.Opinion.Value!.Value - second.Opinion.Value!.Value) < 1e-9
            ? new(true, $"both read the same", [])
            : new(false, $"they read differently", []);

    private static Agreement Measured(Point point, ReadingTaken first, ReadingTaken second)
    {
        var (of1, of2) = (Expanded(first), Expanded(second));
        if (of1 is not { } u1 || of2 is not { } u2)
            return new(false, $"nothing says how far the readings may be off: read both with an instrument", []);
        var pairs = Pairs(point, first.Opinion, second.Opinion);
        var farthest = pairs.MaxBy(p => Math.Abs(p.First - p.Second));
        var apart = Math.Abs(farthest.First - farthest.Second);
        var both = Math.Sqrt(u1 * u1 + u2 * u2);
        var score = apart == 0 ? 0 : apart / both;
        return new(
            score <= 1,
            score <= 1
                ? (Sentence)$"they agree, Eₙ = {Numerals.Plain(score, 2)}"
                : (Sentence)$"they do not agree, Eₙ = {Numerals.Plain(score, 2)}",
            Steps(farthest, u1, u2, score, first.Opinion.Unit!)
        );
    }

    private static IReadOnlyList<Sentence> Steps(
        (double First, double Second) read,
        double u1,
        double u2,
        double score,
        Unit unit
    ) =>
        [
            $"Eₙ = |x₁ − x₂| / √(U₁² + U₂²) = |{N(read.First)} − {N(read.Second)}| / √({N(u1)}² + {N(u2)}²) = {Numerals.Plain(score, 2)}, in {unit}",
            $"they agree up to Eₙ = 1; the readings are taken as independent",
            $"ISO/IEC 17043:2010, B.3.1.3; ISO 13528:2015, 9.7; JCGM 100 (GUM) 5.1.2",
        ];

    /// <summary>At places each against the same place, else what was judged.</summary>
    private static IReadOnlyList<(double First, double Second)> Pairs(Point point, Opinion first, Opinion second) =>
        point.Reading.Kind == ReadingKind.Places && first.Series.Count == second.Series.Count
            ? [.. first.Series.Zip(second.Series)]
            : [(first.Value!.Value, second.Value!.Value)];

    private static double? Expanded(ReadingTaken reading) =>
        reading.Opinion.Value is not { } value ? null
        : reading is { Opinion.Uncertainty: null, Instrument: { Kind: "torque" } wrench }
            ? 2 * value * wrench.PermissibleError / Math.Sqrt(3)
        : reading.Opinion.Uncertainty;

    private static Sentence N(double value) => Numerals.Plain(value, 4);
}
