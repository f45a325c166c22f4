using System.Collections.Concurrent;
using Witnessmark.Bench.Jobs;
using Witnessmark.Ledger;

namespace Witnessmark.Day;

/// <summary>The jobs of a ledger that have not left. A job that has left is not looked at again until something is written on it.</summary>
internal sealed class OpenJobs
{
    private readonly ConcurrentDictionary<string, int> left = new(StringComparer.Ordinal);

    public static IReadOnlyList<JobState> Of(ShopLedger ledger, Workbench bench) => new OpenJobs().In(ledger, bench);

    public IReadOnlyList<JobState> In(ShopLedger ledger, Workbench bench)
    {
        List<JobState> open = [];
        foreach (var head in ledger.Jobs().Where(h => left.GetValueOrDefault(h.Job) != h.Entries))
        {
            var state = JobFold.Of(head.Job, ledger.OfJob(head.Job), bench);
            if (state.Release is null)
                open.Add(state);
            else
                left[head.Job] = head.Entries;
        }
        return open;
    }
}
