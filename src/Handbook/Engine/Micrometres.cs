using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.Engine;

/// <summary>Lengths as whole micrometres, so that shim sums compare exactly.</summary>
internal static class Micrometres
{
    /// <summary>What a length written in decimals or inches may miss a whole micrometre by and still mean it: 1 nm.</summary>
    private const double Noise = 1e-3;

    public static int Nearest(Length length) =>
        (int)Math.Round(length.Millimetres * 1000, MidpointRounding.AwayFromZero);

    public static int AtLeast(Length length) => (int)Math.Ceiling(length.Millimetres * 1000 - Noise);

    public static int AtMost(Length length) => (int)Math.Floor(length.Millimetres * 1000 + Noise);

    public static Length Of(int micrometres) => new(micrometres / 1000.0);
}
