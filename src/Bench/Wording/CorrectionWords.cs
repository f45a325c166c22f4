using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Wording;

/// <summary>A correction in a short sentence.</summary>
internal static class CorrectionWords
{
    public static Sentence Of(CorrectionFact made, Point point) =>
        made switch
        {
            { AddedLitres: { } litres } => $"{Numerals.With(litres, UnitTable.Named("L"), 3)} added",
            { Left: { } left, Right: { } right } when left != right =>
                $"left adjuster {Turned(left)}, right {Turned(right)}",
            { Left: { } both, Right: not null } when TwoAdjusters(point) => $"both adjusters {Turned(both)}",
            { Left: { } one } => $"adjuster {Turned(one)}",
            { Right: { } one } => $"right adjuster {Turned(one)}",
            { Did: { } words } => Sentence.Of(words),
            _ => $"corrected",
        };

    private static bool TwoAdjusters(Point point) => point.CorrectedBy is "chain-adjustment" or "axle-alignment";

    private static Sentence Way(double turns) => turns < 0 ? (Sentence)$"back" : (Sentence)$"tighter";

    private static Sentence Turned(double turns) => $"{Numerals.Turns(turns)} {Way(turns)}";
}
