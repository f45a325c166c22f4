using Witnessmark.Handbook;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;
using Search = Witnessmark.Handbook.BenchOrder.BenchOrder;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// The search for the order of what is still to do, a piece at a time: the handbook's search for the shortest, then among those
/// that take no longer one near the book's.
/// </summary>
public sealed class OrderSearch
{
    /// <summary>Ways looked at when nobody says otherwise: within 200 ms up to 25 points on the machine in docs/plan.md.</summary>
    public const int UsualEffort = 20_000;

    private readonly OrderQuestion asked;
    private readonly IReadOnlyList<BenchState> states;
    private readonly IReadOnlyList<BenchTask> tasks;
    private readonly NearBook near;
    private readonly BenchSearch search;
    private readonly Bundles? bundles;
    private readonly double oneByOne;
    private List<int>? steps;
    private BenchPlan? shortest;
    private int at;
    private bool moved;
    private bool over;

    private OrderSearch(
        OrderQuestion asked,
        IReadOnlyList<BenchState> states,
        IReadOnlyList<BenchTask> tasks,
        Bundles? bundles,
        BenchSearch search
    )
    {
        (this.asked, this.states, this.tasks, this.bundles, this.search) = (asked, states, tasks, bundles, search);
        near = new(states, tasks);
        oneByOne = OneByOne.Seconds(states, tasks);
    }

    /// <summary>Begins.</summary>
    /// <returns>Refused as the handbook does, when there is no order at all; as <c>tooMany</c> beyond its bounds.</returns>
    public static Answer<OrderSearch> Begin(OrderQuestion asked, int effort = UsualEffort)
    {
        var reach = new ReachMap(asked.Book.Reach, asked.Open, asked.Now);
        // as absences they would only be left out
        if (reach.Contradiction(asked.Open) is var (point, one, other))
            return Answer<OrderSearch>.Refuse(
                "unreachable",
                $"{point.Title} ({point.Id}) needs \"{one}\" and \"{other}\", which cannot be together: take one of them out of its reach."
            );
        var states = reach.States(asked.Now, asked.Cooling);
        var tasks = OrderTasks.Of(asked, reach);
        var bundles = tasks.Count > Search.ExactUpTo ? new Bundles(tasks) : null;
        var searched = bundles?.Tasks ?? tasks;
        if (searched.Count > Search.MostTasks || states.Count > Search.MostStates)
            return Answer<OrderSearch>.Refuse(
                "tooMany",
                $"{tasks.Count} points in {states.Count} states are more than an order is searched for; at most {Search.MostTasks} in {Search.MostStates}."
            );
        var begun = Search.Search(states, searched, effort);
        return begun.Value is { } search
            ? new OrderSearch(asked, states, tasks, bundles, search)
            : Answer<OrderSearch>.Refuse(begun.Refusal!.Key, begun.Refusal.Because);
    }

    /// <summary>One piece more; false when it is over.</summary>
    public bool Advance()
    {
        if (over || search.Advance())
            return !over;
        if (steps is null)
            Choose();
        else if (at < tasks.Count)
            moved |= near.Move(steps, at++, shorten: !shortest!.Proven);
        else
            (over, at, moved) = (!moved, 0, false);
        return !over;
    }

    /// <summary>The order that was found.</summary>
    /// <exception cref="InvalidOperationException">The search is not over.</exception>
    public PlannedOrder Found
    {
        get
        {
            if (!over)
                throw new InvalidOperationException("The search is not over.");
            var proven = shortest!.Proven && bundles is null;
            var plan = near.Plan(steps!, proven, bundles is null ? shortest.LowerBound : LeastHands());
            IReadOnlyList<BenchStep> shown = [.. plan.Schedule.Where(s => !OrderTasks.IsWait(s.Do))];
            return new(plan with { Schedule = shown }, new(oneByOne), asked);
        }
    }

    // the book's own order is taken where it is as short, or where a large search found none as short
    private void Choose()
    {
        shortest = search.Plan;
        steps = near.Steps(bundles?.Opened(shortest.Schedule) ?? shortest.Schedule.Select(s => s.Do));
        if (near.Book() is { } book && near.End(book) <= near.End(steps) + 1e-6)
            steps = book;
    }

    // bundles shut some orders out, so their bound says nothing of all: each task, and each change that no order avoids, once
    private Duration LeastHands() =>
        new(
            tasks.Sum(t => t.Hands.Seconds)
                + states
                    .Where(s => !s.Initial && tasks.Any(t => t.Needs.TryGetValue(s.Name, out var on) && on))
                    .Sum(s => s.Set.Seconds + (s.Final == false ? s.Clear?.Seconds ?? 0 : 0))
        );
}
