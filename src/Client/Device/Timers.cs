using Microsoft.JSInterop;
using Witnessmark.Bench.Timing;

namespace Witnessmark.Client.Device;

/// <summary>The timers of this device: kept in its store by their start, so that they run on through reload and restart.</summary>
internal sealed class Timers(DeviceStore store, DeviceLedger ledger, TimeProvider clock)
{
    private readonly Dictionary<string, BenchTimer> running = new(StringComparer.Ordinal);
    private readonly HashSet<string> called = new(StringComparer.Ordinal);
    private SteadyClock steady = new(clock);
    private bool wasDark;

    /// <summary>A second has passed, or a timer came or went.</summary>
    public event Action? Changed;

    /// <summary>What was found at the device's clock, in a sentence; null while nothing was.</summary>
    public string? ClockSays { get; private set; }

    /// <summary>Whether an end is heard as well as seen.</summary>
    public bool Sound => ledger.Facts.Sound == "on";

    public DateTimeOffset Now => steady.Now;

    /// <summary>The one that is over longest, or over soonest, first.</summary>
    public IReadOnlyList<BenchTimer> All => [.. running.Values.OrderBy(t => t.Left(Now))];

    public BenchTimer? Of(string id) => running.GetValueOrDefault(id);

    public async Task Open()
    {
        steady = new(clock);
        await Read();
        ledger.Elsewhere += () => _ = Read(); // another tab may have started or ended one
        _ = Run();
    }

    public async Task Start(BenchTimer timer)
    {
        called.Remove(timer.Id);
        running[timer.Id] = timer;
        store.ReadySound(Sound);
        Changed?.Invoke();
        await store.SaveTimer(timer.Id, timer.Write());
    }

    public async Task Again(BenchTimer timer) => await Start(timer with { Started = Now });

    public async Task End(string id)
    {
        running.Remove(id);
        Tell();
        await store.SaveTimer(id, null);
    }

    public async Task SetSound(bool on)
    {
        await ledger.Remember(facts => facts with { Sound = on ? "on" : "off" });
        store.ReadySound(on);
        if (on)
            store.Beep();
    }

    public void ClockUnderstood()
    {
        ClockSays = null;
        Changed?.Invoke();
    }

    private async Task Read()
    {
        var kept = await store.Timers();
        var ids = kept.Select(k => k[0]).ToHashSet(StringComparer.Ordinal);
        foreach (var gone in running.Keys.Where(id => !ids.Contains(id)).ToList())
            running.Remove(gone);
        foreach (var one in kept)
            if (BenchTimer.Read(one[0], one[1]) is { } timer)
                running[timer.Id] = timer;
        Tell();
    }

    private async Task Run()
    {
        while (true)
        {
            await Task.Delay(1000);
            wasDark |= store.Dark();
            await LookAtClock();
            wasDark = store.Dark();
            if (running.Count > 0)
                Tell();
        }
    }

    private async Task LookAtClock()
    {
        var jump = steady.Look(wasDark, out var moved, out var found);
        if (jump == ClockJump.None || running.Count == 0)
            return;
        ClockSays = DeviceWords.Jumped(jump, BenchTimer.Show(found));
        foreach (var timer in running.Values.ToList())
            if (moved != TimeSpan.Zero)
            {
                running[timer.Id] = timer with { Started = timer.Started + moved };
                await store.SaveTimer(timer.Id, running[timer.Id].Write());
            }
    }

    private void Tell()
    {
        var over = running.Values.Where(t => t.IsOver(Now)).ToList();
        store.Attention(over.Count == 0 ? "" : DeviceWords.Over(over.Count));
        if (over.Count(t => called.Add(t.Id)) > 0)
        {
            store.Vibrate();
            if (Sound)
                store.Beep();
        }
        Changed?.Invoke();
    }
}
