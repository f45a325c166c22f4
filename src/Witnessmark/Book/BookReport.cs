using Witnessmark.Bench.Book;

namespace Witnessmark.Book;

/// <summary>What is in a bench book, on the terminal.</summary>
internal static class BookReport
{
    public static string Of(BenchBook book, IReadOnlyList<Overridden> overridden)
    {
        using var to = new StringWriter();
        foreach (var over in overridden)
            to.WriteLine(
                $"{over.By.File}:{over.By.Line}: {over.What} stands here instead of in {over.Was.File}, line {over.Was.Line}"
            );
        if (overridden.Count > 0)
            to.WriteLine();
        foreach (var region in book.Points.Values.GroupBy(p => p.Region).OrderBy(g => g.Key, StringComparer.Ordinal))
            to.WriteLine($"{region.Key, -20}{Counted(region)}");
        to.WriteLine($"{"whole book", -20}{Counted(book.Points.Values)}");
        to.WriteLine();
        foreach (var (purpose, plan) in book.Purposes)
            to.WriteLine(
                $"for {purpose, -16}{Points(plan.Count)}, {Hours(plan.Select(p => book.Points[p.Point].Hands))} of hands-on work"
            );
        to.WriteLine();
        to.WriteLine("No mistake.");
        return to.ToString();
    }

    private static string Counted(IEnumerable<Point> points) =>
        $"{Points(points.Count())}, {points.Count(p => p.Safety)} for safety";

    private static string Points(int count) => count == 1 ? "  1 point " : $"{count, 3} points";

    private static string Hours(IEnumerable<TimeSpan> times)
    {
        var sum = times.Aggregate(TimeSpan.Zero, (all, one) => all + one);
        return sum.TotalHours < 1 ? $"{sum.Minutes} min" : $"{(int)sum.TotalHours} h {sum.Minutes} min";
    }
}
