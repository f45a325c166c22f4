using System.Globalization;
using Witnessmark.Handbook.BenchOrder;
using Witnessmark.Handbook.Quantities;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>An order in words, for people.</summary>
public static class OrderWords
{
    /// <summary><c>1:05</c>: hours and minutes from the start, whole minutes.</summary>
    public static string Clock(Duration time)
    {
        var minutes = (long)Math.Round(time.Seconds / 60);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00}");
    }

    /// <summary><c>1 h 5 min</c>, <c>40 min</c>.</summary>
    public static Sentence Span(Duration time)
    {
        var minutes = (long)Math.Round(time.Seconds / 60);
        return minutes < 60 ? (Sentence)$"{minutes} min" : (Sentence)$"{minutes / 60} h {minutes % 60} min";
    }

    /// <summary>One step: a point's title, or how the machine is changed.</summary>
    public static Sentence Of(BenchStep step, PlannedOrder order)
    {
        if (order.Asked.Open.FirstOrDefault(p => p.Id == step.Do) is { } point)
            return Sentence.Of(point.Title);
        var (sets, name) = State(step);
        return sets ? (Sentence)$"- {name}"
            : step.Start == step.End ? (Sentence)$"- {name} no more"
            : (Sentence)$"- {name}: put back";
    }

    /// <summary>Whether a step is a change of a state, set or undone, and which.</summary>
    public static (bool Sets, string State) State(BenchStep step)
    {
        var colon = step.Do.IndexOf(':', StringComparison.Ordinal);
        return (step.Do.StartsWith("set:", StringComparison.Ordinal), step.Do[(colon + 1)..]);
    }

    /// <summary>How long it takes, what it saves and how good it is.</summary>
    public static IEnumerable<Sentence> Totals(PlannedOrder order)
    {
        var plan = order.Plan;
        if (plan.Schedule.Count == 0)
        {
            yield return $"Nothing is left to do.";
            yield break;
        }
        yield return $"{Span(plan.HandsOn)} of work at the points, {Span(plan.Makespan)} in all with changes and waits.";
        if (order.Saved is { Seconds: >= 30 } saved)
            yield return $"One after the other it would take {Span(order.OneByOne)}: {Span(saved)} saved.";
        yield return plan.Proven ? (Sentence)$"No order is shorter."
        : plan.LowerBound is { } bound ? (Sentence)$"The best order found; none is shorter than {Span(bound)}."
        : (Sentence)$"The best order found.";
    }
}
