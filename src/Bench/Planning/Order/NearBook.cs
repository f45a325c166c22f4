using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// Of all orders that take no longer, one near the book's: technicians know it, and a page that jumps about for nothing is not
/// trusted. Tasks are taken out and put in elsewhere as long as that makes the order shorter, or nearer to the book and no longer.
/// </summary>
internal sealed class NearBook(IReadOnlyList<BenchState> states, IReadOnlyList<BenchTask> tasks)
{
    private const double Slip = 1e-6;

    private readonly Walk walk = new(states, tasks);

    /// <summary>The book's own order, the machine changed only when the next task asks for it; null when it cannot be carried out.</summary>
    public List<int>? Book()
    {
        List<int> steps = [];
        var state = walk.Initial;
        foreach (var task in InBookOrder())
        {
            state = walk.Towards(task, state, steps);
            steps.Add(task);
        }
        walk.Back(state, steps);
        return double.IsFinite(walk.End(steps)) ? steps : null;
    }

    /// <summary>An order as numbers of steps.</summary>
    public List<int> Steps(IEnumerable<string> schedule)
    {
        var task = tasks.Index().ToDictionary(t => t.Item.Id, t => t.Index);
        var state = states.Index().ToDictionary(s => s.Item.Name, s => s.Index);
        return [.. schedule.Select(s => task.TryGetValue(s, out var i) ? i : ~state[s[(s.IndexOf(':') + 1)..]])];
    }

    /// <summary>How long a row of steps takes.</summary>
    public double End(List<int> steps) => walk.End(steps);

    /// <summary>Tries one task at all other places and leaves it at the best; false when it stays.</summary>
    /// <param name="steps">The order.</param>
    /// <param name="task">The task.</param>
    /// <param name="shorten">Whether an order that is shorter may be found at all; not where it is proven.</param>
    public bool Move(List<int> steps, int task, bool shorten)
    {
        var from = steps.IndexOf(task);
        var end = walk.End(steps);
        var best = (To: -1, End: end, Gain: 0);
        foreach (var (to, gain) in Places(steps, from))
        {
            if (gain <= 0 && !shorten)
                continue;
            var tried = Tried(steps, from, to);
            if (tried < best.End - Slip || (tried <= best.End + Slip && gain > best.Gain))
                best = (to, Math.Min(tried, best.End), gain);
        }
        if (best.To >= 0)
            Put(steps, from, best.To);
        return best.To >= 0;
    }

    /// <summary>The steps as a plan.</summary>
    public BenchPlan Plan(List<int> steps, bool proven, Duration? lowerBound)
    {
        List<BenchStep> schedule = [];
        var end = walk.End(
            steps,
            (step, start, done) => schedule.Add(new(Word(step, schedule), new(start), new(done)))
        );
        var hands = tasks.Sum(t => t.Hands.Seconds);
        return new(new(end), new(hands), schedule, proven, proven ? null : lowerBound);
    }

    /// <summary>Every other place, with how much nearer to the book it is: tasks passed that the book puts the other way.</summary>
    private static IEnumerable<(int To, int Gain)> Places(List<int> steps, int from)
    {
        var task = steps[from];
        for (var (to, gain) = (from - 1, 0); to >= 0; to--)
            yield return (to, gain += Nearer(steps[to], task));
        for (var (to, gain) = (from + 1, 0); to < steps.Count; to++)
            yield return (to, gain += Nearer(task, steps[to]));
    }

    private static int Nearer(int passed, int by) =>
        passed < 0 || by < 0 ? 0
        : passed > by ? 1
        : -1;

    private double Tried(List<int> steps, int from, int to)
    {
        Put(steps, from, to);
        var end = walk.End(steps);
        Put(steps, to, from);
        return end;
    }

    private static void Put(List<int> steps, int from, int to)
    {
        var step = steps[from];
        steps.RemoveAt(from);
        steps.Insert(to, step);
    }

    /// <summary>Tasks by their number, each as soon as all before it are done.</summary>
    private IEnumerable<int> InBookOrder()
    {
        List<int> left = [.. Enumerable.Range(0, tasks.Count)];
        HashSet<string> done = [];
        while (left.Count > 0)
        {
            var next = left.First(t => tasks[t].After.All(done.Contains));
            left.Remove(next);
            done.Add(tasks[next].Id);
            yield return next;
        }
    }

    private string Word(int step, List<BenchStep> before)
    {
        if (step >= 0)
            return tasks[step].Id;
        var state = states[~step];
        var last = before.FindLast(s => s.Do == $"set:{state.Name}" || s.Do == $"clear:{state.Name}").Do;
        var isSo = last is null ? state.Initial : last.StartsWith("set:", StringComparison.Ordinal);
        return (isSo ? "clear:" : "set:") + state.Name;
    }
}
