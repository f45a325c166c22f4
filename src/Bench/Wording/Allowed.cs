using Witnessmark.Bench.Figures;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Wording;

/// <summary>What a figure permits, as the end of a sentence.</summary>
public static class Allowed
{
    /// <summary><c>the maker allows 13 to 32 mm (handbook p. 87)</c>.</summary>
    public static Sentence By(Figure figure)
    {
        Sentence place = figure.Origin.Place.Length == 0 ? Sentence.Empty : (Sentence)$" ({figure.Origin.Place})";
        return $"{figure.Origin.Who} {Verb(figure)}{place}";
    }

    private static Sentence Verb(Figure figure) =>
        figure.Kind switch
        {
            FigureKind.Range =>
                $"allows {Numerals.Between(figure.Min ?? 0, figure.Max ?? 0, figure.Unit, 4, (min, max) => $"{min} to {max}")}",
            FigureKind.Min => $"asks for at least {Numerals.With(figure.Min ?? 0, figure.Unit, 4, RoundedTo.Above)}",
            FigureKind.Max => $"allows at most {Numerals.With(figure.Max ?? 0, figure.Unit, 4, RoundedTo.Below)}",
            FigureKind.Target =>
                $"asks for {Numerals.PlusMinus(figure.Value ?? 0, (figure.Max - figure.Value) ?? 0, figure.Unit, 4)}",
            _ => $"asks for {Numerals.With(figure.Value ?? 0, figure.Unit, 4)}",
        };
}
