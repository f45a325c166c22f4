namespace Witnessmark.Paper.Pdf;

/// <summary>How many of a list go into the left and the right column of a page, read down the left one first.</summary>
/// <param name="Left">From the first on, into the left column.</param>
/// <param name="Right">The next, into the right one; the rest has to wait for another page.</param>
public readonly record struct TwoColumns(int Left, int Right)
{
    /// <summary>The columns as short as can be when all fits; else as full as can be.</summary>
    /// <param name="heights">Of the list, in order.</param>
    /// <param name="room">The height of a column.</param>
    public static TwoColumns Of(IReadOnlyList<double> heights, double room)
    {
        var half = Enumerable
            .Range(0, heights.Count + 1)
            .Reverse() // of two as good, the one with more at the left
            .MinBy(k => Math.Max(heights.Take(k).Sum(), heights.Skip(k).Sum()));
        if (Math.Max(heights.Take(half).Sum(), heights.Skip(half).Sum()) <= room)
            return new(half, heights.Count - half);
        var left = Fits(heights, 0, room);
        return new(left, Fits(heights, left, room));
    }

    private static int Fits(IReadOnlyList<double> heights, int from, double room)
    {
        var count = 0;
        for (var free = room; from + count < heights.Count && heights[from + count] <= free; count++)
            free -= heights[from + count];
        return count;
    }
}
