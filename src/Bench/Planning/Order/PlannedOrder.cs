using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>The order of what is still to do.</summary>
/// <param name="Plan">As the handbook gives it, without waits that ran already when it was made.</param>
/// <param name="OneByOne">How long the points would take one after the other; endless when they cannot be done so.</param>
/// <param name="Asked">What was still to do, and from where.</param>
public sealed record PlannedOrder(BenchPlan Plan, Duration OneByOne, OrderQuestion Asked)
{
    /// <summary>The points in their order.</summary>
    public IEnumerable<string> Points
    {
        get
        {
            var open = Asked.Open.Select(p => p.Id).ToHashSet();
            return Plan.Schedule.Select(s => s.Do).Where(open.Contains);
        }
    }

    /// <summary>What it saves against doing the points one after the other; null when there is nothing to compare.</summary>
    public Duration? Saved => double.IsFinite(OneByOne.Seconds) ? OneByOne - Plan.Makespan : null;

    /// <summary>Waits with what runs, their beginning and their end: after points, and until a state has ended by itself.</summary>
    public IReadOnlyList<(string What, Duration Start, Duration End)> Waits =>
        [
            .. from step in Plan.Schedule
            let point = Asked.Open.FirstOrDefault(p => p.Id == step.Do)
            where point is not null && point.Waits > TimeSpan.Zero
            select (point.Title, step.End, step.End + Asked.Waits(point)),
            .. from step in Plan.Schedule
            where step.Do.StartsWith("clear:", StringComparison.Ordinal)
            let state = Asked.Book.Reach[OrderWords.State(step).State]
            where state.ClearsAfter > TimeSpan.Zero
            select (
                state.Name,
                new Duration(Math.Max(0, step.Start.Seconds - state.ClearsAfter.TotalSeconds)),
                step.Start
            ),
        ];

    /// <summary>Searches to the end.</summary>
    /// <returns>Refused when there is no order at all.</returns>
    public static Handbook.Answer<PlannedOrder> Of(OrderQuestion asked, int effort = OrderSearch.UsualEffort)
    {
        if (asked.Open.Count == 0)
            return new PlannedOrder(new(new(0), new(0), [], true, null), new(0), asked);
        var begun = OrderSearch.Begin(asked, effort);
        if (begun.Value is not { } search)
            return Handbook.Answer<PlannedOrder>.Refuse(begun.Refusal!.Key, begun.Refusal.Because);
        while (search.Advance()) { }
        return search.Found;
    }
}
