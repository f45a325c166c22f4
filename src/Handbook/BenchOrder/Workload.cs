namespace Witnessmark.Handbook.BenchOrder;

/// <summary>The tasks of one order by number, in an order that respects everything that must come before.</summary>
internal sealed class Workload
{
    private Workload(StateRules rules, BenchTask[] tasks, TaskSet[] after, TaskSet[] before)
    {
        Rules = rules;
        Tasks = tasks;
        After = after;
        Before = before;
        Hands = [.. tasks.Select(t => t.Hands.Seconds)];
        Wait = [.. tasks.Select(t => t.WaitAfter.Seconds)];
        Own = [.. tasks.Select(t => rules.Need(t.Needs))];
        Need = [.. Own.Select(rules.Widened)];
        Predecessors = [.. tasks.Select((_, i) => Where(before[i].Has).ToArray())];
        Followers = [.. tasks.Select((_, i) => Where(j => after[j].Has(i)).ToArray())];
        All = Where(_ => true).Aggregate(default(TaskSet), (set, i) => set.With(i));
        Users = [.. Enumerable.Range(0, rules.Count).Select(s => (UsersOf(s, false), UsersOf(s, true)))];
    }

    public StateRules Rules { get; }

    public BenchTask[] Tasks { get; }

    public int Count => Tasks.Length;

    /// <summary>Whose waits must be over before each.</summary>
    public TaskSet[] After { get; }

    /// <summary>What must be done before each: the same, and what a state that can never be undone forces.</summary>
    public TaskSet[] Before { get; }

    /// <summary>The same as lists.</summary>
    public int[][] Predecessors { get; }

    /// <summary>Who waits for each.</summary>
    public int[][] Followers { get; }

    public double[] Hands { get; }

    public double[] Wait { get; }

    /// <summary>What each task itself names.</summary>
    public StateNeed[] Own { get; }

    /// <summary>The same with all that it drags with it.</summary>
    public StateNeed[] Need { get; }

    public TaskSet All { get; }

    /// <summary>For each state the tasks that need it off, and on.</summary>
    public (TaskSet Off, TaskSet On)[] Users { get; }

    /// <summary>Numbers the tasks, or says why no order of them exists.</summary>
    public static Workload? Of(StateRules rules, IReadOnlyList<BenchTask> tasks, out Refusal? refusal)
    {
        refusal = Obstacle.InStates(rules) ?? Obstacle.InNeeds(rules, tasks);
        if (refusal is not null)
            return null;
        var after = AfterByNumber(tasks);
        if (Sorted(after) is null)
        {
            refusal = Obstacle.Ring(tasks, after);
            return null;
        }
        var before = WithOneWays(rules, tasks, after);
        if (Sorted(before) is not { } order)
        {
            refusal = Obstacle.OneWay(rules, tasks);
            return null;
        }
        return new Workload(
            rules,
            [.. order.Select(i => tasks[i])],
            Renumbered(after, order),
            Renumbered(before, order)
        );
    }

    private static TaskSet[] AfterByNumber(IReadOnlyList<BenchTask> tasks)
    {
        var number = tasks.Select((t, i) => (t.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        return
        [
            .. tasks.Select(t =>
                t.After.Aggregate(
                    default(TaskSet),
                    (set, id) =>
                        number.TryGetValue(id, out var i)
                            ? set.With(i)
                            : throw new ArgumentException("There is no task \"{id}\".", nameof(tasks))
                )
            ),
        ];
    }

    // What needs a state off must come before what needs it on, when nothing can take it off again.
    private static TaskSet[] WithOneWays(StateRules rules, IReadOnlyList<BenchTask> tasks, TaskSet[] after)
    {
        var needs = tasks.Select(t => rules.Widened(rules.Need(t.Needs))).ToArray();
        var before = (TaskSet[])after.Clone();
        for (var late = 0; late < tasks.Count; late++)
        for (var early = 0; early < tasks.Count; early++)
            if ((needs[early].Off & needs[late].On & rules.OneWay) != 0)
                before[late] = before[late].With(early);
        return before;
    }

    /// <summary>The tasks in an order that respects what comes before, or null when there is a ring.</summary>
    private static int[]? Sorted(TaskSet[] before)
    {
        var order = new List<int>();
        var done = default(TaskSet);
        while (order.Count < before.Length)
        {
            var next = Enumerable
                .Range(0, before.Length)
                .FirstOrDefault(i => !done.Has(i) && done.Contains(before[i]), -1);
            if (next < 0)
                return null;
            order.Add(next);
            done = done.With(next);
        }
        return [.. order];
    }

    private static TaskSet[] Renumbered(TaskSet[] sets, int[] order) =>
        [
            .. order.Select(old =>
                Enumerable
                    .Range(0, order.Length)
                    .Where(i => sets[old].Has(order[i]))
                    .Aggregate(default(TaskSet), (set, i) => set.With(i))
            ),
        ];

    private TaskSet UsersOf(int state, bool on) =>
        Where(i => ((on ? Need[i].On : Need[i].Off) >> state & 1) != 0)
            .Aggregate(default(TaskSet), (set, i) => set.With(i));

    private IEnumerable<int> Where(Func<int, bool> holds) => Enumerable.Range(0, Count).Where(holds);
}
