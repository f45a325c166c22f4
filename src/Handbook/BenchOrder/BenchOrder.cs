using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Handbook.BenchOrder;

/// <summary>In which order to do the tasks of a job, so that waiting, warming and taking apart cost the least time.</summary>
/// <remarks>
/// <para><b>Formula.</b> Least makespan = max(end of the last action, end of the last wait, cooled down and put back as it must end)
/// with one pair of hands. A task begins when the tasks before it are done and waited out and the machine is as it needs it;
/// a change of state takes hands for set or clear, and a clear with a time to cool begins no earlier than that time after the last
/// task that named the state at 1, after it was set, or after the start. Exact search (A*) over what is done, how the machine is,
/// and which times still bind; a way that is nowhere earlier than another is dropped.</para>
/// <para><b>Units.</b> Times as durations, kept in seconds.</para>
/// <para><b>Source.</b> Derived in docs/handbook/bench-order.md; bound: Jackson's preemptive schedule (Naval Research Logistics Quarterly 3,
/// 1956); checked by enumeration, by an independent solver and by replaying every schedule.</para>
/// <para><b>Valid when</b> one person works, waits only have a least length (nothing goes off, nothing cools too far), and the times are known.
/// Proven up to 25 tasks unless the work allowed runs out; beyond, the best found and a bound.</para>
/// </remarks>
public static class BenchOrder
{
    /// <summary>Up to this many tasks the order is searched until it is proven.</summary>
    public const int ExactUpTo = 25;

    /// <summary>More tasks than this are refused as a caller's bug.</summary>
    public const int MostTasks = TaskSet.Most;

    /// <summary>More states than this are refused as a caller's bug.</summary>
    public const int MostStates = 32;

    /// <summary>The work allowed when nobody says otherwise, in ways looked at.</summary>
    public const int UsualEffort = 300_000;

    /// <summary>The longest time that one thing may take.</summary>
    public static readonly Duration Longest = new(1000.0 * 86_400);

    /// <summary>The best order.</summary>
    /// <param name="states">At most <see cref="MostStates"/>, each with a name of its own; every time 0 to <see cref="Longest"/>.</param>
    /// <param name="tasks">At most <see cref="MostTasks"/>, each with a name of its own; every time 0 to <see cref="Longest"/>.</param>
    /// <param name="effort">How many ways may be looked at: the same on every machine, unlike a clock.</param>
    /// <returns>Refused as <c>cycle</c> when tasks wait for each other, <c>unreachable</c> when the machine can never be as needed.</returns>
    /// <exception cref="ArgumentException">A name is not known or there twice, or there are too many.</exception>
    public static Answer<BenchPlan> For(
        IReadOnlyList<BenchState> states,
        IReadOnlyList<BenchTask> tasks,
        int effort = UsualEffort
    )
    {
        var begun = Search(states, tasks, effort);
        if (begun.Value is not { } search)
            return Answer<BenchPlan>.Refuse(begun.Refusal!.Key, begun.Refusal.Because);
        while (search.Advance()) { }
        return search.Plan;
    }

    /// <summary>The same a piece at a time, so that a screen stays alive meanwhile.</summary>
    /// <inheritdoc cref="For"/>
    public static Answer<BenchSearch> Search(
        IReadOnlyList<BenchState> states,
        IReadOnlyList<BenchTask> tasks,
        int effort = UsualEffort
    )
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(states.Count, MostStates);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tasks.Count, MostTasks);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(effort);
        var work = Workload.Of(new StateRules(states), tasks, out var refusal);
        return work is null ? Answer<BenchSearch>.Refuse(refusal!.Key, refusal.Because) : new BenchSearch(work, effort);
    }
}
