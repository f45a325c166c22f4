namespace Witnessmark.Bench.Figures.Plausibility;

/// <summary>Something about a figure that physics makes one look twice at. A doubt never blocks: the document is right until it is proved wrong.</summary>
/// <param name="Figure">Key of the figure.</param>
/// <param name="Words">What is odd, with the numbers, and what to look at.</param>
public sealed record FigureDoubt(string Figure, Sentence Words);

/// <summary>All doubts about a sheet.</summary>
public static class Doubts
{
    /// <summary>In the order of the sheet's figures.</summary>
    public static IReadOnlyList<FigureDoubt> Of(FigureSheet sheet) =>
        [
            .. sheet.Figures.Values.SelectMany(f =>
                new[] { BoltTorque.Doubt(f), TyrePressure.Doubt(f), OilCapacity.Doubt(f, sheet) }
                    .OfType<Sentence>()
                    .Select(words => new FigureDoubt(f.Key, words))
            ),
        ];
}
