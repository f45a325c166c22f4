using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Planning;

/// <summary>
/// The book's order for any set of points: a purpose's own where it has them. Where it has not, a point stands where the
/// longest purpose that knows it puts it, and never on the wrong side of a point that has to come first.
/// </summary>
internal static class BaseOrder
{
    /// <summary>The points in order, those of the purpose first found where it puts them.</summary>
    public static IReadOnlyList<string> Of(IEnumerable<string> points, string purpose, BenchBook book)
    {
        var wanted = points.Distinct().ToList();
        var own = book.Purposes.GetValueOrDefault(purpose, []).Select(p => p.Point).ToList();
        List<string> order = [.. own.Where(wanted.Contains)];
        // in the order of the book, so that what is added at one place keeps it among itself
        foreach (var point in book.Points.Keys.Where(id => wanted.Contains(id) && !order.Contains(id)))
            order.Insert(PlaceFor(point, order, book), point);
        return order;
    }

    /// <summary>Where a point belongs among others that are in order already.</summary>
    public static int PlaceFor(string point, IReadOnlyList<string> order, BenchBook book)
    {
        var places = order.Index().ToDictionary(p => p.Item, p => p.Index);
        var (earliest, latest) = Bounds(point, places, book);
        return Math.Clamp(Neighbour(point, places, book) ?? latest, earliest, Math.Max(earliest, latest));
    }

    private static (int Earliest, int Latest) Bounds(string point, Dictionary<string, int> places, BenchBook book)
    {
        var before = book.Points[point]
            .After.Where(places.ContainsKey)
            .Select(p => places[p] + 1)
            .DefaultIfEmpty(0)
            .Max();
        var after = places
            .Where(p => book.Points.TryGetValue(p.Key, out var other) && other.After.Contains(point))
            .Select(p => p.Value)
            .DefaultIfEmpty(places.Count)
            .Min();
        return (before, after);
    }

    /// <summary>Behind the nearest point before it in the longest purpose that knows it; null when none does.</summary>
    private static int? Neighbour(string point, Dictionary<string, int> places, BenchBook book)
    {
        var longest = book
            .Purposes.Values.Where(plan => plan.Any(p => p.Point == point))
            .MaxBy(plan => plan.Count)
            ?.Select(p => p.Point);
        if (longest is null)
            return null;
        var before = longest.TakeWhile(p => p != point).LastOrDefault(places.ContainsKey);
        return before is null ? 0 : places[before] + 1;
    }
}
