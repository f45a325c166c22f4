using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>One way to have come as far as this: what is done, how the machine is, and which times still bind.</summary>
internal sealed class Label
{
    // For each task when the waits before it are over, for each state when it may be cleared, last when the last wait is over.
    private readonly double[] times;
    private readonly int tasks;

    private Label(double[] times, int tasks)
    {
        this.times = times;
        this.tasks = tasks;
    }

    public TaskSet Done { get; private init; }

    public uint State { get; private init; }

    /// <summary>When the hands are free.</summary>
    public double Time { get; private init; }

    /// <summary>When the last wait so far is over.</summary>
    public double Horizon => times[^1];

    /// <summary>No way on from here ends earlier.</summary>
    public double Bound { get; set; }

    /// <summary>Another way has come as far at least as well.</summary>
    public bool Dominated { get; set; }

    public Label? Parent { get; private init; }

    /// <summary>The task done last, or a state changed last as its complement.</summary>
    public int Move { get; private init; }

    public double Start { get; private init; }

    public double Ready(int task) => times[task];

    public double Cool(int state) => times[tasks + state];

    public static Label Begin(Workload work)
    {
        var times = new double[work.Count + work.Rules.Count + 1];
        for (var s = 0; s < work.Rules.Count; s++)
            if (((work.Rules.Initial & work.Rules.Timed) >> s & 1) != 0)
                times[work.Count + s] = work.Rules.Cool[s];
        return new Label(times, work.Count) { State = work.Rules.Initial };
    }

    /// <summary>Whether the task may be done now, the clock apart.</summary>
    public bool MayDo(int task, Workload work) =>
        !Done.Has(task) && Done.Contains(work.Before[task]) && work.Need[task].MetBy(State);

    public Label AfterTask(int task, Workload work)
    {
        var start = Math.Max(Time, Ready(task));
        var end = start + work.Hands[task];
        var next = (double[])times.Clone();
        next[task] = 0;
        var over = end + work.Wait[task];
        foreach (var follower in work.Followers[task])
            next[follower] = Math.Max(next[follower], over);
        next[^1] = Math.Max(next[^1], over);
        for (var warm = work.Own[task].On & work.Rules.Timed; warm != 0; warm &= warm - 1)
        {
            var s = BitOperations.TrailingZeroCount(warm);
            next[tasks + s] = Math.Max(next[tasks + s], end + work.Rules.Cool[s]);
        }
        return new Label(next, tasks)
        {
            Done = Done.With(task),
            State = State,
            Time = end,
            Parent = this,
            Move = task,
            Start = start,
        };
    }

    public Label AfterChange(int state, StateRules rules)
    {
        var clears = (State >> state & 1) != 0;
        var start = clears ? Math.Max(Time, Cool(state)) : Time;
        var end = start + rules.Hands(state, State);
        var next = (double[])times.Clone();
        next[tasks + state] = clears || (rules.Timed >> state & 1) == 0 ? 0 : end + rules.Cool[state];
        return new Label(next, tasks)
        {
            Done = Done,
            State = State ^ (1u << state),
            Time = end,
            Parent = this,
            Move = ~state,
            Start = start,
        };
    }

    /// <summary>Whether nothing can be done from the other, as far along, that cannot be done from here at least as early.</summary>
    public bool Dominates(Label other)
    {
        if (Time > other.Time)
            return false;
        var mine = times;
        var theirs = other.times;
        for (var i = 0; i < mine.Length; i++)
            if (mine[i] > theirs[i] && mine[i] > other.Time)
                return false;
        return true;
    }
}
