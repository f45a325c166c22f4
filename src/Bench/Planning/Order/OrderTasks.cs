using Witnessmark.Bench.Book;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// The open points as tasks of a bench order. A point begins after those that the book puts first (<c>after</c>); points of
/// which one breaks the other's mark keep the book's order among themselves. What is in hand comes before everything; waits that
/// already run are tasks without hands.
/// </summary>
internal static class OrderTasks
{
    // never a point's id: those stand as keys in a file, and a file has no such key
    private const string Wait = "wait\u0000";

    /// <summary>The tasks.</summary>
    public static IReadOnlyList<BenchTask> Of(OrderQuestion asked, ReachMap reach)
    {
        List<BenchTask> tasks = [.. asked.Waiting.Select(w => Waits(w.Key, w.Value, []))];
        var open = asked.Open.ToDictionary(p => p.Id);
        foreach (var point in asked.Open)
            tasks.Add(
                new(
                    point.Id,
                    asked.Hands(point),
                    point.Id == asked.InHand ? new Duration(0) : asked.Waits(point),
                    [.. After(point, asked, open)],
                    reach.Needs(point)
                )
            );
        if (asked.InHand is { } hand && open.TryGetValue(hand, out var inHand) && inHand.Waits > TimeSpan.Zero)
            tasks.Add(Waits(hand, asked.Times.Waits(inHand), [hand]));
        return tasks;
    }

    /// <summary>Whether a step of an order is a wait that runs already.</summary>
    public static bool IsWait(string step) => step.StartsWith(Wait, StringComparison.Ordinal);

    private static BenchTask Waits(string point, TimeSpan left, IReadOnlyList<string> after) =>
        new(Wait + point, new(0), new(left.TotalSeconds), after, new Dictionary<string, bool>());

    private static IEnumerable<string> After(Point point, OrderQuestion asked, Dictionary<string, Point> open)
    {
        if (point.Id == asked.InHand)
            yield break;
        HashSet<string> after = [.. point.After.Where(open.ContainsKey), .. Related(point, asked.Open)];
        if (asked.InHand is { } hand && open.TryGetValue(hand, out var inHand))
        {
            // whoever follows it waits for its wait; all others only for the hands
            var follows = after.Contains(hand) && inHand.Waits > TimeSpan.Zero;
            after.Add(hand);
            if (follows)
                yield return Wait + hand;
        }
        foreach (var waiting in point.After.Where(asked.Waiting.ContainsKey))
            yield return Wait + waiting;
        foreach (var id in after)
            yield return id;
    }

    /// <summary>Points before this one in the book's order of which one breaks the other's mark.</summary>
    private static IEnumerable<string> Related(Point point, IReadOnlyList<Point> open) =>
        open.TakeWhile(p => p.Id != point.Id)
            .Where(p => p.AgainAfter.Contains(point.Id) || point.AgainAfter.Contains(p.Id))
            // what has to come later is not put first by the way
            .Where(p => !ComesAfter(p, point.Id, open))
            .Select(p => p.Id);

    private static bool ComesAfter(Point point, string other, IReadOnlyList<Point> open) =>
        point.After.Any(a =>
            a == other || (open.FirstOrDefault(p => p.Id == a) is { } before && ComesAfter(before, other, open))
        );
}
