using System.Diagnostics;
using Witnessmark.Bench.Book;
using Witnessmark.Bench.Jobs;
using Witnessmark.Bench.Planning.Order;
using Witnessmark.Bench.Times;
using Witnessmark.Client.Device;

namespace Witnessmark.Client.Planning;

/// <summary>
/// The bench order of each job that is looked at. A new one is searched in pieces, so that the page stays alive; until it is
/// there, the order before it is shown.
/// </summary>
internal sealed class OrdersAtHand(TimeProvider clock)
{
    // ways looked at: a browser computes about ten times slower than the shop's computer
    private const int Effort = 4_000;

    // a page that stands still for longer than this is felt; common practice in drawing smoothly, 50 ms for anything a finger waits for
    private static readonly TimeSpan Piece = TimeSpan.FromMilliseconds(30);

    private readonly Dictionary<string, Kept> kept = new(StringComparer.Ordinal);

    /// <summary>A new order was found.</summary>
    public event Action? Found;

    /// <summary>How long points take.</summary>
    public PlanTimes Times { get; set; } = PlanTimes.ByTheBook;

    /// <summary>The order of a job as far as it is known, and whether a newer one is being searched.</summary>
    public (PlannedOrder? Order, bool Searching) Of(JobState job, BenchBook book)
    {
        if (!kept.TryGetValue(job.Job, out var known))
            kept[job.Job] = known = new();
        if (!ReferenceEquals(known.For, job))
        {
            known.For = job;
            known.Searching |= known.Asked is null;
            _ = Ask(known, job, book);
        }
        return (known.Order, known.Searching);
    }

    /// <summary>The job's points: what is done in the order it was done, then the rest in bench order.</summary>
    public IReadOnlyList<PointState> Sorted(JobState job, BenchBook book)
    {
        var order = Of(job, book).Order;
        var known = kept[job.Job];
        if (known.Sorted is not { } sorted || !ReferenceEquals(sorted.Of, job) || !ReferenceEquals(sorted.By, order))
            known.Sorted = sorted = (job, order, Sorted(job, order));
        return sorted.Points;
    }

    private static IReadOnlyList<PointState> Sorted(JobState job, PlannedOrder? found)
    {
        var order = found?.Points.Index().ToDictionary(p => p.Item, p => p.Index) ?? [];
        var done = job.Entries.Index().ToDictionary(e => e.Item.Id, e => e.Index);
        return
        [
            .. job
                .Points.OrderBy(p => (p.Marked ?? p.Left?.Entry) is { } by ? done[by.Id] : int.MaxValue)
                .ThenBy(p => order.GetValueOrDefault(p.Point.Id, int.MaxValue)),
        ];
    }

    private async Task Ask(Kept known, JobState job, BenchBook book)
    {
        await Breath.Take(); // it is wanted while the page is drawn
        if (!ReferenceEquals(known.For, job))
            return; // who wanted the later one asks
        var asked = WhereItStands.Of(job, book, clock.GetLocalNow()) with { Times = Times };
        if (!Same(known.Asked, asked))
            await Search(known, asked);
    }

    private async Task Search(Kept known, OrderQuestion asked)
    {
        (known.Asked, known.Searching) = (asked, true);
        var started = Stopwatch.GetTimestamp();
        var begun = asked.Open.Count == 0 ? default : OrderSearch.Begin(asked, Effort);
        if (begun.Value is { } search)
            while (search.Advance())
            {
                if (Stopwatch.GetElapsedTime(started) < Piece)
                    continue;
                await Task.Delay(1);
                if (!ReferenceEquals(known.Asked, asked))
                    return; // something else is asked meanwhile
                started = Stopwatch.GetTimestamp();
            }
        known.Order = begun.Value?.Found;
        known.Searching = false;
        Found?.Invoke();
    }

    private static bool Same(OrderQuestion? one, OrderQuestion other) =>
        one is not null
        && ReferenceEquals(one.Times, other.Times)
        && one.InHand == other.InHand
        && one.Open.Select(p => p.Id).SequenceEqual(other.Open.Select(p => p.Id))
        && one.Now.Order(StringComparer.Ordinal).SequenceEqual(other.Now.Order(StringComparer.Ordinal))
        && one.Waiting.Keys.Order(StringComparer.Ordinal)
            .SequenceEqual(other.Waiting.Keys.Order(StringComparer.Ordinal));

    private sealed class Kept
    {
        public JobState? For { get; set; }

        /// <summary>The points as they were sorted last, of what and by what.</summary>
        public (JobState Of, PlannedOrder? By, IReadOnlyList<PointState> Points)? Sorted { get; set; }

        public OrderQuestion? Asked { get; set; }

        public PlannedOrder? Order { get; set; }

        public bool Searching { get; set; }
    }
}
