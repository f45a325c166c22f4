using System.Globalization;
using System.Text.Json;
using Witnessmark.Bench.Record;

namespace Witnessmark.Client.Device;

/// <summary>All entries that this device has: its own, and those of others that the shop gave. What it says is saved here stands in the store.</summary>
internal sealed class DeviceLedger(DeviceStore store, TimeProvider clock)
{
    // one chain per device; a wiped device takes a new name, so its epoch never grows
    private const int Epoch = 1;
    private readonly Dictionary<string, Entry> byId = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<Entry>> byJob = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim one = new(1, 1);
    private bool askedToKeep;
    private IReadOnlyList<string> hidden = [];

    /// <summary>Something was added, here or in another tab.</summary>
    public event Action? Changed;

    /// <summary>Another tab wrote something: entries, or what is kept beside them.</summary>
    public event Action? Elsewhere;

    /// <summary>The device knows something else of itself.</summary>
    public event Action? Noted;

    public DeviceFacts Facts { get; private set; } = new();

    /// <summary>Own entries that stand in this device's store.</summary>
    public int SavedHere => Facts.HeadSeq;

    /// <summary>Own entries of which the shop said that it has them.</summary>
    public int SavedAtShop => Math.Min(Facts.Confirmed, Facts.HeadSeq);

    public async Task Open()
    {
        await store.Open();
        Facts = await store.Facts();
        foreach (var entry in await store.Entries())
            Put(entry);
    }

    public IEnumerable<string> Jobs => byJob.Keys;

    public IReadOnlyList<Entry> Of(string job) => byJob.GetValueOrDefault(job) ?? [];

    /// <summary>Jobs that were opened for a machine.</summary>
    public IEnumerable<string> JobsOf(string machine) =>
        byId
            .Values.Where(e =>
                e.Kind == EntryKind.Arrival
                && !hidden.Contains(e.Shop)
                && e.Body.TryGetProperty("machine", out var of)
                && of.ValueKind == JsonValueKind.String
                && of.GetString() == machine
            )
            .Select(e => e.Job)
            .Distinct();

    /// <summary>Own entries with a number above the given one, in order.</summary>
    public IReadOnlyList<Entry> OwnAfter(int seq, int most) =>
        [.. byId.Values.Where(e => IsOwn(e) && e.Seq > seq).OrderBy(e => e.Seq).Take(most)];

    public bool IsOwn(Entry entry) => entry.Device == Facts.Device;

    /// <summary>Whether all entries of a job that this device has are at the shop.</summary>
    public int NotYetAtShop(string job) => Of(job).Count(e => IsOwn(e) && e.Seq > Facts.Confirmed);

    /// <summary>Numbers, seals and stores a fact; when this returns, it is saved here.</summary>
    public async Task<Entry> Write(
        string shop,
        string job,
        string kind,
        JsonElement body,
        string by,
        string? strikes = null
    )
    {
        var at = clock.GetLocalNow().ToString("yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture);
        return await InTurn(() => Seal(new(NewId(), shop, job, kind, body, strikes, Covers(job), at, by)));
    }

    private bool Put(Entry entry)
    {
        var isNew = byId.TryAdd(entry.Id, entry);
        if (isNew)
            PutToJob(entry);
        return isNew;
    }

    /// <summary>Shows no jobs of shops that were put away: what this device has of them it keeps, and nobody works on it.</summary>
    public void Hide(IReadOnlyList<string> shops)
    {
        hidden = shops;
        byJob.Clear();
        foreach (var entry in byId.Values)
            PutToJob(entry);
    }

    private void PutToJob(Entry entry)
    {
        if (hidden.Contains(entry.Shop))
            return;
        if (byJob.TryGetValue(entry.Job, out var job))
            job.Add(entry);
        else
            byJob[entry.Job] = [entry];
    }

    private async Task<Entry> Seal(EntryDraft draft)
    {
        while (true)
        {
            var entry = Entries.Sealed(draft, Facts.Device, Epoch, Facts.HeadSeq + 1, Facts.HeadHash);
            if (await store.Append(entry) is not { } head)
            {
                Facts = Facts with { HeadSeq = entry.Seq, HeadHash = entry.Hash };
                Put(entry);
                Changed?.Invoke();
                await AskToKeepOnce();
                return entry;
            }
            // another tab wrote meanwhile: its number is taken, this fact gets the next one
            Facts = Facts with
            {
                HeadSeq = head.HeadSeq,
                HeadHash = head.HeadHash,
            };
        }
    }

    /// <summary>Keeps others' entries.</summary>
    public async Task Keep(IReadOnlyList<Entry> entries, string ledger, int pulled) =>
        await InTurn(async () =>
        {
            await store.Keep(entries, ledger, pulled);
            Facts = Facts with { Ledger = ledger, Pulled = pulled };
            // the shop gives back what this device brought
            if (entries.Count(Put) > 0)
                Changed?.Invoke();
            else
                Noted?.Invoke();
            return true;
        });

    /// <summary>Changes what the device knows of itself: not the head of its chain, which only writing moves.</summary>
    public async Task Remember(Func<DeviceFacts, DeviceFacts> change) =>
        await InTurn(async () =>
        {
            var (before, after) = (Facts, change(Facts));
            var news = after.Kept().Except(before.Kept()).ToArray();
            if (news.Length == 0)
                return true;
            await store.Remember(news);
            Facts = after;
            Noted?.Invoke();
            if (!ReferenceEquals(before.NotCounting, after.NotCounting))
                Changed?.Invoke(); // entries that are here already say something else now
            return true;
        });

    /// <summary>Another tab wrote.</summary>
    public async Task HeardOf(string[] ids) =>
        await InTurn(async () =>
        {
            Facts = await store.Facts();
            if (ids.Length > 0)
                foreach (var entry in await store.Entries(ids))
                    Put(entry);
            Elsewhere?.Invoke();
            Changed?.Invoke();
            return true;
        });

    // the screen and the exchange both write: one after the other, or the later would put back what the earlier changed
    private async Task<T> InTurn<T>(Func<Task<T>> act)
    {
        await one.WaitAsync();
        try
        {
            return await act();
        }
        finally
        {
            one.Release();
        }
    }

    /// <summary>The highest number seen of each other chain in this job.</summary>
    private Dictionary<string, int>? Covers(string job)
    {
        var seen = Of(job)
            .Where(e => !IsOwn(e))
            .GroupBy(e => e.Chain)
            .ToDictionary(chain => chain.Key, chain => chain.Max(e => e.Seq));
        return seen.Count == 0 ? null : seen;
    }

    private async Task AskToKeepOnce()
    {
        if (!askedToKeep)
            await store.AskToKeep();
        askedToKeep = true;
    }

    private static string NewId() => Guid.CreateVersion7().ToString("N");
}
