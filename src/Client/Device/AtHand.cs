using System.Text.Json;
using Witnessmark.Bench.Figures;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Photographs;
using Witnessmark.Bench.Record;
using Witnessmark.Bench.SecondChecks;
using Witnessmark.Bench.Times;
using Witnessmark.Bench.Toml;
using Witnessmark.Bench.Visits;
using Witnessmark.Client.Doors;
using Witnessmark.Client.Planning;
using Witnessmark.Client.Settings;

namespace Witnessmark.Client.Device;

/// <summary>All that the screens show and do: the shop's workbench, the state of each job, and the writing of facts.</summary>
internal sealed class AtHand(
    DeviceLedger ledger,
    Exchange exchange,
    DevicePhotographs photographs,
    Timers timers,
    SettingsAtHand settings,
    DoorAtHand door,
    TimeProvider clock
)
{
    // entries are never changed and never go: what was made of as many of them still holds
    private readonly Dictionary<string, Folded> states = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (JobState Of, string? Person, JobState Seen)> views = new(
        StringComparer.Ordinal
    );
    private readonly Dictionary<string, (int Entries, Visit? Visit)> visits = new(StringComparer.Ordinal);

    private LearntTimes? learnt;

    /// <summary>Anything that a screen shows may have changed.</summary>
    public event Action? Changed;

    /// <summary>
    /// The same, but for how far entries are brought to the shop: that changes several times with every entry, and most screens show nothing of it.
    /// </summary>
    public event Action? WorkChanged;

    /// <summary>What the work is done with may have changed: the shop's files, the person, the door or the settings. No entry raises it.</summary>
    public event Action? AroundChanged;

    /// <summary>What jobs are judged with; null until the shop was met once.</summary>
    public Workbench? Workbench { get; private set; }

    /// <summary>Whether the shop is the invented one that the program comes with.</summary>
    public bool IsDemo { get; private set; }

    /// <summary>What is wrong with the shop's files.</summary>
    public IReadOnlyList<Mistake> Mistakes { get; private set; } = [];

    /// <summary>The bench orders of the jobs that are looked at.</summary>
    public OrdersAtHand Orders { get; } = new(clock);

    /// <summary>The day on this device.</summary>
    public DateOnly Today => DateOnly.FromDateTime(Now);

    /// <summary>The time on this device.</summary>
    public DateTime Now => clock.GetLocalNow().DateTime;

    public DeviceLedger Ledger => ledger;

    public Exchange Exchange => exchange;

    public Timers Timers => timers;

    /// <summary>How whoever works here wants it.</summary>
    public SettingsAtHand Settings => settings;

    /// <summary>The shop's door.</summary>
    public DoorAtHand Door => door;

    /// <summary>Who works with this device, if the shop still knows the name.</summary>
    public string? Person => ledger.Facts.Person is { } name && IsKnown(name) ? name : null;

    public async Task Open()
    {
        await ledger.Open();
        ReadWorkbench();
        ledger.Changed += TellWork;
        ledger.Noted += () => Changed?.Invoke();
        exchange.Changed += () => Changed?.Invoke();
        Orders.Found += TellWork;
        exchange.WorkbenchCame += ReadWorkbench;
        settings.Changed += Tell;
        door.Changed += Tell;
        await settings.Open();
        await timers.Open();
        exchange.Start();
    }

    public async Task WorksAs(string person)
    {
        await ledger.Remember(facts => facts with { Person = person });
        PlanFor(person);
        Tell();
    }

    /// <summary>The state of a job as whoever works here may see it; null without a workbench or entries.</summary>
    public JobState? Job(string job)
    {
        if (State(job) is not { } state)
            return null;
        // the same object again while nothing changed: what was reckoned from it is kept by it
        if (!views.TryGetValue(job, out var view) || !ReferenceEquals(view.Of, state) || view.Person != Person)
            views[job] = view = (state, Person, state.SeenBy(Person));
        return view.Seen;
    }

    /// <summary>Whether whoever works here is to read a point of a job without seeing what was read.</summary>
    public bool Hides(string job, string point) =>
        State(job)?.Points.FirstOrDefault(p => p.Point.Id == point)?.IsHiddenFrom(Person) == true;

    private JobState? State(string job)
    {
        if (Workbench is null)
            return null;
        var entries = ledger.Of(job);
        if (entries.Count == 0)
            return null;
        var notCounting = ledger.Facts.NotCounting ?? [];
        if (
            !states.TryGetValue(job, out var kept)
            || kept.Entries != entries.Count
            || !kept.NotCounting.SequenceEqual(notCounting)
        )
        {
            var memory = kept?.Memory ?? new();
            var state = JobFold.Of(job, entries, Workbench, notCounting, memory);
            states[job] = kept = new(entries.Count, notCounting, state, memory);
        }
        return kept.State;
    }

    /// <summary>The visits that the jobs known here tell of, whatever the machine.</summary>
    public IReadOnlyList<Visit> Visits() => [.. ledger.Jobs.Select(VisitOf).OfType<Visit>()];

    private Visit? VisitOf(string job)
    {
        var entries = ledger.Of(job);
        if (!visits.TryGetValue(job, out var kept) || kept.Entries != entries.Count)
            visits[job] = kept = (entries.Count, Visit.Of(job, [.. entries]));
        return kept.Visit;
    }

    /// <summary>All jobs that are known here, the latest first.</summary>
    public IReadOnlyList<JobState> Jobs() =>
        [.. ledger.Jobs.Select(Job).OfType<JobState>().OrderByDescending(j => j.Arrival?.At, StringComparer.Ordinal)];

    /// <summary>The jobs of one machine; no others are looked into.</summary>
    public IReadOnlyList<JobState> JobsOf(string machine) => [.. ledger.JobsOf(machine).Select(Job).OfType<JobState>()];

    /// <summary>Writes a fact about a job; when this returns, it is saved on this device.</summary>
    public async Task<Entry> Write(string job, string kind, JsonElement body, string? strikes = null)
    {
        var shop =
            Workbench?.Workshop.Id
            ?? throw new InvalidOperationException("Nothing is written before the shop was met.");
        var by = Person ?? throw new InvalidOperationException("Nothing is written before somebody said who they are.");
        var entry = await ledger.Write(shop, job, kind, body, by, strikes);
        exchange.Wake();
        return entry;
    }

    /// <summary>Keeps a photograph and writes that it was taken; false when this device has no room for it, and then nothing is written.</summary>
    public async Task<bool> Photograph(string job, string? point, string? figure, StoredPicture picture, string shows)
    {
        if (!await photographs.Keep(picture))
            return false;
        await Write(job, EntryKind.Photograph, EntryBody.Photograph(point, figure, picture.Picture, shows));
        return true;
    }

    /// <summary>Sets a figure at the shop, which makes a revision, and fetches it; null when kept, else why not.</summary>
    public async Task<string?> SetFigure(FigureSheet sheet, FigureDraft draft, string why)
    {
        var by = Person ?? throw new InvalidOperationException("Nothing is changed before somebody said who they are.");
        return await exchange.SetFigure(sheet, draft, by, why);
    }

    /// <summary>The last own fact of a job that can be taken back: not the arrival, not a strike, not struck.</summary>
    public Entry? LastOwn(string job)
    {
        var struck = ledger.Of(job).Select(e => e.Strikes).OfType<string>().ToHashSet(StringComparer.Ordinal);
        return ledger
            .Of(job)
            .Where(e =>
                ledger.IsOwn(e) && e.Kind is not (EntryKind.Strike or EntryKind.Arrival) && !struck.Contains(e.Id)
            )
            .MaxBy(e => e.Seq);
    }

    /// <summary>A number for a new job that no other device gives: the next one here and two letters of this device.</summary>
    public string NewJobNumber()
    {
        var highest = ledger.Jobs.Select(Leading).DefaultIfEmpty(0).Max();
        return $"{highest + 1}-{ledger.Facts.Device[^2..]}";
    }

    private bool IsKnown(string name) =>
        Workbench is not { Workshop: var shop } || shop.People.Contains(name) || shop.Readers.Contains(name);

    private static int Leading(string job) =>
        int.TryParse(string.Concat(job.TakeWhile(char.IsAsciiDigit)), out var number) ? number : 0;

    // times move slowly: it is enough to learn them when the program starts and when the shop's files come anew
    private void PlanFor(string? person) => Orders.Times = new(learnt, person);

    private void ReadWorkbench()
    {
        if (ledger.Facts.Workbench is not { } text)
            return;
        var reply = JsonSerializer.Deserialize(text, DeviceJson.Default.WorkbenchReply)!;
        var (bench, mistakes) = WorkbenchFiles.Read(reply.Files.Select(f => new SourceText(f.Name, f.Text)));
        (Mistakes, IsDemo) = (mistakes, reply.Demo);
        ledger.Hide(reply.PutAway);
        if (bench is not null)
        {
            Workbench = bench;
            learnt = LearntTimes.From(bench.Book, ObservedTimes.Of(ledger.Jobs.SelectMany(ledger.Of), bench.Book));
            PlanFor(Person);
        }
        states.Clear(); // judged by the files that were
        Tell();
    }

    private void Tell()
    {
        AroundChanged?.Invoke();
        TellWork();
    }

    private void TellWork()
    {
        WorkChanged?.Invoke();
        Changed?.Invoke();
    }

    private sealed record Folded(int Entries, IReadOnlyList<string> NotCounting, JobState State, FoldMemory Memory);
}
