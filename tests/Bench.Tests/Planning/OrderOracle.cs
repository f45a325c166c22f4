using Witnessmark.Bench.Book;
using Witnessmark.Bench.Planning.Order;

namespace Witnessmark.Bench.Tests.Planning;

/// <summary>
/// Carries an order out knowing only the words of the book: reach, never-with, set, clear, clears-after, after, hands, waits.
/// Written without the code that maps points to tasks.
/// </summary>
internal static class OrderOracle
{
    private const double Slip = 1e-6; // min

    /// <summary>Complains at the first rule that the order breaks, and at a makespan that carrying it out does not give.</summary>
    public static void Check(PlannedOrder order)
    {
        var asked = order.Asked;
        var on = asked.Now.ToHashSet();
        // what is so at the start ends by itself no earlier than its whole time from now, or what is left of it
        var ends = on.ToDictionary(
            s => s,
            s =>
                asked.Cooling.TryGetValue(s, out var left)
                    ? left.TotalMinutes
                    : asked.Book.Reach[s].ClearsAfter.TotalMinutes
        );
        var ready = asked.Waiting.ToDictionary(w => w.Key, w => w.Value.TotalMinutes);
        var free = 0.0;
        var done = new List<string>();
        foreach (var step in order.Plan.Schedule)
        {
            var (start, end) = (step.Start.Seconds / 60, step.End.Seconds / 60);
            Assert.True(start >= free - Slip, $"{step.Do} begins before the hands are free");
            free = end;
            if (step.Do.StartsWith("set:", StringComparison.Ordinal))
                Set(asked.Book, step.Do[4..], on, ends, start, end);
            else if (step.Do.StartsWith("clear:", StringComparison.Ordinal))
                Clear(asked.Book, step.Do[6..], on, ends, start, end);
            else
                Do(asked, asked.Open.Single(p => p.Id == step.Do), on, ends, ready, done, start, end);
        }
        Assert.Equal(asked.Open.Select(p => p.Id).Order(), done.Order());
        Assert.All(on, s => Assert.True(asked.Book.Reach[s].ClearsAfter > TimeSpan.Zero, $"{s} is left so"));
        Assert.Equal(Math.Max(free, ready.Values.Append(0).Max()), order.Plan.Makespan.Seconds / 60, Slip);
        Assert.Equal(asked.Open.Sum(p => p.Hands.TotalMinutes), order.Plan.HandsOn.Seconds / 60, Slip);
        if (asked.InHand is { } hand)
            Assert.Equal(hand, done[0]);
    }

    /// <summary>How long a sequence of points takes when the machine is changed only when the next asks for it; endless when it breaks a rule.</summary>
    public static double Lazily(OrderQuestion asked, IReadOnlyList<Point> sequence)
    {
        var (on, time, last) = (asked.Now.ToHashSet(), 0.0, 0.0);
        var ends = on.ToDictionary(s => s, s => asked.Book.Reach[s].ClearsAfter.TotalMinutes);
        var ready = asked.Waiting.ToDictionary(w => w.Key, w => w.Value.TotalMinutes);
        foreach (var point in sequence)
        {
            foreach (
                var state in on.Where(s => point.Reach.Any(r => Excluded(asked.Book, r, s)))
                    .OrderBy(s => asked.Book.Reach[s].ClearsAfter)
                    .ToList()
            )
                Off(state);
            foreach (var state in point.Reach.Where(r => asked.Book.Reach[r].Set > TimeSpan.Zero && on.Add(r)).ToList())
            {
                time += asked.Book.Reach[state].Set.TotalMinutes;
                ends[state] = time + asked.Book.Reach[state].ClearsAfter.TotalMinutes;
            }
            foreach (var before in point.After.Where(a => sequence.Any(p => p.Id == a) || asked.Waiting.ContainsKey(a)))
            {
                if (!ready.TryGetValue(before, out var over))
                    return double.PositiveInfinity;
                time = Math.Max(time, over);
            }
            time += point.Hands.TotalMinutes;
            ready[point.Id] = time + point.Waits.TotalMinutes;
            last = Math.Max(last, ready[point.Id]);
            foreach (var state in point.Reach.Where(on.Contains))
                ends[state] = time + asked.Book.Reach[state].ClearsAfter.TotalMinutes;
        }
        foreach (var state in on.Where(s => asked.Book.Reach[s].ClearsAfter == TimeSpan.Zero).ToList())
            Off(state);
        return Math.Max(time, last);

        void Off(string state)
        {
            on.Remove(state);
            time = Math.Max(time, ends[state]) + asked.Book.Reach[state].Clear.TotalMinutes;
        }
    }

    public static bool Excluded(BenchBook book, string one, string other) =>
        book.Reach[one].Never.Contains(other) || book.Reach[other].Never.Contains(one);

    private static void Set(
        BenchBook book,
        string name,
        HashSet<string> on,
        Dictionary<string, double> ends,
        double start,
        double end
    )
    {
        Assert.Equal(book.Reach[name].Set.TotalMinutes, end - start, Slip);
        Assert.DoesNotContain(on, o => Excluded(book, o, name));
        Assert.True(on.Add(name), $"{name} is so already");
        ends[name] = end + book.Reach[name].ClearsAfter.TotalMinutes;
    }

    private static void Clear(
        BenchBook book,
        string name,
        HashSet<string> on,
        Dictionary<string, double> ends,
        double start,
        double end
    )
    {
        Assert.Equal(book.Reach[name].Clear.TotalMinutes, end - start, Slip);
        Assert.True(start >= ends[name] - Slip, $"{name} ends before its time");
        Assert.True(on.Remove(name), $"{name} is not so");
    }

    private static void Do(
        OrderQuestion asked,
        Point point,
        HashSet<string> on,
        Dictionary<string, double> ends,
        Dictionary<string, double> ready,
        List<string> done,
        double start,
        double end
    )
    {
        foreach (var state in point.Reach)
        {
            // a state that takes no time either way is the absence of what excludes it
            if (asked.Book.Reach[state] is { Set.Ticks: 0, Clear.Ticks: 0, ClearsAfter.Ticks: 0 })
                Assert.DoesNotContain(on, o => Excluded(asked.Book, o, state));
            else
                Assert.Contains(state, on);
        }
        foreach (var before in point.After.Where(a => asked.Open.Any(p => p.Id == a) || asked.Waiting.ContainsKey(a)))
            if (point.Id != asked.InHand)
                Assert.True(
                    ready.TryGetValue(before, out var over) && over <= start + Slip,
                    $"{point.Id} does not wait for {before}"
                );
        Assert.Equal(point.Hands.TotalMinutes, end - start, Slip);
        ready[point.Id] = end + point.Waits.TotalMinutes;
        done.Add(point.Id);
        foreach (var state in point.Reach.Where(on.Contains))
            ends[state] = end + asked.Book.Reach[state].ClearsAfter.TotalMinutes;
    }
}
