using System.Collections.Concurrent;
using Witnessmark.Bench.Jobs;
using Witnessmark.Ledger;

namespace Witnessmark.Day;

/// <summary>The jobs of a ledger that have not left. A job that has left is not looked at again until something is written on it.</summary>
internal sealed class OpenJobs
{
    private readonly ConcurrentDictionary<string, int> left = new(StringComparer.Ordinal);

    public static IReadOnlyList<JobState> Of(ShopLedger ledger, Workbench bench, IReadOnlySet<string> notCounting) =>
        new OpenJobs().In(ledger, bench, notCounting);

    /// <param name="ledger">Where they stand.</param>
    /// <param name="bench">What they are judged with.</param>
    /// <param name="notCounting">Entries that count for nothing: a release that nobody confirmed lets no machine leave.</param>
    public IReadOnlyList<JobState> In(ShopLedger ledger, Workbench bench, IReadOnlySet<string> notCounting)
    {
        List<JobState> open = [];
        foreach (var head in ledger.Jobs().Where(h => left.GetValueOrDefault(h.Job) != h.Entries))
        {
            var state = JobFold.Of(head.Job, ledger.OfJob(head.Job), bench, notCounting);
            if (state.Release is null)
                open.Add(state);
            else
                left[head.Job] = head.Entries;
        }
        return open;
    }
}
