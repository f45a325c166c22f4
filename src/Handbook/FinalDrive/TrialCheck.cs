using MathNet.Numerics;

namespace Witnessmark.Handbook.FinalDrive;

/// <summary>Whether trials lie on one line, and which one does not.</summary>
/// <param name="Consistent">Whether chance alone explains their distance from the line, at 1 %.</param>
/// <param name="Suspect">Position in the list, from 0, of the only trial without which the rest lie on a line; null when there is
/// none, or more than one.</param>
internal readonly record struct TrialCheck(bool Consistent, int? Suspect)
{
    /// <summary>Trials that good readings give once in a hundred times are called inconsistent.</summary>
    private const double Significance = 0.01;

    /// <summary>Judges chi-square of all trials, and of all but one.</summary>
    /// <param name="chiSquare">Of all.</param>
    /// <param name="without">Of all but each; NaN where the rest would not make a line.</param>
    public static TrialCheck Of(double chiSquare, IReadOnlyList<double> without)
    {
        if (Plausible(chiSquare, without.Count - 2))
            return new(true, null);
        // Any one of three explains the misfit as well as another: two points are always on a line, with no chi-square to test.
        if (without.Count == 3)
            return new(false, null);
        var culprits = Enumerable.Range(0, without.Count).Where(i => Plausible(without[i], without.Count - 3)).Take(2);
        return new(false, culprits.ToArray() is [var only] ? only : null);
    }

    private static bool Plausible(double chiSquare, int degreesOfFreedom) =>
        !double.IsNaN(chiSquare)
        && SpecialFunctions.GammaUpperRegularized(degreesOfFreedom / 2.0, Math.Max(0, chiSquare) / 2) >= Significance;
}
