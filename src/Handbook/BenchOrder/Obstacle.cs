using System.Numerics;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>Why there is no order at all, in words.</summary>
internal static class Obstacle
{
    public static Refusal? InStates(StateRules rules)
    {
        if (rules.InRing() is >= 0 and var ring)
            return Unreachable(
                $"State {rules.Name(ring)} requires itself, directly or through others, so it can never be changed."
            );
        if (!rules.Consistent(rules.Initial))
            return Unreachable($"At the start a state is 1 whose requirements are not met.");
        if (rules.Final.Contradicts)
            return Unreachable(
                $"The end asks for {Names(rules, rules.Final)} both 0 and 1, with what the other final states require."
            );
        var stuck = rules.Final.Off & rules.Initial & rules.OneWay;
        return stuck == 0
            ? null
            : Unreachable($"{First(rules, stuck)} is 1 at the start, must end 0 and cannot be undone.");
    }

    public static Refusal? InNeeds(StateRules rules, IReadOnlyList<BenchTask> tasks)
    {
        foreach (var task in tasks)
        {
            var need = rules.Widened(rules.Need(task.Needs));
            if (need.Contradicts)
                return Unreachable(
                    $"Task {task.Id} needs {Names(rules, need)} both 0 and 1, with what its other states require."
                );
            if ((need.Off & rules.Initial & rules.OneWay) is not 0 and var stuck)
                return Unreachable(
                    $"Task {task.Id} needs {First(rules, stuck)} at 0, but it is 1 at the start and cannot be undone."
                );
            if ((need.On & rules.Final.Off & rules.OneWay) is not 0 and var left)
                return Unreachable(
                    $"Task {task.Id} needs {First(rules, left)} at 1, but it must end 0 and cannot be undone."
                );
        }
        return null;
    }

    public static Refusal Ring(IReadOnlyList<BenchTask> tasks, TaskSet[] after)
    {
        // Whatever is left when all that can start has been taken away lies in a ring or behind one: go backwards until a task returns.
        var left = Enumerable.Range(0, tasks.Count).ToHashSet();
        while (left.FirstOrDefault(i => !left.Any(j => after[i].Has(j)), -1) is >= 0 and var free)
            left.Remove(free);
        var way = new List<int> { left.Min() };
        while (way.Distinct().Count() == way.Count)
            way.Add(left.First(j => after[way[^1]].Has(j)));
        way.RemoveRange(0, way.IndexOf(way[^1]));
        way.Reverse();
        return new Refusal(
            "cycle",
            $"These tasks wait for each other in a ring: {string.Join(", then ", way.Select(i => tasks[i].Id))}. Take one \"after\" out."
        );
    }

    public static Refusal OneWay(StateRules rules, IReadOnlyList<BenchTask> tasks) =>
        Unreachable(
            $"The order asked for needs {Any(rules, rules.OneWay & Used(rules, tasks))} at 1 and later at 0, but it cannot be undone: give it a time to clear, or change what comes after what."
        );

    private static uint Used(StateRules rules, IReadOnlyList<BenchTask> tasks)
    {
        var all = tasks
            .Select(t => rules.Widened(rules.Need(t.Needs)))
            .Aggregate(default(StateNeed), (a, b) => a.And(b));
        return all.On & all.Off;
    }

    private static Refusal Unreachable(Sentence because) => new("unreachable", because);

    private static Sentence Names(StateRules rules, StateNeed need) => Any(rules, need.On & need.Off);

    private static string First(StateRules rules, uint states) => rules.Name(BitOperations.TrailingZeroCount(states));

    private static Sentence Any(StateRules rules, uint states) =>
        Enumerable
            .Range(0, rules.Count)
            .Where(s => (states >> s & 1) != 0)
            .Select(s => Sentence.Of(rules.Name(s)))
            .Aggregate((all, next) => $"{all} or {next}");
}
