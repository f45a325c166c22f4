using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>What must still follow each task, whatever the order: fixed for the whole search.</summary>
internal sealed class Tails
{
    private readonly Workload work;

    public Tails(Workload work)
    {
        this.work = work;
        After = new double[work.Count];
        Lag = new double[work.Count, work.Count];
        Switching = new double[work.Rules.Count, work.Count, 2];
        var behind = new TaskSet[work.Count];
        for (var i = work.Count - 1; i >= 0; i--)
        {
            After[i] = Math.Max(work.Wait[i], Access(work.Own[i], work.Need[i], work.Rules.Final));
            for (var j = i + 1; j < work.Count; j++)
                if (work.Before[j].Has(i))
                    behind[i] = Union(behind[i].With(j), behind[j]);
            for (var j = i + 1; j < work.Count; j++)
                if (behind[i].Has(j))
                    Follow(i, j);
            for (var s = 0; s < work.Rules.Count; s++)
                (Switching[s, i, 0], Switching[s, i, 1]) = (SwitchingFrom(s, i, false), SwitchingFrom(s, i, true));
        }
    }

    /// <summary>Seconds that pass at least between the end of a task's hands and the end of all.</summary>
    public double[] After { get; }

    /// <summary>Seconds that pass at least between the end of the one and the start of the other, which must follow it.</summary>
    public double[,] Lag { get; }

    /// <summary>Hands-on seconds at least for changing a state (first index) along what follows a task, the state being off or on before it.</summary>
    public double[,,] Switching { get; }

    /// <summary>Hands-on seconds to bring a state from how it is to how it must end.</summary>
    public double Ending(int state, bool on) =>
        on && (work.Rules.Final.Off >> state & 1) != 0 ? work.Rules.Clear[state]
        : !on && (work.Rules.Final.On >> state & 1) != 0 ? work.Rules.Set[state]
        : 0;

    private void Follow(int i, int j)
    {
        var access = Access(work.Own[i], work.Need[i], work.Need[j]);
        Lag[i, j] = work.After[j].Has(i) ? Math.Max(work.Wait[i], access) : access;
        After[i] = Math.Max(After[i], Lag[i, j] + work.Hands[j] + After[j]);
    }

    // From a task that leaves the machine as it needed it to whatever needs it otherwise.
    private double Access(StateNeed own, StateNeed left, StateNeed wanted)
    {
        var rules = work.Rules;
        var least = rules.Hands(left.Off & wanted.On, 0) + rules.Hands(left.On & wanted.Off, uint.MaxValue);
        for (var cooling = own.On & wanted.Off & rules.Timed; cooling != 0; cooling &= cooling - 1)
        {
            var s = BitOperations.TrailingZeroCount(cooling);
            least = Math.Max(least, rules.Cool[s] + rules.Clear[s]);
        }
        return least;
    }

    private double SwitchingFrom(int s, int task, bool on)
    {
        var hands = 0.0;
        if (!on && (work.Need[task].On >> s & 1) != 0)
            (hands, on) = (work.Rules.Set[s], true);
        else if (on && (work.Need[task].Off >> s & 1) != 0)
            (hands, on) = (work.Rules.Clear[s], false);
        var rest = Ending(s, on);
        for (var j = task + 1; j < work.Count; j++)
            if (work.Before[j].Has(task))
                rest = Math.Max(rest, Switching[s, j, on ? 1 : 0]);
        return hands + rest;
    }

    private static TaskSet Union(TaskSet a, TaskSet b) => new(a.Low | b.Low, a.High | b.High);
}
