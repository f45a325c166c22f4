namespace Witnessmark.Bench.Book;

/// <summary>
/// Rings of points that can never all be done. A point that is only read may ask for its neighbours again and they for it: in
/// the end nothing is corrected and all stand. Where every reading is itself work (a nut tightened, oil poured), the last one
/// always asks for the first again; and of points that each come after the other none can begin.
/// </summary>
internal static class Cycles
{
    public static void Check(BenchBookFile book)
    {
        Rings(book, "after", p => p.Point.After, "each waits for the other");
        Rings(
            book,
            "again-after",
            p => p.Point.Reading.IsWork ? book.AgainAfter(p.Point).Where(o => Works(book, o)) : [],
            "each asks for the other again for ever"
        );
    }

    private static bool Works(BenchBookFile book, string id) =>
        book.Points.TryGetValue(id, out var point) && point.Point.Reading.IsWork;

    private static void Rings(BenchBookFile book, string key, Func<PointRead, IEnumerable<string>> before, string why)
    {
        HashSet<string> closed = [];
        foreach (var point in book.Points.Values)
            if (Ring(book, point.Point.Id, before) is { } ring && !ring.All(closed.Contains))
            {
                closed.UnionWith(ring);
                var table = point.Table;
                table.Mistakes.Add(
                    table.Has(key) ? table.KeyAt(key) : table.Place,
                    $"a ring: {string.Join(", ", ring)}: {why}",
                    $"one \"{key}\" less"
                );
            }
    }

    /// <summary>The shortest way from a point back to itself, or null.</summary>
    private static IReadOnlyList<string>? Ring(
        BenchBookFile book,
        string start,
        Func<PointRead, IEnumerable<string>> before
    )
    {
        Dictionary<string, string> cameFrom = [];
        Queue<string> open = new([start]);
        while (open.TryDequeue(out var id))
            foreach (var next in book.Points.TryGetValue(id, out var point) ? before(point) : [])
            {
                if (next == start && id != start) // in its own list: told already
                    return Path(id, start, cameFrom);
                if (next != start && cameFrom.TryAdd(next, id))
                    open.Enqueue(next);
            }
        return null;
    }

    private static List<string> Path(string last, string start, Dictionary<string, string> cameFrom)
    {
        List<string> path = [last];
        while (path[^1] != start)
            path.Add(cameFrom[path[^1]]);
        path.Reverse();
        return path;
    }
}
