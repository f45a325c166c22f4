using Witnessmark.Handbook.BenchOrder;

namespace Witnessmark.Handbook.Tests.BenchOrder;

/// <summary>Carries a schedule out line by line, knowing only the rules, and complains at the first that is broken.</summary>
public static class Replay
{
    private const double Slip = 1e-6;

    public static void Check(BenchState[] states, BenchTask[] tasks, BenchPlan plan)
    {
        var now = states.ToDictionary(s => s.Name, s => s.Initial);
        var clearable = states.Where(s => s.Initial).ToDictionary(s => s.Name, s => s.ClearAfter?.Seconds ?? 0);
        var over = new Dictionary<string, double>();
        var free = 0.0;
        foreach (var step in plan.Schedule)
        {
            Assert.True(step.Start.Seconds >= free - Slip, $"{step.Do} begins before the hands are free");
            free = step.End.Seconds;
            if (step.Do.Split(':') is [("set" or "clear") and var kind, _])
                Change(states, now, clearable, step, kind == "set", step.Do[(kind.Length + 1)..]);
            else
                Do(tasks, now, clearable, over, states, step);
        }
        Assert.Equal(tasks.Select(t => t.Id).Order(), over.Keys.Order());
        foreach (var state in states)
            Assert.True(state.Final is null || now[state.Name] == state.Final, $"{state.Name} is left wrong");
        Assert.Equal(Math.Max(free, over.Values.Append(0).Max()), plan.Makespan.Seconds, Slip);
        Assert.Equal(tasks.Sum(t => t.Hands.Seconds), plan.HandsOn.Seconds, Slip);
        if (plan.LowerBound is { } bound)
            Assert.True(bound.Seconds <= plan.Makespan.Seconds + Slip);
        Assert.Equal(plan.Proven, plan.LowerBound is null);
    }

    private static void Change(
        BenchState[] states,
        Dictionary<string, bool> now,
        Dictionary<string, double> clearable,
        BenchStep step,
        bool sets,
        string name
    )
    {
        var state = states.Single(s => s.Name == name);
        Assert.NotEqual(sets, now[name]);
        Required(states, now, step.Do);
        if (sets)
        {
            foreach (var (other, value) in state.Requires)
                Assert.True(now[other] == value, $"{step.Do} without {other} = {value}");
            clearable[name] = step.End.Seconds + (state.ClearAfter?.Seconds ?? 0);
        }
        else
        {
            Assert.True(state.Clear is not null || state.ClearAfter is not null, $"{name} cannot be undone");
            Assert.True(step.Start.Seconds >= clearable[name] - Slip, $"{step.Do} before its time");
        }
        var hands = sets ? state.Set.Seconds : state.Clear?.Seconds ?? 0;
        Assert.Equal(hands, (step.End - step.Start).Seconds, Slip);
        now[name] = sets;
        Required(states, now, step.Do);
    }

    private static void Do(
        BenchTask[] tasks,
        Dictionary<string, bool> now,
        Dictionary<string, double> clearable,
        Dictionary<string, double> over,
        BenchState[] states,
        BenchStep step
    )
    {
        var task = tasks.Single(t => t.Id == step.Do);
        foreach (var (name, value) in task.Needs)
            Assert.True(now[name] == value, $"{task.Id} without {name} = {value}");
        foreach (var before in task.After)
            Assert.True(over[before] <= step.Start.Seconds + Slip, $"{task.Id} does not wait for {before}");
        Assert.Equal(task.Hands.Seconds, (step.End - step.Start).Seconds, Slip);
        over.Add(task.Id, step.End.Seconds + task.WaitAfter.Seconds);
        foreach (var name in task.Needs.Where(n => n.Value).Select(n => n.Key))
            clearable[name] = step.End.Seconds + (states.Single(s => s.Name == name).ClearAfter?.Seconds ?? 0);
    }

    private static void Required(BenchState[] states, Dictionary<string, bool> now, string when)
    {
        foreach (var state in states.Where(s => now[s.Name]))
        foreach (var (other, value) in state.Requires)
            Assert.True(now[other] == value, $"at {when} {state.Name} lacks {other} = {value}");
    }
}
