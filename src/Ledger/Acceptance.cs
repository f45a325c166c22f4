using Microsoft.EntityFrameworkCore;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>The rules by which the shop takes entries in, inside one transaction.</summary>
/// <remarks>
/// <para>A number is <i>held</i> when an entry with it is kept, or something with it is set aside for good (damaged or in
/// conflict). An entry is taken in when all numbers before it are held and it is bound to something held at the number
/// before: so one bad entry never blocks those after it. What it says about the job is never a reason.</para>
/// </remarks>
internal sealed class Acceptance(LedgerContext ledger, StraightStatements statements, DateTimeOffset now)
{
    private readonly StraightAppend straight = new(statements, now);
    private readonly HashSet<string> _asideInThisBatch = new(StringComparer.Ordinal);

    /// <summary>Takes one thing in or sets it aside, then whatever waited for it.</summary>
    public void Take(Arrived arrived)
    {
        if (straight.Take(arrived))
            return;
        straight.Leave();
        if (Place(arrived))
            TakeWhatWaitedFor(arrived.Device, arrived.Epoch);
        ledger.ChangeTracker.Clear();
    }

    /// <summary>From here on it is asked of another batch.</summary>
    public void BeginBatch() => _asideInThisBatch.Clear();

    /// <summary>To be called when all was taken, before it is committed.</summary>
    public void Settle() => straight.Settle();

    /// <summary>The last order that there is.</summary>
    public long Last => straight.Last;

    /// <summary>The highest number up to which every number is held.</summary>
    public int UpTo(string device, int epoch) => straight.UpTo(device, epoch) ?? HeldUpTo(device, epoch);

    private int HeldUpTo(string device, int epoch)
    {
        var upTo = ledger.Entries.Where(e => e.Device == device && e.Epoch == epoch).Max(e => (int?)e.Seq) ?? 0;
        while (ForGood(device, epoch, upTo + 1).Any())
            upTo++;
        return upTo;
    }

    /// <summary>What is set aside of a chain and of this batch, unless its like has been taken in since.</summary>
    public IReadOnlyList<Aside> SetAsideOf(string device, int epoch) =>
        _asideInThisBatch.Count == 0 && straight.UpTo(device, epoch) is not null ? [] : AllSetAsideOf(device, epoch);

    private IReadOnlyList<Aside> AllSetAsideOf(string device, int epoch) =>
        [
            .. ledger
                .Aside.Where(a => (a.Device == device && a.Epoch == epoch) || _asideInThisBatch.Contains(a.TextHash))
                .Where(a => !ledger.Entries.Any(e => e.Id == a.Id && e.Hash == a.Hash))
                .OrderBy(a => a.Seq)
                .ThenBy(a => a.Number)
                .Select(a => new Aside(a.Id, a.Seq, a.Why, a.Reason == AsideReason.Conflict)),
        ];

    /// <summary>Whether anything that waits may be able to come in now.</summary>
    private bool Place(Arrived arrived)
    {
        if (arrived.Entry is not { } entry)
            return Put(arrived, AsideReason.Damaged, arrived.Damage!);
        if (ledger.Entries.FirstOrDefault(e => e.Id == entry.Id) is { } same)
            return same.Hash == entry.Hash
                ? Release(arrived)
                : Put(
                    arrived,
                    AsideReason.Conflict,
                    $"Its id is that of another entry, number {same.Seq} of {Chain(same)}."
                );
        if (KeptAt(entry.Device, entry.Epoch, entry.Seq).FirstOrDefault() is { } held)
            return Put(arrived, AsideReason.Conflict, $"Its number {entry.Seq} is held by another entry, {held.Id}.");
        var upTo = HeldUpTo(entry.Device, entry.Epoch);
        if (entry.Seq > upTo + 1)
            return Put(arrived, AsideReason.Waiting, $"It waits for number {upTo + 1} of {entry.Chain}.");
        if (!IsBound(entry))
            return Put(
                arrived,
                AsideReason.Conflict,
                $"It is bound to a number {entry.Seq - 1} that the shop does not hold."
            );
        Keep(entry);
        Release(arrived);
        return true;
    }

    private void TakeWhatWaitedFor(string device, int epoch)
    {
        while (NextWaiting(device, epoch) is { } waiting)
            Place(Arrived.Again(waiting));
    }

    private SetAside? NextWaiting(string device, int epoch)
    {
        var next = HeldUpTo(device, epoch) + 1;
        return ledger
            .Aside.AsNoTracking()
            .Where(a => a.Device == device && a.Epoch == epoch && a.Reason == AsideReason.Waiting && a.Seq <= next)
            .OrderBy(a => a.Seq)
            .ThenBy(a => a.Number)
            .FirstOrDefault();
    }

    private bool IsBound(Entry entry)
    {
        if (entry.Seq == 1)
            return entry.DevicePrevious is null;
        var before = entry.Seq - 1;
        return entry.DevicePrevious is { } previous
            && (
                KeptAt(entry.Device, entry.Epoch, before).Any(e => e.Hash == previous)
                || ForGood(entry.Device, entry.Epoch, before).Any(a => a.Hash == null || a.Hash == previous)
            );
    }

    private IQueryable<KeptEntry> KeptAt(string device, int epoch, int seq) =>
        ledger.Entries.Where(e => e.Device == device && e.Epoch == epoch && e.Seq == seq);

    private IQueryable<SetAside> ForGood(string device, int epoch, int seq) =>
        ledger.Aside.Where(a =>
            a.Device == device && a.Epoch == epoch && a.Seq == seq && a.Reason != AsideReason.Waiting
        );

    private void Keep(Entry entry)
    {
        var order = (ledger.Entries.Max(e => (long?)e.Order) ?? 0) + 1;
        var head = ledger.Jobs.Find(entry.Job);
        if (head is null)
            ledger.Jobs.Add(head = new() { Job = entry.Job, Hash = "" });
        head.Hash = JobChain.Next(head.Hash, order, entry.Hash);
        head.Entries++;
        head.LastOrder = order;
        ledger.Entries.Add(KeptEntry.Of(entry, order, head.Hash, now));
        ledger.SaveChanges();
    }

    private bool Put(Arrived arrived, AsideReason reason, string why)
    {
        _asideInThisBatch.Add(arrived.TextHash);
        var aside = ledger.Aside.FirstOrDefault(a => a.TextHash == arrived.TextHash);
        if (aside is null)
            ledger.Aside.Add(aside = Row(arrived, why));
        (aside.Reason, aside.Why) = (reason, why);
        ledger.SaveChanges();
        return reason != AsideReason.Waiting;
    }

    /// <summary>What has been taken in is not aside any more.</summary>
    private bool Release(Arrived arrived)
    {
        ledger.Aside.Where(a => a.TextHash == arrived.TextHash).ExecuteDelete();
        return false;
    }

    private SetAside Row(Arrived arrived, string why) =>
        new()
        {
            Text = arrived.Text,
            TextHash = arrived.TextHash,
            Why = why,
            Id = arrived.Id,
            Device = arrived.Device,
            Epoch = arrived.Epoch,
            Seq = arrived.Seq,
            Hash = arrived.Hash,
            Received = Moment.Text(now),
        };

    private static string Chain(KeptEntry entry) => $"{entry.Device}/{entry.Epoch}";
}
