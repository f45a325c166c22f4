using Witnessmark.Handbook.BenchOrder;

namespace Witnessmark.Bench.Planning.Order;

/// <summary>
/// Many tasks as fewer: neighbours in the book that need the same, wait for nothing and are waited for by nothing are done in
/// one go. A large order is only searched for a good answer, and finds a better one among fewer tasks.
/// </summary>
internal sealed class Bundles
{
    // longer ones would not fit into the waits that they could fill
    private const double Longest = 20 * 60; // s

    private readonly Dictionary<string, IReadOnlyList<BenchTask>> members = new(StringComparer.Ordinal);

    public Bundles(IReadOnlyList<BenchTask> tasks)
    {
        var waitedFor = tasks.SelectMany(t => t.After).ToHashSet();
        List<List<BenchTask>> bundles = [];
        foreach (var task in tasks)
        {
            var free = task.After.Count == 0 && task.WaitAfter.Seconds == 0 && !waitedFor.Contains(task.Id);
            var with = free ? bundles.FindLast(b => Takes(b, task, waitedFor)) : null;
            if (with is null)
                bundles.Add([task]);
            else
                with.Add(task);
        }
        Tasks = [.. bundles.Select(b => b[0] with { Hands = new(b.Sum(t => t.Hands.Seconds)) })];
        foreach (var bundle in bundles)
            members[bundle[0].Id] = bundle;
    }

    /// <summary>The bundles, each under the name of its first task.</summary>
    public IReadOnlyList<BenchTask> Tasks { get; }

    /// <summary>An order of the bundles as one of their tasks.</summary>
    public IEnumerable<string> Opened(IEnumerable<BenchStep> schedule) =>
        schedule.SelectMany(s => members.TryGetValue(s.Do, out var tasks) ? tasks.Select(t => t.Id) : [s.Do]);

    private static bool Takes(List<BenchTask> bundle, BenchTask task, HashSet<string> waitedFor) =>
        bundle[0] is { After.Count: 0, WaitAfter.Seconds: 0 } first
        && !waitedFor.Contains(first.Id)
        && bundle.Sum(t => t.Hands.Seconds) + task.Hands.Seconds <= Longest
        && first.Needs.Count == task.Needs.Count
        && first.Needs.All(n => task.Needs.TryGetValue(n.Key, out var value) && value == n.Value);
}
