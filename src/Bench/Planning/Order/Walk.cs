using Witnessmark.Handbook.BenchOrder;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// Carries a row of steps out, each as early as hands, states and waits allow. A step is a task by its number, or a change of a
/// state by the complement of its number. The rules are those of the handbook's bench order.
/// </summary>
internal sealed class Walk
{
    private readonly IReadOnlyList<BenchState> states;
    private readonly IReadOnlyList<BenchTask> tasks;
    private readonly int[][] after;
    private readonly (uint On, uint Off, uint Own)[] needs;
    private readonly uint[] excluded;
    private readonly double[] over;
    private readonly double[] clearable;

    public Walk(IReadOnlyList<BenchState> states, IReadOnlyList<BenchTask> tasks)
    {
        (this.states, this.tasks) = (states, tasks);
        var number = tasks.Index().ToDictionary(t => t.Item.Id, t => t.Index);
        after = [.. tasks.Select(t => t.After.Select(a => number[a]).ToArray())];
        excluded =
        [
            .. states.Select((_, s) => Bits(o => o.Index != s && (Requires(s, o.Index) || Requires(o.Index, s)))),
        ];
        needs = [.. tasks.Select(t => (Needed(t, true), Needed(t, false), Needed(t, true)))];
        (over, clearable) = (new double[tasks.Count], new double[states.Count]);
        Initial = Bits(s => s.Item.Initial);
    }

    /// <summary>States at the start, as bits.</summary>
    public uint Initial { get; }

    /// <summary>When all is over; endless when a step cannot be taken.</summary>
    /// <param name="steps">All tasks and the changes between them.</param>
    /// <param name="taken">Told of each step with its start and end, in seconds.</param>
    public double End(IReadOnlyList<int> steps, Action<int, double, double>? taken = null)
    {
        var (state, time, last) = (Initial, 0.0, 0.0);
        Array.Fill(over, double.PositiveInfinity);
        for (var s = 0; s < states.Count; s++)
            clearable[s] = states[s].ClearAfter?.Seconds ?? 0;
        foreach (var step in steps)
        {
            var start = step >= 0 ? Begin(step, state, time) : Change(~step, state, time);
            if (double.IsPositiveInfinity(start))
                return start;
            time = start + Hands(step, state);
            taken?.Invoke(step, start, time);
            if (step >= 0)
                last = Math.Max(last, Done(step, time));
            else
                state = Changed(~step, state, time);
        }
        return Put(state) ? Math.Max(time, last) : double.PositiveInfinity;
    }

    /// <summary>The changes that bring the machine to where a task needs it, what excludes it first; the state afterwards.</summary>
    public uint Towards(int task, uint state, List<int> steps)
    {
        var (on, off, _) = needs[task];
        for (var s = 0; s < states.Count; s++)
            if ((on >> s & 1) != 0 && (state >> s & 1) == 0)
                off |= excluded[s];
        state = Cleared(off, state, steps);
        for (var s = 0; s < states.Count; s++)
            if ((on >> s & 1) != 0 && (state >> s & 1) == 0)
            {
                steps.Add(~s);
                state |= 1u << s;
            }
        return state;
    }

    /// <summary>Puts everything back as it must end.</summary>
    public void Back(uint state, List<int> steps) => Cleared(Bits(s => s.Item.Final == false), state, steps);

    private uint Cleared(uint off, uint state, List<int> steps)
    {
        // the one that takes longest to cool last: the others are put back meanwhile
        foreach (var s in Enumerable.Range(0, states.Count).OrderBy(s => states[s].ClearAfter?.Seconds ?? 0))
            if ((off & state & (1u << s)) != 0)
            {
                steps.Add(~s);
                state &= ~(1u << s);
            }
        return state;
    }

    private double Begin(int task, uint state, double time)
    {
        var (on, off, _) = needs[task];
        if ((state & on) != on || (state & off) != 0)
            return double.PositiveInfinity;
        foreach (var before in after[task])
            time = Math.Max(time, over[before]);
        return time;
    }

    private double Change(int s, uint state, double time) =>
        (state >> s & 1) != 0 ? Math.Max(time, clearable[s])
        : (excluded[s] & state) == 0 ? time
        : double.PositiveInfinity;

    private double Hands(int step, uint state) =>
        step >= 0 ? tasks[step].Hands.Seconds
        : (state >> ~step & 1) == 0 ? states[~step].Set.Seconds
        : states[~step].Clear?.Seconds ?? 0;

    private double Done(int task, double time)
    {
        for (var s = 0; s < states.Count; s++)
            if ((needs[task].Own >> s & 1) != 0)
                clearable[s] = time + (states[s].ClearAfter?.Seconds ?? 0);
        return over[task] = time + tasks[task].WaitAfter.Seconds;
    }

    private uint Changed(int s, uint state, double time)
    {
        if ((state >> s & 1) == 0)
            clearable[s] = time + (states[s].ClearAfter?.Seconds ?? 0);
        return state ^ (1u << s);
    }

    private bool Put(uint state) => (Bits(s => s.Item.Final == false) & state) == 0;

    private bool Requires(int s, int other) => states[s].Requires.ContainsKey(states[other].Name);

    private uint Needed(BenchTask task, bool value) =>
        Bits(s => task.Needs.TryGetValue(s.Item.Name, out var v) && v == value);

    private uint Bits(Func<(int Index, BenchState Item), bool> which) =>
        states.Index().Where(which).Aggregate(0u, (bits, s) => bits | (1u << s.Index));
}
