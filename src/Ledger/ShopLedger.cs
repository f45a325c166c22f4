using System.Data;
using System.Data.Common;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Witnessmark.Bench.Record;

namespace Witnessmark.Ledger;

/// <summary>The shop's ledger: takes entries in, once and for good, and gives them back. Safe to use from many threads.</summary>
/// <exception cref="LedgerUnavailable">Any of its functions: the disk is full, or the file locked or broken.</exception>
public sealed class ShopLedger : IDisposable
{
    /// <summary>How many entries <see cref="After"/> gives at most.</summary>
    public const int PageSize = 1000;

    private readonly Func<LedgerContext> _context;
    private readonly TimeProvider _clock;
    private readonly Writer _writer;
    private readonly GroupCommit<Brought> _waiting;
    private readonly Action _tellOthers;

    /// <param name="context">A context for each piece of work.</param>
    /// <param name="clock">The time.</param>
    /// <param name="id">Which ledger it is, where that is known already.</param>
    /// <param name="tellOthers">Tells other servers of the same ledger that something came in; null: there are none.</param>
    internal ShopLedger(Func<LedgerContext> context, TimeProvider clock, string? id = null, Action? tellOthers = null)
    {
        (_context, _clock, _tellOthers) = (context, clock, tellOthers ?? (() => { }));
        _writer = new(context);
        _waiting = new(AcceptTogether);
        Id = id ?? Do(ledger => IdentityOf(ledger).Id);
    }

    /// <summary>Which ledger this is; another file is another ledger.</summary>
    public string Id { get; }

    /// <summary>Beats each time that a batch is on disk.</summary>
    public Pulse CameIn { get; } = new();

    /// <summary>The last order that there is; 0 in an empty ledger.</summary>
    public long Head() => Do(HeadOf);

    /// <summary>Whether an entry of this id was taken in.</summary>
    public bool Has(string id) => Do(ledger => ledger.Entries.Any(e => e.Id == id));

    /// <summary>Takes a batch in. When this returns everything in it is on disk, taken in or set aside; when it throws, nothing is.</summary>
    public Receipt Accept(Batch batch) => AcceptAsync(batch).GetAwaiter().GetResult();

    /// <summary>The same for many at a time: those that wait go to the disk together.</summary>
    public Task<Receipt> AcceptAsync(Batch batch) => _waiting.Take(Brought.By(batch));

    /// <summary>What came in after an order, at most <see cref="PageSize"/> entries.</summary>
    public LedgerPage After(long order) =>
        Do(ledger =>
        {
            using var snapshot = ledger.Database.BeginTransaction(IsolationLevel.RepeatableRead);
            var rows = ledger.Entries.AsNoTracking().Where(e => e.Order > order).OrderBy(e => e.Order).Take(PageSize);
            OrderedEntry[] entries = [.. rows.AsEnumerable().Select(e => new OrderedEntry(e.Order, e.Entry()))];
            return new LedgerPage(Id, HeadOf(ledger), entries);
        });

    /// <summary>All entries of a job in the shop's order; empty when there is none.</summary>
    public IReadOnlyList<Entry> OfJob(string job) =>
        Do(ledger =>
            (IReadOnlyList<Entry>)
                [
                    .. ledger
                        .Entries.AsNoTracking()
                        .Where(e => e.Job == job)
                        .OrderBy(e => e.Order)
                        .AsEnumerable()
                        .Select(e => e.Entry()),
                ]
        );

    /// <summary>The jobs with the ends of their chains, the one with the newest entry first.</summary>
    public IReadOnlyList<JobHead> Jobs() =>
        Do(ledger => (IReadOnlyList<JobHead>)[.. ledger.Jobs.AsNoTracking().OrderByDescending(j => j.LastOrder)]);

    /// <summary>The jobs that were opened for a machine, oldest first.</summary>
    public IReadOnlyList<string> JobsOf(string machine) =>
        Do(ledger =>
            (IReadOnlyList<string>)
                [
                    .. ledger
                        .Entries.AsNoTracking()
                        .Where(e => e.Kind == EntryKind.Arrival && e.Body.Contains(machine))
                        .OrderBy(e => e.Order)
                        .AsEnumerable()
                        .Where(e => MachineIn(e.Entry().Body) == machine)
                        .Select(e => e.Job)
                        .Distinct(),
                ]
        );

