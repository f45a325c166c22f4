using Witnessmark.Handbook.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>
/// The least makespan by trying every sequence of tasks and changes, with nothing dropped but what is no shorter than
/// the best so far; for a handful of tasks. Shares no code and no bound with the search under test.
/// </summary>
public sealed class OrderByEnumeration(BenchState[] states, BenchTask[] tasks)
{
    private double best = double.PositiveInfinity;

    public double Least()
    {
        var on = states.Select(s => s.Initial).ToArray();
        var clearable = states.Select(s => s.Initial ? s.ClearAfter?.Seconds ?? 0 : 0).ToArray();
        if (Allowed(on))
            Go(0, 0, on, clearable, [], 0, []);
        return best;
    }

    // changed: the states changed since the last task; changing one twice in between can only lose.
    private void Go(
        double time,
        double horizon,
        bool[] on,
        double[] clearable,
        Dictionary<string, double> over,
        int done,
        int[] changed
    )
    {
        if (Math.Max(time, horizon) >= best)
            return;
        if (done == tasks.Length && states.Where((s, i) => s.Final is { } f && f != on[i]).Any() is false)
        {
            best = Math.Max(time, horizon);
            return;
        }
        foreach (var task in tasks.Where(t => !over.ContainsKey(t.Id) && t.After.All(over.ContainsKey)))
        {
            if (states.Where((s, i) => task.Needs.TryGetValue(s.Name, out var v) && v != on[i]).Any())
                continue;
            var end = task.After.Select(a => over[a]).Append(time).Max() + task.Hands.Seconds;
            var cool = states.Select(
                (s, i) =>
                    task.Needs.TryGetValue(s.Name, out var v) && v ? end + (s.ClearAfter?.Seconds ?? 0) : clearable[i]
            );
            var ready = end + task.WaitAfter.Seconds;
            Go(end, Math.Max(horizon, ready), on, [.. cool], new(over) { [task.Id] = ready }, done + 1, []);
        }
        for (var s = 0; s < states.Length; s++)
            if (!changed.Contains(s))
                Change(time, horizon, on, clearable, over, done, changed, s);
    }

    private void Change(
        double time,
        double horizon,
        bool[] on,
        double[] clearable,
        Dictionary<string, double> over,
        int done,
        int[] changed,
        int s
    )
    {
        var state = states[s];
        if (on[s] && state.Clear is null && state.ClearAfter is null)
            return;
        var start = on[s] ? Math.Max(time, clearable[s]) : time;
        var end = start + (on[s] ? state.Clear?.Seconds ?? 0 : state.Set.Seconds);
        var next = (bool[])on.Clone();
        next[s] = !on[s];
        if (!Allowed(next))
            return;
        var cool = (double[])clearable.Clone();
        cool[s] = on[s] ? 0 : end + (state.ClearAfter?.Seconds ?? 0);
        Go(end, horizon, next, cool, over, done, [.. changed, s]);
    }

    private bool Allowed(bool[] on) =>
        states
            .Where((_, i) => on[i])
            .All(s => s.Requires.All(r => on[Array.FindIndex(states, o => o.Name == r.Key)] == r.Value));
}
