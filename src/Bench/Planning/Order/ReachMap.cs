using Witnessmark.Bench.Book;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// The book's reach states as states of a bench order. A state that takes no time either way (engine cold, road ready) is
/// nothing but the absence of those that it cannot be true with, and is asked for as that.
/// </summary>
internal sealed class ReachMap
{
    private readonly IReadOnlyDictionary<string, ReachState> book;
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <param name="book">All states.</param>
    /// <param name="points">The points that are still to do.</param>
    /// <param name="now">States that the machine is in.</param>
    public ReachMap(IReadOnlyDictionary<string, ReachState> book, IEnumerable<Point> points, IEnumerable<string> now)
    {
        this.book = book;
        used.UnionWith(
            points.SelectMany(p => p.Reach).Concat(now).Where(s => book.ContainsKey(s) && !IsAbsence(book[s]))
        );
    }

    /// <summary>Whether a state is only the absence of others.</summary>
    public static bool IsAbsence(ReachState state) =>
        state.Set == TimeSpan.Zero && state.Clear == TimeSpan.Zero && state.ClearsAfter == TimeSpan.Zero;

    /// <summary>The states that count here, as they are now and as they must end.</summary>
    /// <param name="now">States that the machine is in.</param>
    /// <param name="cooling">What is left of the time until a state ends by itself, where nothing asks for it any more.</param>
    public IReadOnlyList<BenchState> States(
        IReadOnlyCollection<string> now,
        IReadOnlyDictionary<string, TimeSpan> cooling
    )
    {
        List<BenchState> states = [];
        foreach (var name in book.Keys.Where(used.Contains)) // in the order of the book
        {
            var state = book[name];
            var endsByItself = state.ClearsAfter > TimeSpan.Zero;
            var after = cooling.TryGetValue(name, out var left) && left < state.ClearsAfter ? left : state.ClearsAfter;
            states.Add(
                new(name, now.Contains(name), Time(state.Set))
                {
                    Clear = endsByItself && state.Clear == TimeSpan.Zero ? null : Time(state.Clear),
                    ClearAfter = endsByItself ? Time(after) : null,
                    // what cools by itself may still be warm when the machine goes
                    Final = endsByItself ? null : false,
                    // said from the later one alone: from both sides it would be a ring
                    Requires = states.Where(s => Excludes(s.Name, name)).ToDictionary(s => s.Name, _ => false),
                }
            );
        }
        return states;
    }

    /// <summary>The first point whose states cannot be true together, with two of them; null when there is none.</summary>
    public (Point Point, string One, string Other)? Contradiction(IEnumerable<Point> points)
    {
        foreach (var point in points)
        {
            var states = point.Reach.Where(book.ContainsKey).ToArray();
            foreach (var one in states)
                if (states.FirstOrDefault(other => Excludes(one, other)) is { } other)
                    return (point, one, other);
        }
        return null;
    }

    /// <summary>How the states must be for a point.</summary>
    public IReadOnlyDictionary<string, bool> Needs(Point point)
    {
        Dictionary<string, bool> needs = new(StringComparer.Ordinal);
        foreach (var name in point.Reach.Where(book.ContainsKey))
            if (!IsAbsence(book[name]))
                needs[name] = true;
            else
                foreach (var other in used.Where(o => Excludes(o, name)))
                    needs.TryAdd(other, false);
        return needs;
    }

    /// <summary>Whether two states cannot be true together, whichever of them says so.</summary>
    private bool Excludes(string one, string other) =>
        book[one].Never.Contains(other) || book[other].Never.Contains(one);

    private static Duration Time(TimeSpan time) => new(time.TotalSeconds);
}