    /// <summary>All entries of the jobs whose arrivals name a text, such as a figure sheet, job by job in the shop's order.</summary>
    public IReadOnlyList<IReadOnlyList<Entry>> OfJobsNaming(string text) =>
        Do(ledger =>
        {
            var jobs = ledger
                .Entries.Where(e => e.Kind == EntryKind.Arrival && e.Body.Contains(text))
                .Select(e => e.Job);
            return (IReadOnlyList<IReadOnlyList<Entry>>)
                [
                    .. ledger
                        .Entries.AsNoTracking()
                        .Where(e => jobs.Contains(e.Job))
                        .OrderBy(e => e.Order)
                        .AsEnumerable()
                        .Select(e => e.Entry())
                        .GroupBy(e => e.Job)
                        .Select(g => g.ToArray()),
                ];
        });

    /// <summary>Everything that is set aside, oldest first.</summary>
    public IReadOnlyList<SetAside> SetAside() =>
        Do(ledger => (IReadOnlyList<SetAside>)[.. ledger.Aside.AsNoTracking().OrderBy(a => a.Number)]);

    /// <summary>Waits for what is being written and lets go of the store; from then on nothing is taken in.</summary>
    public void Dispose()
    {
        _writer.Dispose();
        using var ledger = _context();
        ledger.CloseUnused();
    }

    private IReadOnlyList<Receipt> AcceptTogether(IReadOnlyList<Brought> batches)
    {
        var (receipts, head) = Told(() => _writer.Write((ledger, statements) => Accept(ledger, statements, batches)));
        CameIn.Beat(head);
        _tellOthers();
        return receipts;
    }

    /// <summary>Beats when another server of the same ledger took something in.</summary>
    internal void HearOthers()
    {
        if (Head() is var head && head > CameIn.Head)
            CameIn.Beat(head);
    }

    /// <summary>Inside a transaction: what is said of each batch, and the last order that there is then.</summary>
    internal (IReadOnlyList<Receipt> Receipts, long Head) Accept(
        LedgerContext ledger,
        StraightStatements statements,
        IReadOnlyList<Brought> batches
    )
    {
        var acceptance = new Acceptance(ledger, statements, _clock.GetUtcNow());
        Receipt[] receipts = [.. batches.Select(batch => Accept(acceptance, batch))];
        acceptance.Settle();
        return (receipts, acceptance.Last);
    }

    private Receipt Accept(Acceptance acceptance, Brought batch)
    {
        acceptance.BeginBatch();
        foreach (var thing in batch.Things)
            acceptance.Take(thing);
        return new(Id, acceptance.UpTo(batch.Device, batch.Epoch), acceptance.SetAsideOf(batch.Device, batch.Epoch));
    }

    private static string? MachineIn(JsonElement arrival) =>
        arrival.TryGetProperty("machine", out var machine) && machine.ValueKind == JsonValueKind.String
            ? machine.GetString()
            : null;

    private static long HeadOf(LedgerContext ledger) => ledger.Entries.Max(e => (long?)e.Order) ?? 0;

    private LedgerIdentity IdentityOf(LedgerContext ledger)
    {
        if (ledger.Identity.FirstOrDefault() is { } there)
            return there; // whoever only looks waits for nobody
        using var transaction = ledger.BeginWriting();
        if (ledger.Identity.FirstOrDefault() is { } known)
            return known;
        var identity = new LedgerIdentity
        {
            Row = 1,
            Id = Guid.NewGuid().ToString("n"),
            Created = Moment.Text(_clock.GetUtcNow()),
        };
        ledger.Identity.Add(identity);
        ledger.SaveChanges();
        ledger.Keep(transaction);
        return identity;
    }

    // what may pass by itself comes from EF Core in an InvalidOperationException
    private static bool IsOfTheStore(Exception broken) =>
        broken
            is DbException
                or DbUpdateException
                or IOException
                or JsonException
                or InvalidOperationException { InnerException: DbException or DbUpdateException };

    private T Do<T>(Func<LedgerContext, T> work) =>
        Told(() =>
        {
            using var ledger = _context();
            return work(ledger);
        });

    private static T Told<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception broken) when (IsOfTheStore(broken))
        {
            var why = DiskFull.Is(broken) ? "the disk that it lies on is full." : broken.GetBaseException().Message;
            throw new LedgerUnavailable($"The ledger cannot be used: {why}", broken);
        }
    }
}
