using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>What a walk over the whole ledger found.</summary>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Jobs">In how many jobs.</param>
/// <param name="SetAside">How many things are set aside.</param>
/// <param name="Faults">What was changed, a sentence each; empty: intact.</param>
public sealed record LedgerFinding(int Entries, int Jobs, int SetAside, IReadOnlyList<string> Faults);

/// <summary>Walks every chain of a ledger: each device's, each job's, and the shop's order.</summary>
public static class LedgerCheck
{
    /// <summary>All faults.</summary>
    public static LedgerFinding Of(LedgerContext ledger)
    {
        var rows = ledger.Entries.AsNoTracking().OrderBy(e => e.Order).ToList();
        var aside = ledger.Aside.AsNoTracking().ToList();
        var heads = ledger.Jobs.AsNoTracking().ToDictionary(j => j.Job, StringComparer.Ordinal);
        var (entries, unreadable) = Read(rows);
        return new(
            rows.Count,
            heads.Count,
            aside.Count,
            [.. unreadable, .. OfDevices(entries, aside), .. OfOrder(rows), .. OfJobs(rows, heads)]
        );
    }

    private static (List<Entry> Entries, List<string> Faults) Read(IEnumerable<KeptEntry> rows)
    {
        var (entries, faults) = (new List<Entry>(), new List<string>());
        foreach (var row in rows)
            try
            {
                entries.Add(row.Entry());
            }
            catch (Exception reason) when (reason is JsonException or InvalidOperationException or FormatException)
            {
                faults.Add($"Entry {row.Id} (order {row.Order}, job {row.Job}) was changed: {reason.Message}");
            }
        return (entries, faults);
    }

    private static IEnumerable<string> OfDevices(List<Entry> entries, List<SetAside> aside)
    {
        var held = aside
            .Where(a => a.Reason != AsideReason.Waiting)
            .ToLookup(a => (a.Device, a.Epoch, a.Seq), a => a.Hash);
        return ChainCheck.Of(entries).Where(f => !IsExplained(f, held)).Select(f => f.Says);
    }

    /// <summary>An entry may be bound to something that is set aside; see <see cref="Acceptance"/>.</summary>
    private static bool IsExplained(ChainFault fault, ILookup<(string Device, int Epoch, int? Seq), string?> held) =>
        fault.Kind is ChainFaultKind.Gap or ChainFaultKind.BrokenLink
        && held[(fault.Entry.Device, fault.Entry.Epoch, fault.Entry.Seq - 1)]
            .Any(hash => hash is null || hash == fault.Entry.DevicePrevious);

    private static IEnumerable<string> OfOrder(List<KeptEntry> rows)
    {
        for (var i = 0; i < rows.Count; i++)
            if (rows[i].Order != (i == 0 ? 1 : rows[i - 1].Order + 1))
                yield return $"Entries before {rows[i].Id} (order {rows[i].Order}) were taken away.";
    }

    private static IEnumerable<string> OfJobs(List<KeptEntry> rows, Dictionary<string, JobHead> heads)
    {
        var jobs = rows.GroupBy(r => r.Job, StringComparer.Ordinal).ToDictionary(j => j.Key, j => j.ToList());
        foreach (var (job, entries) in jobs)
        {
            if (FirstOffChain(entries) is { } off)
                yield return $"Entry {off.Id} (order {off.Order}) does not fit the chain of job {job}.";
            if (
                !heads.TryGetValue(job, out var head)
                || head.Hash != entries[^1].JobHash
                || head.Entries != entries.Count
            )
                yield return $"Job {job} does not end where its chain says: entries were taken away or put in.";
        }
        foreach (var job in heads.Keys.Where(j => !jobs.ContainsKey(j)))
            yield return $"All entries of job {job} were taken away.";
    }

    private static KeptEntry? FirstOffChain(List<KeptEntry> entries)
    {
        var hash = "";
        return entries.FirstOrDefault(e => (hash = JobChain.Next(hash, e.Order, e.Hash)) != e.JobHash);
    }
}
