using System.Net;
using Microsoft.JSInterop;
using Witnessmark.Bench.Figures;
using Witnessmark.Client.Doors;

namespace Witnessmark.Client.Device;

/// <summary>
/// Brings entries to the shop and others' entries here: on each new entry, when the network comes back, when the page is
/// looked at, from time to time, and on request. An error never deletes anything.
/// </summary>
internal sealed class Exchange(
    DeviceStore store,
    DeviceLedger ledger,
    DevicePhotographs photographs,
    Shop shop,
    DoorAtHand door
) : IDisposable
{
    private const int LargestBatch = 200;
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(20);
    private static readonly TimeSpan Shortest = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(60);
    private DotNetObjectReference<Exchange>? self;
    private TaskCompletionSource woken = New();
    private int batch = LargestBatch;
    private int failures;
    private int heard;
    private bool rests;

    /// <summary>Something about the exchange changed.</summary>
    public event Action? Changed;

    /// <summary>The shop's files came anew.</summary>
    public event Action? WorkbenchCame;

    /// <summary>Why the last attempt failed, or null.</summary>
    public string? Trouble { get; private set; }

    public bool Busy { get; private set; }

    /// <summary>Entries that the shop put aside, by number.</summary>
    public SortedDictionary<int, Aside> SetAside { get; } = [];

    /// <summary>Whether a number of this device is held at the shop by an entry that is not this device's: something else writes under its name.</summary>
    public bool HasTwin => SetAside.Values.Any(aside => aside.Conflict);

    public void Start()
    {
        self = DotNetObjectReference.Create(this);
        store.Listen(self);
        _ = Run();
    }

    [JSInvokable]
    public void Wake() => woken.TrySetResult();

    /// <summary>The shop says how far its order goes: what this device has not read yet it fetches now.</summary>
    [JSInvokable]
    public void HeadIs(int head)
    {
        heard = head;
        if (!Busy && head > ledger.Facts.Pulled)
            Wake();
    }

    [JSInvokable]
    public async Task HeardOf(string[] ids) => await ledger.HeardOf(ids);

    /// <summary>Stops, when the round that goes on has ended.</summary>
    public async Task Rest()
    {
        rests = true;
        while (Busy)
            await Task.Delay(Shortest / 10);
    }

    public void GoOn()
    {
        rests = false;
        Wake();
    }

    /// <summary>One round; only one tab does it at a time.</summary>
    [JSInvokable]
    public async Task<bool> Round()
    {
        try
        {
            if (rests)
                return true;
            if (door.State == DoorState.Unknown)
                await door.Look();
            if (door.Asks)
            {
                Trouble = DeviceWords.Refused(401);
                return true;
            }
            await FetchWorkbench();
            await photographs.SendAll(shop);
            await SendAll();
            await FetchAll();
            (Trouble, failures) = (null, 0);
            store.HearNews(self!);
            if (ledger.SavedAtShop == ledger.SavedHere && await photographs.Unsent() == 0)
                await store.LetNewerTakeOver();
        }
        catch (ShopTrouble trouble)
        {
            Trouble = trouble.Message;
            failures++;
            if (trouble.Status == HttpStatusCode.RequestEntityTooLarge && batch > 1)
                batch /= 2;
            if (trouble.Status == HttpStatusCode.Unauthorized)
                await door.Lost();
        }
        return true;
    }

    /// <summary>Sets a figure at the shop and fetches what came of it; null when kept, else why not.</summary>
    public async Task<string?> SetFigure(FigureSheet sheet, FigureDraft draft, string by, string why)
    {
        try
        {
            if (await shop.SetFigure(sheet.Id, draft.Key, FigureRequest.Of(sheet, draft, by, why)) is { } refused)
                return refused;
            await FetchWorkbench();
            return null;
        }
        catch (ShopTrouble trouble)
        {
            return $"{DeviceWords.NeedsShop} {trouble.Message}";
        }
    }

    public void Dispose() => self?.Dispose();

    private async Task Run()
    {
        while (true)
        {
            woken = New();
            heard = 0;
            Busy = true;
            Changed?.Invoke();
            await RoundUnlessAnotherTabDoes();
            Busy = false;
            Changed?.Invoke();
            if (failures == 0 && heard > ledger.Facts.Pulled)
                continue;
            if (await Task.WhenAny(woken.Task, Task.Delay(Wait())) == woken.Task)
                await Breath.Take(); // and what follows the tap quickly goes with it
        }
    }

    private async Task RoundUnlessAnotherTabDoes()
    {
        try
        {
            await store.Alone(self!, nameof(Round));
        }
        catch (JSException broken)
        {
            // the device's own store failed; what it has, it keeps, and the next round tries again
            (Trouble, failures) = (store.IsSuperseded ? DeviceWords.TabIsOld : broken.Message, failures + 1);
        }
    }

    /// <summary>Grows with each failure, and is jittered so that a shop that comes back is not met by all devices at once.</summary>
    private TimeSpan Wait()
    {
        if (failures == 0)
            return Usual;
        var longest = Math.Min(Longest.TotalSeconds, Shortest.TotalSeconds * Math.Pow(2, Math.Min(failures, 10)));
        return TimeSpan.FromSeconds(longest / 2 + Random.Shared.NextDouble() * longest / 2);
    }

    private async Task FetchWorkbench()
    {
        if (await shop.Workbench(ledger.Facts.WorkbenchTag) is not var (text, tag))
            return;
        var same = text == ledger.Facts.Workbench;
        await ledger.Remember(facts => facts with { Workbench = text, WorkbenchTag = tag });
        if (!same)
            WorkbenchCame?.Invoke();
    }

    private async Task SendAll()
    {
        while (ledger.OwnAfter(ledger.Facts.Sent, batch) is { Count: > 0 } next)
        {
            var taken = await shop.Send(ledger.Facts.Device, next);
            Note(taken, next[0].Seq, next[^1].Seq);
            if (await Met(taken.Ledger))
                continue;
            var sent = taken.UpTo < Math.Min(ledger.Facts.Confirmed, next[0].Seq - 1) ? taken.UpTo : next[^1].Seq;
            await ledger.Remember(facts => facts with { Confirmed = taken.UpTo, Sent = sent });
            batch = Math.Min(LargestBatch, batch * 2);
        }
    }

    private void Note(TakenReply taken, int from, int to)
    {
        for (var seq = from; seq <= to; seq++)
            SetAside.Remove(seq);
        foreach (var aside in taken.SetAside ?? [])
            SetAside[aside.Seq] = aside;
    }

    private async Task FetchAll()
    {
        while (true)
        {
            var reply = await shop.After(ledger.Facts.Pulled);
            if (await Met(reply.Ledger) || await WentBack(reply.Head))
                return;
            if (reply.Entries.Count == 0)
                return;
            // before the entries: a tab that is closed in between must not show what does not count
            await ledger.Remember(facts => facts.WithoutCounting(reply.NotCounting));
            await ledger.Keep([.. reply.Entries.Select(e => e.Entry)], reply.Ledger, reply.Entries.Max(e => e.Order));
        }
    }

    /// <summary>Another ledger than the one met before has nothing of what was sent: all of it goes again.</summary>
    private async Task<bool> Met(string identity)
    {
        if (ledger.Facts.Ledger == identity)
            return false;
        var another = ledger.Facts.Ledger is not null;
        await ledger.Remember(facts =>
            another
                ? facts with
                {
                    Ledger = identity,
                    Pulled = 0,
                    Confirmed = 0,
                    Sent = 0,
                    NotCounting = null,
                }
                : facts with
                {
                    Ledger = identity,
                }
        );
        if (another)
            await SendEverythingAgain();
        return another;
    }

    /// <summary>The same ledger with fewer entries than were read from it was restored from a backup.</summary>
    private async Task<bool> WentBack(int head)
    {
        if (head >= ledger.Facts.Pulled)
            return false;
        await ledger.Remember(facts => facts with { Pulled = 0, Confirmed = 0, Sent = 0, NotCounting = null });
        await SendEverythingAgain();
        return true;
    }

    private async Task SendEverythingAgain()
    {
        await photographs.NoneAtShop();
        Wake();
    }

    private static TaskCompletionSource New() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
