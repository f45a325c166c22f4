using Witnessmark.Bench.Book;

namespace Witnessmark.Bench.Times;

/// <summary>Whose time a planned one is.</summary>
public enum TimeFrom
{
    /// <summary>Nobody has timed it here.</summary>
    Book,

    /// <summary>Others of the shop have.</summary>
    Shop,

    /// <summary>The technician has.</summary>
    Technician,
}

/// <summary>What is planned for one point.</summary>
/// <param name="Time">The time to plan with.</param>
/// <param name="Book">What the book says.</param>
/// <param name="From">Whose time it is.</param>
/// <param name="Doings">How many timed doings stand behind it; those of all technicians, disturbed ones left out.</param>
public sealed record PlannedTime(TimeSpan Time, TimeSpan Book, TimeFrom From, int Doings);

/// <summary>Times of the bench book as this shop and its people have shown them.</summary>
public sealed class LearntTimes
{
    private readonly BenchBook book;
    private readonly Dictionary<string, Shrunk> hands;
    private readonly Dictionary<string, Shrunk> waits;

    private LearntTimes(BenchBook book, Dictionary<string, Shrunk> hands, Dictionary<string, Shrunk> waits) =>
        (this.book, this.hands, this.waits) = (book, hands, waits);

    /// <summary>Learns from what was observed; times of points that the book does not have, or gives no time for, say nothing.</summary>
    public static LearntTimes From(BenchBook book, IEnumerable<ObservedTime> observed)
    {
        var times = observed.Where(o => o.Took > TimeSpan.Zero).ToLookup(o => o.By is null);
        return new(book, Learn(book, times[false], p => p.Hands), Learn(book, times[true], p => p.Waits));
    }

    /// <summary>Whether the book has such a point.</summary>
    public bool Has(string point) => book.Points.ContainsKey(point);

    /// <summary>Hands-on time of a point for a technician, or for anybody when null.</summary>
    /// <exception cref="ArgumentException">The book has no such point.</exception>
    public PlannedTime Hands(string point, string? technician = null) =>
        Planned(Point(point).Hands, hands.GetValueOrDefault(point), technician);

    /// <summary>Unattended time of a point; it is nobody's own.</summary>
    /// <exception cref="ArgumentException">The book has no such point.</exception>
    public PlannedTime Waits(string point) => Planned(Point(point).Waits, waits.GetValueOrDefault(point), null);

    private Point Point(string id) =>
        book.Points.GetValueOrDefault(id) ?? throw new ArgumentException("There is no point \"{id}\".", nameof(id));

    private static Dictionary<string, Shrunk> Learn(
        BenchBook book,
        IEnumerable<ObservedTime> observed,
        Func<Point, TimeSpan> said
    ) =>
        observed
            .GroupBy(o => o.Point)
            .Where(same => book.Points.TryGetValue(same.Key, out var point) && said(point) > TimeSpan.Zero)
            .ToDictionary(
                same => same.Key,
                same =>
                    TimeShrinkage.Of(
                        said(book.Points[same.Key]).TotalSeconds,
                        same.GroupBy(o => o.By ?? "")
                            .ToDictionary(
                                own => own.Key,
                                IReadOnlyList<double> (own) => [.. own.Select(o => o.Took.TotalSeconds)]
                            )
                    )
            );

    private static PlannedTime Planned(TimeSpan book, Shrunk? learnt, string? technician)
    {
        var doings = learnt?.Counted.Values.Sum() ?? 0;
        if (learnt is null || doings == 0)
            return new(book, book, TimeFrom.Book, 0);
        return technician is not null && learnt.Own.TryGetValue(technician, out var own)
            ? new(TimeSpan.FromSeconds(own), book, TimeFrom.Technician, doings)
            : new(TimeSpan.FromSeconds(learnt.Shop), book, TimeFrom.Shop, doings);
    }
}
