using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Wheels;

/// <summary>Which weights of a box come nearest to a correction, at most two of them at any angles.</summary>
internal static class WeightChoice
{
    // What remains is told apart no finer than a microgram: below it, rounding would buy a second weight.
    private const double Indistinguishable = 1e-6;

    /// <summary>Least residual; then fewest weights; then the lightest together.</summary>
    /// <remarks>A weight of the box is one piece: 10 g listed once can be used once.</remarks>
    public static Placing Nearest(PlacedWeight correction, IReadOnlyList<Mass> box)
    {
        var wanted = correction.Mass.Grams;
        var choices = Choices([.. box.Select(m => m.Grams).OrderDescending()]).ToArray();
        var least = choices.Min(c => c.Residual(wanted));
        var best = choices
            .Where(c => c.Residual(wanted) <= least + Indistinguishable)
            .OrderBy(c => c.Count)
            .ThenBy(c => c.Heavier + c.Lighter)
            .ThenBy(c => c.Heavier)
            .First();
        return new(best.PlacedAt(correction), new(best.Residual(wanted)));
    }

    private static IEnumerable<Choice> Choices(double[] heaviestFirst)
    {
        yield return default;
        for (var i = 0; i < heaviestFirst.Length; i++)
        {
            yield return new(heaviestFirst[i], 0);
            for (var j = i + 1; j < heaviestFirst.Length; j++)
                yield return new(heaviestFirst[i], heaviestFirst[j]);
        }
    }

    private readonly record struct Choice(double Heavier, double Lighter)
    {
        public int Count =>
            Heavier == 0 ? 0
            : Lighter == 0 ? 1
            : 2;

        /// <summary>Their vectors reach every mass from the difference to the sum of the two.</summary>
        public double Residual(double wanted) =>
            Math.Max(0, Math.Max(wanted - (Heavier + Lighter), Heavier - Lighter - wanted));

        public IReadOnlyList<PlacedWeight> PlacedAt(PlacedWeight correction) =>
            Count switch
            {
                0 => [],
                1 => [new(new(Heavier), correction.Angle)],
                _ =>
                [
                    Turned(Heavier, correction.Angle, -Opening(correction.Mass.Grams, Heavier, Lighter)),
                    Turned(Lighter, correction.Angle, Opening(correction.Mass.Grams, Lighter, Heavier)),
                ],
            };

        // Angle at the correction in the triangle of correction, own and other; 0° or 180° where the three do not close.
        private static double Opening(double wanted, double own, double other) =>
            Math.Acos(Math.Clamp((wanted * wanted + own * own - other * other) / (2 * wanted * own), -1, 1));

        private static PlacedWeight Turned(double mass, Angle from, double by) =>
            new(new(mass), new Angle(from.Radians + by).OnCircle());
    }
}

/// <summary>Weights to place, and what they leave.</summary>
/// <param name="Weights">None, one or two; the heavier first, on the side of the smaller angles.</param>
/// <param name="Residual">Mass that would still be missing.</param>
public sealed record Placing(IReadOnlyList<PlacedWeight> Weights, Mass Residual);
