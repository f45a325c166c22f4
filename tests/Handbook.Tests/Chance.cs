namespace Witnessmark.Handbook.Tests;

/// <summary>Values within bounds out of the numbers that a property test is given.</summary>
internal static class Chance
{
    // 2³² divided by the golden ratio (Knuth, The Art of Computer Programming 3, 6.4): the small numbers that the test begins
    // with land everywhere between the bounds, not only at the lower one.
    private const uint Scatter = 2_654_435_769;

    public static double Between(double low, double high, uint chance) =>
        low + (high - low) * (unchecked(chance * Scatter) / (double)uint.MaxValue);
}
